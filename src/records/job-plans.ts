import { boxProofs, estimateOf, type JobCheck } from "../job";
import { dwellingFacts, isUntested } from "./dwelling-facts";
import { dwellingRecord } from "./dwelling-record";
import { boxCard } from "./field/box-card";
import { readingForm } from "./field/form";
import { jobRecord } from "./job-record";
import type { SheetPlan } from "./plan";
import { proofRecord } from "./proof-record";

/** Every record of a job: the job itself, then its dwellings, then the boxes with paired readings. */
export function allRecords(check: JobCheck): SheetPlan[] {
  return [
    ...(hasJobRecord(check) ? [jobRecord(check)] : []),
    ...recordedDwellings(check).map((name) => dwellingRecord(check, name)),
    ...proofRecords(check),
  ];
}

/** Whether fans are listed or planned, of which a record of the job can tell. */
export function hasJobRecord({ job, summary }: JobCheck): boolean {
  return summary.fans > 0 || estimateOf(job) !== undefined;
}

/** What a tester takes along: sheets to print, and why a box has no card. */
interface FieldPapers {
  readonly plans: readonly SheetPlan[];
  readonly problems: readonly string[];
}

/** The card of each box, then the form to write on. */
export function fieldPapers({ job }: JobCheck): FieldPapers {
  const plans: SheetPlan[] = [];
  const problems: string[] = [];
  for (const box of job.boxes?.names ?? []) {
    const card = boxCard(job, box);
    if ("problem" in card) problems.push(card.problem);
    else plans.push(card);
  }
  if (job.fans?.length) plans.push(readingForm(job));
  return { plans, problems };
}

/** The proofs of the job's boxes, by the name of the box. */
export function proofRecords({ job }: JobCheck): SheetPlan[] {
  return [...boxProofs(job).values()]
    .sort((a, b) => a.box.localeCompare(b.box, "en", { numeric: true }))
    .map((own) => proofRecord(job, own));
}

/** The names of the dwellings of which something was measured or found absent, in the job's order. */
export function recordedDwellings({ job }: JobCheck): string[] {
  return dwellingFacts(job)
    .filter((dwelling) => !isUntested(job, dwelling))
    .map(({ name }) => name);
}
