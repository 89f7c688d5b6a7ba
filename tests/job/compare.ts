import { serialOf } from "../../src/cells";
import { checkJob, compareChecks, type FurtherCheck, type JobFile } from "../../src/job";

/** What is otherwise in the later state of a job, both checked first; today where no day is given. */
export function compareJobs(
  before: JobFile,
  after: JobFile,
  { today = serialOf(new Date()), further }: { today?: number; further?: FurtherCheck } = {},
) {
  const checked = (file: JobFile) => checkJob(file, today - (file.dateOffset ?? 0), further);
  return compareChecks(checked(before), checked(after));
}
