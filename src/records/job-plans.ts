import { boxProofs, type JobCheck } from "../job";
import { dwellingFacts } from "./dwelling-facts";
import { dwellingRecord } from "./dwelling-record";
import { jobRecord } from "./job-record";
import type { SheetPlan } from "./plan";
import { proofRecord } from "./proof-record";

/** Every record of a job: the job itself, then its dwellings, then the boxes with paired readings. */
export function allRecords(check: JobCheck): SheetPlan[] {
  return [
    jobRecord(check),
    ...recordedDwellings(check).map((name) => dwellingRecord(check, name)),
    ...proofRecords(check),
  ];
}

/** The proofs of the job's boxes, by the name of the box. */
export function proofRecords({ job }: JobCheck): SheetPlan[] {
  return [...boxProofs(job).values()]
    .sort((a, b) => a.box.localeCompare(b.box, "en", { numeric: true }))
    .map((own) => proofRecord(job, own));
}

/** The names of the dwellings with fans, of which a record can be made, in the job's order. */
export function recordedDwellings({ job }: JobCheck): string[] {
  return dwellingFacts(job)
    .filter(({ fans }) => fans.length > 0)
    .map(({ name }) => name);
}
