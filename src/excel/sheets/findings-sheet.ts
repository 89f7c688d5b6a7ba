import { quotedSheet, shown } from "../../cells";
import {
  codeKinds,
  type Finding,
  findingKinds,
  isOpen,
  type Provenance,
  type Summary,
  severities,
} from "../../job";
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
 * name. A sheet of the user's own of that name is left alone. Accepted findings come last; what the
 * results rest on stands below the summary.
 */
export function writeFindingsSheet(
  findings: readonly Finding[],
  summary: Summary,
  provenance?: Provenance,
): Promise<string> {
  return run(async (book) => {
    const own = await findOwnSheet(book, title, headings);
    if ("found" in own && own.isProtected) throw sheetProtected(own.found.name);
    if ("freeName" in own) await checkStructure(book);
    const sheet = "found" in own ? own.found : addSheet(book, own.freeName);
    const ordered = [...findings.filter(isOpen), ...findings.filter((one) => !isOpen(one))];
    const beside = [...summaryRows(summary), ...(provenance ? provenanceRows(provenance) : [])];
    const longest = 1 + Math.max(ordered.length, beside.length - 1);
    if ("found" in own) await empty(book, sheet, longest);
    await writeRows(book, sheet, 0, 0, [headings, ...ordered.map(toRow)]);
    await writeRows(book, sheet, 0, summaryLeft, beside);
    dress(sheet);
    sheet.load("name");
    await book.sync();
    return sheet.name;
  });
}

/** Rows that are read at once, below what Excel on the web hands over. */
const rowsAtOnce = 1000;

/**
 * Empties our own columns, with what stood there kept until `rows` new ones are written; what stands
 * beside them stays.
 */
async function empty(book: Book, sheet: Excel.Worksheet, rows: number): Promise<void> {
  const used = sheet.getUsedRange(true);
  used.load("rowIndex,rowCount");
  sheet.load("name");
  await book.sync();
  const end = Math.max(rows, used.rowIndex + used.rowCount);
  const block = (first: number, count: number) => [
    sheet.getRangeByIndexes(first, 0, count, headings.length),
    sheet.getRangeByIndexes(first, summaryLeft, count, summaryHeadings.length),
  ];
  for (let first = 0; first < end; first += rowsAtOnce)
    await book.keep(sheet.name, block(first, Math.min(rowsAtOnce, end - first)));
  for (const range of block(0, end)) range.clear("Contents");
}

function toRow(finding: Finding): Written[] {
  const { sheet, cell, severity, kind, about, what, effect, mend, accepted, lapsed } = finding;
  const advice = accepted
    ? `Accepted by ${accepted.initials}: ${accepted.reason}`
    : lapsed
      ? `${mend} Accepted before by ${lapsed.initials} (${lapsed.reason}), but the row has changed since.`
      : mend;
  return [
    asText(sheet),
    link(sheet, cell),
    accepted ? "accepted" : severity,
    ...[findingKinds[kind].title, about, what, effect, advice].map(asText),
  ];
}

/** A cell's name that leads to the cell when it is clicked. */
function link(sheet: string, cell: string): string {
  if (sheet === "" || cell === "") return "";
  const target = `#${quotedSheet(sheet)}!${cell}`.replaceAll('"', '""');
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
    ...(summary.accepted > 0 ? [["accepted", summary.accepted]] : []),
    ...summary.byKind.map(({ kind, count }): Written[] => [findingKinds[kind].title, count]),
  ];
}

function provenanceRows(provenance: Provenance): Written[][] {
  const { edition, clauses, constants, window } = provenance;
  return [
    ["", ""],
    ["Version of the functions", asText(provenance.version)],
    ["Edition", asText(edition?.id ?? "none")],
    ...clauses.map(({ clause, mark }): Written[] => [asText(clause), mark]),
    ...constants.map(({ text, mark }): Written[] => [`Flow constant ${text}`, mark]),
    ...(window ? [[`Window ${shown(window.low)} to ${shown(window.high)} Pa`, window.mark]] : []),
    ["Judged by", provenance.judging],
    ["Rows", provenance.rows],
    ...codeKinds.map((kind) => [`Code of the ${kind}`, asText(provenance.codes[kind])]),
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
