import { readFileSync } from "node:fs";
import Papa from "papaparse";
import { Workbook } from "../../src/workbook";

const folder = new URL("../../workbooks/", import.meta.url);

/** The demo job, as it is committed. */
export function demo(): Workbook {
  return Workbook.open(readFileSync(new URL("alder-terrace.xlsx", folder)));
}

/** 2026-11-25 as a serial number: the demo job was tested in the weeks before. */
export const today = 46_351;

export interface Answer {
  readonly sheet: string;
  readonly cell: string;
  readonly kind: string;
}

/** The faults planted in the demo job. */
export function answerKey(): Answer[] {
  const text = readFileSync(new URL("alder-terrace-answers.csv", folder), "utf8");
  return Papa.parse<Answer>(text.trim(), { header: true }).data;
}
