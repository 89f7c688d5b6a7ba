import { readFileSync } from "node:fs";
import { toJobFile } from "../../src/command";
import { type Job, readJob } from "../../src/job";
import { Workbook } from "../../src/workbook";
import { estimateName, existingName, proofName } from "../../workbooks/files";

const folder = new URL("../../workbooks/", import.meta.url);
const jobOf = (name: string): Job =>
  readJob(toJobFile(Workbook.open(readFileSync(new URL(name, folder)))));

/** The demo workbooks as jobs: an existing building, the proof of a box, an estimate. */
export const existing = jobOf(existingName);
export const proving = jobOf(proofName);
export const estimating = jobOf(estimateName);

/** The row of a fan in its table, by its dwelling and tag. */
export function fanAt(job: Job, dwelling: string, tag: string): number {
  const { table } = job.fans ?? {};
  const tags = table?.texts("tag") ?? [];
  const row = tags.findIndex((text, i) => text === tag && table?.text("dwelling", i) === dwelling);
  if (row < 0) throw new Error(`no fan ${tag} of ${dwelling}`);
  return row;
}

/** The row of a dwelling in its table. */
export function dwellingAt(job: Job, name: string): number {
  const row = job.tables.dwellings?.texts("dwelling").indexOf(name) ?? -1;
  if (row < 0) throw new Error(`no dwelling ${name}`);
  return row;
}

/** The same job with other settings. */
export function withSettings(job: Job, settings: Partial<Job["settings"]>): Job {
  return { ...job, settings: { ...job.settings, ...settings } };
}
