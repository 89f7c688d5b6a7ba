import {
  formulasOf,
  formulasR1C1Of,
  numberFormatsOf,
  textOf,
  valuesOf,
  valueTypesOf,
} from "../cells/read";
import type { HostRange } from "../host-range";
import type { Arguments } from "../wire/arguments";
import { HostError, invalidArgument, notFound } from "../wire/errors";
import type { Members, Served } from "../wire/served";
import type { Desk } from "./desk";
import { hideColumns, hideRows, mergeCells, unmergeCells } from "./range-arrange";
import { clearRange } from "./range-clear";
import { copyFrom } from "./range-copy";
import { writeContents, writeNumberFormats } from "./range-write";

export function rangeMembers(desk: Desk): Members<HostRange> {
  const { book } = desk;
  const codeAt = book.formats.code.bind(book.formats);
  const spilled = (range: HostRange) => {
    let found = false;
    range.forEach((row, col) => {
      const formula = range.tab.sheet.cell(row, col);
      found ||= (formula?.arrayRef ?? null) !== null || isSpilledOver(range, row, col);
    });
    return found;
  };
  const isSpilledOver = ({ tab }: HostRange, row: number, col: number) =>
    book.model.anchorOf(tab.name, row, col) !== null;
  /** A range passed as an object, or by its address on the same sheet. */
  const other = (range: HostRange, args: Arguments): HostRange =>
    args.range(0) ?? book.range(range.tab, args.text(0, "The other range"));
  const used = (range: HostRange, args: Arguments): Served | null => {
    const rect = args.flag(0) ? range.tab.used(range) : range.tab.usedOrFormatted(range);
    return rect === null ? null : desk.range(range.with(rect));
  };
  const line = (range: HostRange, args: Arguments, what: string, count: number) => {
    const at = args.integer(0, what);
    if (at >= 0 && at < count) return at;
    throw invalidArgument(`${range.address} has no ${what.toLowerCase()} ${at}.`);
  };
  return {
    className: "Range",
    isTracked: true,
    values: {
      address: { get: (range) => range.address },
      addressLocal: { get: (range) => range.address },
      rowIndex: { get: ({ top }) => top },
      columnIndex: { get: ({ left }) => left },
      rowCount: { get: ({ rows }) => rows },
      columnCount: { get: ({ cols }) => cols },
      cellCount: { get: ({ cellCount }) => cellCount },
      isEntireColumn: { get: ({ isEntireColumn }) => isEntireColumn },
      isEntireRow: { get: ({ isEntireRow }) => isEntireRow },
      values: {
        get: valuesOf,
        set: (range, value) => writeContents(book, range, value, "A1"),
      },
      formulas: {
        get: formulasOf,
        set: (range, value) => writeContents(book, range, value, "A1"),
      },
      formulasR1C1: {
        get: formulasR1C1Of,
        set: (range, value) => writeContents(book, range, value, "R1C1"),
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
      hasSpill: {
        get: (range) => (range.isEntireColumn || range.isEntireRow ? null : spilled(range)),
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
      getRow(range, args) {
        const row = range.top + line(range, args, "Row", range.rows);
        return desk.range(range.with({ top: row, bottom: row }));
      },
      getColumn(range, args) {
        const col = range.left + line(range, args, "Column", range.cols);
        return desk.range(range.with({ left: col, right: col }));
      },
      getLastRow: (range) => desk.range(range.with({ top: range.bottom })),
      getLastColumn: (range) => desk.range(range.with({ left: range.right })),
      getLastCell: (range) => desk.range(range.with({ top: range.bottom, left: range.right })),
      getResizedRange(range, args) {
        const bottom = range.bottom + args.integer(0, "The rows to add");
        const right = range.right + args.integer(1, "The columns to add");
        return desk.range(range.with({ bottom, right }));
      },
      getAbsoluteResizedRange(range, args) {
        const bottom = range.top + args.integer(0, "The number of rows") - 1;
        const right = range.left + args.integer(1, "The number of columns") - 1;
        return desk.range(range.with({ bottom, right }));
      },
      getOffsetRange: (range, args) =>
        desk.range(range.offset(args.integer(0, "The rows"), args.integer(1, "The columns"))),
      getEntireRow: (range) => desk.range(book.wholeSheet(range.tab).with(rowsOf(range))),
      getEntireColumn: (range) => desk.range(book.wholeSheet(range.tab).with(colsOf(range))),
      getBoundingRect: (range, args) => desk.range(range.boundingRect(other(range, args))),
      getIntersection(range, args) {
        const shared = range.intersection(other(range, args));
        if (shared === null) throw notFound(`Nothing is shared with ${range.address}.`);
        return desk.range(shared);
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

function rowsOf({ top, bottom }: HostRange) {
  return { top, bottom };
}

function colsOf({ left, right }: HostRange) {
  return { left, right };
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
  const runs: [number, number][] = [];
  for (let line = first; line <= last; line++) {
    if (hidden.has(line)) continue;
    const run = runs.at(-1);
    if (run && run[1] === line - 1) run[1] = line;
    else runs.push([line, line]);
  }
  return runs;
}

/** Whether all lines are hidden; null where only some are. */
function allOrNone(hidden: ReadonlySet<number>, first: number, last: number): boolean | null {
  let count = 0;
  for (const line of hidden) if (line >= first && line <= last) count++;
  if (count === 0) return false;
  return count === last - first + 1 ? true : null;
}
