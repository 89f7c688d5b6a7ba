import { runsOf } from "../../../cells";
import { formulasOf, numberFormatsOf, textOf, valuesOf, valueTypesOf } from "../cells/read";
import type { HostRange } from "../host-range";
import type { Arguments } from "../wire/arguments";
import { HostError, invalidArgument } from "../wire/errors";
import type { Members, Served } from "../wire/served";
import type { Desk } from "./desk";
import { hideColumns, hideRows, mergeCells, unmergeCells } from "./range-arrange";
import { clearRange } from "./range-clear";
import { cellColors, columnColors } from "./range-colors";
import { copyFrom } from "./range-copy";
import { writeContents, writeNumberFormats } from "./range-write";

export function rangeMembers(desk: Desk): Members<HostRange> {
  const { book } = desk;
  const codeAt = book.formats.code.bind(book.formats);
  /** A range passed as an object, or by its address on the same sheet. */
  const other = (range: HostRange, args: Arguments): HostRange =>
    args.range(0) ?? book.range(range.tab, args.text(0, "The other range"));
  const used = (range: HostRange, args: Arguments): Served | null => {
    const rect = args.flag(0) ? range.tab.used(range) : range.tab.usedOrFormatted(range);
    return rect === null ? null : desk.range(range.with(rect));
  };
  return {
    className: "Range",
    isTracked: true,
    values: {
      address: { get: (range) => range.address },
      rowIndex: { get: ({ top }) => top },
      columnIndex: { get: ({ left }) => left },
      rowCount: { get: ({ rows }) => rows },
      columnCount: { get: ({ cols }) => cols },
      values: {
        get: valuesOf,
        set: (range, value) => writeContents(book, range, value),
      },
      formulas: {
        get: formulasOf,
        set: (range, value) => writeContents(book, range, value),
      },
      text: { get: (range) => textOf(range, codeAt) },
      valueTypes: { get: valueTypesOf },
      numberFormat: {
        get: (range) => numberFormatsOf(range, codeAt),
        set: (range, value) => writeNumberFormats(book, range, value),
      },
      rowHidden: {
        get: ({ tab, top, bottom }) => allOrNone(tab.sheet.hiddenRows, top, bottom),
        set: (range, value) => hideRows(book, range, value === true),
      },
      columnHidden: {
        get: ({ tab, left, right }) => allOrNone(tab.sheet.hiddenCols, left, right),
        set: (range, value) => hideColumns(book, range, value === true),
      },
    },
    links: {
      format: (range) => desk.rangeFormat(range),
      worksheet: ({ tab }) => desk.worksheet(tab),
      conditionalFormats: (range) => desk.marks(range),
      dataValidation: (range) => desk.validation(range),
    },
    methods: {
      clear: (range, args) =>
        clearRange(book, range, args.optionalText(0, "What to clear") ?? "All"),
      select: (range) => book.select(range),
      getCell: (range, args) =>
        desk.range(range.cell(args.integer(0, "The row"), args.integer(1, "The column"))),
      // The client asks these two when it cuts a large range into pieces.
      getRow(range, args) {
        const row = args.integer(0, "Row");
        if (row < 0 || row >= range.rows)
          throw invalidArgument(`${range.address} has no row ${row}.`);
        return desk.range(range.with({ top: range.top + row, bottom: range.top + row }));
      },
      getBoundingRect: (range, args) => desk.range(range.boundingRect(other(range, args))),
      getResizedRange(range, args) {
        const bottom = range.bottom + args.integer(0, "The rows to add");
        const right = range.right + args.integer(1, "The columns to add");
        return desk.range(range.with({ bottom, right }));
      },
      getIntersectionOrNullObject(range, args) {
        const shared = range.intersection(other(range, args));
        return shared === null ? null : desk.range(shared);
      },
      getUsedRange: (range, args) => used(range, args) ?? desk.range(range.cell(0, 0)),
      getUsedRangeOrNullObject: used,
      getMergedAreasOrNullObject({ tab, ...range }) {
        const rects = tab.merges(range);
        return rects.length === 0 ? null : desk.areas({ tab, rects });
      },
      getSpecialCellsOrNullObject(range, args) {
        const rects = visibleRects(range, args.text(0, "The kind of cells"));
        return rects.length === 0 ? null : desk.areas({ tab: range.tab, rects });
      },
      getCellProperties: (range, args) => cellColors(book.formats, range, args),
      getColumnProperties: (range, args) => columnColors(book.formats, range, args),
      merge: (range, args) => mergeCells(book, range, args.flag(0)),
      unmerge: (range) => unmergeCells(book, range),
      copyFrom: (range, args) => copyFrom(book, range, args),
      /** The client asks this before it writes a large range piece by piece. */
      _ValidateArraySize(range, args) {
        if (range.rows === args.integer(0, "Rows") && range.cols === args.integer(1, "Columns"))
          return;
        throw new HostError(
          "InvalidArgument",
          `${range.address} takes ${range.rows} rows of ${range.cols} values.`,
        );
      },
    },
  };
}

/** The parts of a range that are not hidden. Other kinds of special cells are not known here. */
function visibleRects({ tab, top, left, bottom, right }: HostRange, kind: string) {
  if (kind !== "Visible") throw invalidArgument(`Special cells "${kind}" are not available.`);
  const cols = shownRuns(tab.sheet.hiddenCols, left, right);
  return shownRuns(tab.sheet.hiddenRows, top, bottom).flatMap(([first, last]) =>
    cols.map(([from, to]) => ({ top: first, left: from, bottom: last, right: to })),
  );
}

function shownRuns(hidden: ReadonlySet<number>, first: number, last: number): [number, number][] {
  const lines = Array.from({ length: last - first + 1 }, (_, i) => first + i);
  return runsOf(lines.filter((line) => !hidden.has(line)));
}

/** Whether all lines are hidden; null where only some are. */
function allOrNone(hidden: ReadonlySet<number>, first: number, last: number): boolean | null {
  let count = 0;
  for (const line of hidden) if (line >= first && line <= last) count++;
  if (count === 0) return false;
  return count === last - first + 1 ? true : null;
}
