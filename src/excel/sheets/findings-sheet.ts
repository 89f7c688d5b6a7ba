import { type Finding, findingKinds, type Summary, severities } from "../../job";
import { asText } from "../cell-text";
import { sheetProtected } from "../host-error";
import { type Book, run } from "../run";
import { addSheet, checkStructure, findOwnSheet } from "./own-sheet";
import { type Written, writeRows } from "./write-blocks";

const title = "Findings";
const headings = ["Sheet", "Cell", "Severity", "Kind", "About", "What", "Effect", "Mend"];
const summaryHeadings = ["Summary", "Number"];
/** One column is left free between the findings and the summary. */
const summaryLeft = headings.length + 1;
const widths = [70, 45, 60, 170, 90, 260, 260, 300, 20, 150, 55];

/**
 * Adds a sheet with the findings and a summary, or renews the one written before; returns its
 * name. A sheet of the user's own of that name is left alone.
 */
export function writeFindingsSheet(
  findings: readonly Finding[],
  summary: Summary,
): Promise<string> {
  return run(async (book) => {
    const own = await findOwnSheet(book, title, headings);
    if ("found" in own && own.isProtected) throw sheetProtected(own.found.name);
    if ("freeName" in own) await checkStructure(book);
    const sheet = "found" in own ? own.found : addSheet(book, own.freeName);
    if ("found" in own) await empty(book, sheet);
    await writeRows(book, sheet, 0, 0, [headings, ...findings.map(toRow)]);
    await writeRows(book, sheet, 0, summaryLeft, summaryRows(summary));
    dress(sheet);
    sheet.load("name");
    await book.sync();
    return sheet.name;
  });
}

/** Empties our own columns down to the last used row; what stands beside them stays. */
async function empty(book: Book, sheet: Excel.Worksheet): Promise<void> {
  const used = sheet.getUsedRange(true);
  used.load("rowIndex,rowCount");
  await book.sync();
  const rows = used.rowIndex + used.rowCount;
  sheet.getRangeByIndexes(0, 0, rows, headings.length).clear("Contents");
  sheet.getRangeByIndexes(0, summaryLeft, rows, summaryHeadings.length).clear("Contents");
}

function toRow(finding: Finding): Written[] {
  const { sheet, cell, severity, kind, about, what, effect, mend } = finding;
  return [
    asText(sheet),
    link(sheet, cell),
    severity,
    ...[findingKinds[kind].title, about, what, effect, mend].map(asText),
  ];
}

/** A cell's name that leads to the cell when it is clicked. */
function link(sheet: string, cell: string): string {
  if (sheet === "" || cell === "") return "";
  const target = `#'${sheet.replaceAll("'", "''")}'!${cell}`.replaceAll('"', '""');
  return `=HYPERLINK("${target}","${cell}")`;
}

function summaryRows(summary: Summary): Written[][] {
  return [
    summaryHeadings,
    ["Fans", summary.fans],
    ["Fans with a reading", summary.measured],
    ["Dwellings", summary.dwellings],
    ["Openings", summary.openings],
    ...severities.map((severity): Written[] => [severity, summary.bySeverity[severity]]),
    ...summary.byKind.map(({ kind, count }): Written[] => [findingKinds[kind].title, count]),
  ];
}

function dress(sheet: Excel.Worksheet): void {
  const last = summaryLeft + summaryHeadings.length;
  const top = sheet.getRangeByIndexes(0, 0, 1, last);
  top.format.font.bold = true;
  widths.forEach((width, col) => {
    sheet.getRangeByIndexes(0, col, 1, 1).format.columnWidth = width;
  });
  sheet.freezePanes.freezeRows(1);
}
