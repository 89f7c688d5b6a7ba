import { writeFile } from "node:fs/promises";
import type { JobCheck } from "../job";
import { addPlan, allRecords } from "../records";
import { Workbook } from "../workbook";

/** Writes the records of checked jobs, and nothing else, into a new workbook; gives its bytes. */
export function recordWorkbook(checks: readonly JobCheck[]): Uint8Array {
  const workbook = Workbook.create();
  for (const check of checks)
    for (const plan of allRecords(check)) addPlan(workbook, plan, "beside");
  return workbook.save();
}

/** Writes the records of checked jobs to a file; gives a complaint, or null when all went well. */
export async function writeRecord(
  file: string,
  checks: readonly JobCheck[],
): Promise<string | null> {
  if (checks.length === 0) return `${file}: not written, since no job could be read`;
  try {
    await writeFile(file, recordWorkbook(checks));
    return null;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    return `${file}: cannot be written (${code})`;
  }
}
