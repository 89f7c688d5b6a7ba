import { acceptanceHeadings, acceptedSheetTitle } from "../../job";
import { asText } from "../cell-text";
import { HostError } from "../host-error";
import { type Book, run } from "../run";
import type { NewAcceptance } from "../types";
import { checkWritable, sheetToWrite } from "../writable";
import { addSheet, checkStructure } from "./own-sheet";
import { type Written, writeRows } from "./write-blocks";

type Heading = (typeof acceptanceHeadings)[number];

/** Title rows may stand above the headings, but not more than this many. */
const searchedRows = 20;
const dateFormat = "yyyy-mm-dd";

/**
 * Keeps an acceptance on the Accepted sheet, which is added where there is none; one for the same
 * finding is replaced. Columns of the user's own stay. Returns the name of the sheet.
 */
export function acceptFinding(acceptance: NewAcceptance): Promise<string> {
  if (acceptance.reason.trim() === "" || acceptance.initials.trim() === "")
    throw new HostError("InvalidArgument", "An acceptance needs a reason and initials.");
  return run(async (book) => {
    const found = await findSheet(book);
    const cells = written(acceptance);
    if (found === undefined) {
      await checkStructure(book);
      const added = addSheet(book, acceptedSheetTitle);
      added.getRangeByIndexes(0, 0, 1, acceptanceHeadings.length).format.font.bold = true;
      added.getRangeByIndexes(1, dateColumn, 1, 1).numberFormat = [[dateFormat]];
      const row = acceptanceHeadings.map((heading) => cells[heading]);
      await writeRows(book, added, 0, 0, [[...acceptanceHeadings], row]);
      return acceptedSheetTitle;
    }
    const { sheet, columns, headerRow, freeRow } = found;
    const [same] = found.rowsOf(acceptance.finding);
    const row = same ?? freeRow;
    const places = acceptanceHeadings.map((heading, i) => ({
      heading,
      // A heading that someone took away is written anew beside the others.
      isNew: !columns.has(heading),
      col: columns.get(heading) ?? found.freeCol + missingBefore(columns, i),
    }));
    const ranges = places.map(({ col }) => sheet.getRangeByIndexes(row, col, 1, 1));
    const heads = places.flatMap(({ col, isNew }) =>
      isNew ? [sheet.getRangeByIndexes(headerRow, col, 1, 1)] : [],
    );
    await checkWritable(book, sheet, acceptedSheetTitle, ranges);
    await book.keep(sheet.name, [...ranges, ...heads]);
    book.holdCalculation();
    places.forEach(({ heading, col, isNew }, i) => {
      const range = ranges[i] as Excel.Range;
      if (heading === "Date") range.numberFormat = [[dateFormat]];
      range.formulas = [[cells[heading]]];
      if (isNew) sheet.getRangeByIndexes(headerRow, col, 1, 1).formulas = [[heading]];
    });
    await book.sync();
    return sheet.name;
  });
}

/** Takes the acceptance of a finding back: its cells are emptied, what stands beside them stays. */
export function withdrawAcceptance(finding: NewAcceptance["finding"]): Promise<string> {
  return run(async (book) => {
    const found = await findSheet(book);
    const rows = found?.rowsOf(finding) ?? [];
    if (!found || rows.length === 0)
      throw new HostError(
        "ItemNotFound",
        `The sheet ${acceptedSheetTitle} has no acceptance of ${finding.sheet}!${finding.cell} any more.`,
      );
    const ranges = rows.flatMap((row) =>
      [...found.columns.values()].map((col) => found.sheet.getRangeByIndexes(row, col, 1, 1)),
    );
    await checkWritable(book, found.sheet, acceptedSheetTitle, ranges);
    await book.keep(found.sheet.name, ranges);
    for (const range of ranges) range.clear("Contents");
    await book.sync();
    return found.sheet.name;
  });
}

const dateColumn = acceptanceHeadings.indexOf("Date");

function written(acceptance: NewAcceptance): Record<Heading, NonNullable<Written>> {
  const { finding, fingerprint, reason, initials, date } = acceptance;
  return {
    Sheet: asText(finding.sheet),
    Cell: asText(finding.cell),
    Kind: finding.kind,
    About: asText(finding.about),
    Reason: asText(reason.trim()),
    Initials: asText(initials.trim()),
    Date: date,
    Fingerprint: asText(fingerprint),
  };
}

interface FoundSheet {
  readonly sheet: Excel.Worksheet;
  readonly columns: ReadonlyMap<Heading, number>;
  readonly headerRow: number;
  /** Below and to the right of all that is filled. */
  readonly freeRow: number;
  readonly freeCol: number;
  /** The rows of one finding's acceptances. */
  rowsOf(finding: NewAcceptance["finding"]): number[];
}

async function findSheet(book: Book): Promise<FoundSheet | undefined> {
  const sheet = sheetToWrite(book, acceptedSheetTitle);
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load("rowIndex,columnIndex,rowCount,columnCount,values");
  await book.sync();
  if (sheet.isNullObject) return undefined;
  const lines: readonly (readonly unknown[])[] = used.isNullObject
    ? [acceptanceHeadings]
    : used.values;
  const [top, left] = used.isNullObject ? [0, 0] : [used.rowIndex, used.columnIndex];
  for (let r = 0; r < Math.min(searchedRows, lines.length); r++) {
    const columns = used.isNullObject ? new Map() : headingsIn(lines[r] ?? [], left);
    const needed = ["Sheet", "Cell", "Kind"] as const;
    if (!used.isNullObject && !needed.every((heading) => columns.has(heading))) continue;
    const text = (line: readonly unknown[], heading: Heading) =>
      plain(line[(columns.get(heading) ?? -1) - left]);
    return {
      sheet,
      columns,
      headerRow: top + r,
      freeRow: used.isNullObject ? 1 : top + lines.length,
      freeCol: used.isNullObject ? 0 : left + used.columnCount,
      rowsOf: (finding) =>
        lines.flatMap((line, i) => {
          const isSame =
            i > r &&
            text(line, "Sheet") === plain(finding.sheet) &&
            text(line, "Cell") === plain(finding.cell) &&
            text(line, "Kind") === plain(finding.kind);
          return isSame ? [top + i] : [];
        }),
    };
  }
  throw new HostError(
    "ItemAlreadyExists",
    `The workbook has a sheet ${acceptedSheetTitle} of another kind. Rename it, then accept the finding again.`,
  );
}

function headingsIn(line: readonly unknown[], left: number): Map<Heading, number> {
  const columns = new Map<Heading, number>();
  line.forEach((value, c) => {
    const heading = acceptanceHeadings.find((entry) => plain(entry) === plain(value));
    if (heading && !columns.has(heading)) columns.set(heading, left + c);
  });
  return columns;
}

function plain(value: unknown): string {
  return String(value ?? "")
    .trim()
    .toLowerCase();
}

/** How many of the headings before one are missing too. */
function missingBefore(columns: ReadonlyMap<Heading, number>, index: number): number {
  return acceptanceHeadings.slice(0, index).filter((heading) => !columns.has(heading)).length;
}
