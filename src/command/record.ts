import type { JobCheck } from "../job";
import { addPlan, allRecords, fieldPapers, recordedDwellings, type SheetPlan } from "../records";
import { Workbook } from "../workbook";
import { type Guard, WriteError, writeFileSafely } from "./output";

/** "record": what was measured, to sign. "papers": cards of the boxes and a form, to take along. */
export type PrintKind = "record" | "papers";

/** Sheets to print and nothing else, in a new workbook. */
export function printWorkbook(plans: readonly SheetPlan[]): Uint8Array {
  const workbook = Workbook.create();
  for (const plan of plans) addPlan(workbook, plan);
  return workbook.save();
}

/** A workbook of more sheets takes programs minutes to open. */
const mostDwellings = 500;

/** Of which there will be a record; of very many no more than about how many. */
function dwellingsOf(check: JobCheck): number {
  const most = Math.min(check.summary.dwellings, check.summary.measured);
  return most > 10 * mostDwellings ? most : recordedDwellings(check).length;
}

/** Gathers the sheets to print of checked jobs, then writes them all to one file. */
export class Print {
  private readonly plans: SheetPlan[] = [];
  private jobs = 0;
  private dwellings = 0;

  constructor(
    private readonly kind: PrintKind,
    private readonly file: string,
    private readonly guard: Guard,
  ) {}

  /** Takes up a job; gives what could not be printed of it, in lines. */
  add(check: JobCheck): readonly string[] {
    this.jobs++;
    this.dwellings += this.kind === "record" ? dwellingsOf(check) : 0;
    if (this.dwellings > mostDwellings) return [];
    const { plans, problems } =
      this.kind === "papers" ? fieldPapers(check) : { plans: allRecords(check), problems: [] };
    this.plans.push(...plans);
    return problems;
  }

  /** Rejects with a WriteError where there is nothing to write, or it cannot be written. */
  async save(): Promise<void> {
    const { file, jobs, plans, dwellings } = this;
    if (dwellings > mostDwellings)
      throw new WriteError(
        `${file}: not written, since ${dwellings.toLocaleString("en")} dwellings are more than the ${mostDwellings} that records are written of at once: part the job into several files`,
      );
    if (jobs === 0) throw new WriteError(`${file}: not written, since no job could be read`);
    if (plans.length === 0)
      throw new WriteError(
        `${file}: not written, since no fan is listed or planned: there is nothing to print`,
      );
    await writeFileSafely(file, printWorkbook(plans), this.guard);
  }
}
