import { run } from "../run";
import type { Result } from "./self-test";
import { reportSheet } from "./sheets";

/** A step a person did, and what was seen. */
export interface Answer {
  readonly name: string;
  readonly outcome: "pass" | "fail" | "not tried";
}

/** Requirement sets whose presence tells what an older Excel lacks. */
const sets: readonly [string, readonly string[]][] = [
  ["ExcelApi", ["1.1", "1.7", "1.9", "1.11", "1.13", "1.14", "1.16", "1.17"]],
  ["CustomFunctionsRuntime", ["1.1", "1.2", "1.3", "1.4"]],
  ["SharedRuntime", ["1.1"]],
];

/** Program, version and platform, and the requirement sets it has. */
function hostLines(): string[] {
  const { Office: office } = globalThis as { Office?: Partial<typeof Office> };
  const context = office?.context as Office.Context | undefined;
  const told = context?.diagnostics;
  const has = (set: string, version: string) =>
    context?.requirements?.isSetSupported?.(set, version) === true;
  return [
    told ? `host: ${told.host} ${told.version}, ${told.platform}` : "host: not told",
    ...sets.map(
      ([set, versions]) =>
        `${set}: ${versions.filter((v) => has(set, v)).join(" ") || "none told"}`,
    ),
  ];
}

const headings = ["Line", "Outcome", "Expected", "Got", "Seconds"];

/** The report as rows: the host, the counts, a row a line, a row a step. */
export function reportRows(
  results: readonly Result[],
  answers: readonly Answer[],
  version: string,
): string[][] {
  const count = (outcome: string) => results.filter((each) => each.outcome === outcome).length;
  const wide = (text: string) => [text, "", "", "", ""];
  return [
    wide(`Fanrow ${version}: test in this Excel`),
    ...hostLines().map(wide),
    wide(`${count("pass")} pass, ${count("fail")} fail, ${count("told")} told`),
    headings,
    ...results.map(({ name, outcome, expected, got, seconds }) => [
      name,
      outcome,
      expected,
      got.slice(0, 500),
      seconds.toFixed(2),
    ]),
    ...answers.map(({ name, outcome }) => [`by hand: ${name}`, outcome, "", "", ""]),
  ];
}

/** The report as text, a line a row, for pasting into an issue. */
export function reportText(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => row.join("\t").trimEnd()).join("\n");
}

/** Writes the report on a sheet of its own, in place of an earlier one. */
export function writeReport(rows: readonly (readonly string[])[]): Promise<void> {
  return run(async (book) => {
    const old = book.sheets.getItemOrNullObject(reportSheet);
    await book.sync();
    const sheet = book.sheets.add();
    if (!old.isNullObject) old.delete();
    sheet.name = reportSheet;
    const range = sheet.getRange("A1").getResizedRange(rows.length - 1, headings.length - 1);
    range.numberFormat = rows.map((row) => row.map(() => "@"));
    range.values = rows.map((row) => [...row]);
    sheet.getRange("A:A").format.columnWidth = 320;
    sheet.getRange("C:D").format.columnWidth = 180;
    sheet.activate();
    await book.sync();
  });
}
