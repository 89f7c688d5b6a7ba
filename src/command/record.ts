import { writeFile } from "node:fs/promises";
import type { JobCheck } from "../job";
import { addPlan, allRecords, fieldPapers, type SheetPlan } from "../records";
import { Workbook } from "../workbook";

/** "record": what was measured, to sign. "papers": cards of the boxes and a form, to take along. */
export type PrintKind = "record" | "papers";

/** Sheets to print and nothing else, of all checks, in a new workbook. */
export function printWorkbook(plans: readonly SheetPlan[]): Uint8Array {
  const workbook = Workbook.create();
  for (const plan of plans) addPlan(workbook, plan, "beside");
  return workbook.save();
}

/** Writes the sheets to print of checked jobs to a file; gives complaints, none when all went well. */
export async function writePrint(
  kind: PrintKind,
  file: string,
  checks: readonly JobCheck[],
): Promise<readonly string[]> {
  if (checks.length === 0) return [`${file}: not written, since no job could be read`];
  const made = checks.map((check) =>
    kind === "papers" ? fieldPapers(check) : { plans: allRecords(check), problems: [] },
  );
  const plans = made.flatMap((each) => each.plans);
  const problems = made.flatMap((each) => each.problems);
  if (plans.length === 0)
    return [...problems, `${file}: not written, since there is nothing to print`];
  try {
    await writeFile(file, printWorkbook(plans));
    return problems;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    return [`${file}: cannot be written (${code})`];
  }
}
