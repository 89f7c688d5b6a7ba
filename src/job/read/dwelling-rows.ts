import { plainName } from "../fit";
import type { Job } from "./job";

const known = new WeakMap<Job, ReadonlyMap<string, number>>();

/** The row of the Dwellings table that has this name; the first of several, undefined for none. */
export function dwellingRow(job: Job, name: string): number | undefined {
  let rows = known.get(job);
  if (!rows) {
    rows = readRows(job);
    known.set(job, rows);
  }
  return rows.get(plainName(name));
}

function readRows(job: Job): Map<string, number> {
  const rows = new Map<string, number>();
  job.tables.dwellings?.texts("dwelling").forEach((name, row) => {
    const key = plainName(name);
    if (name !== "" && !rows.has(key)) rows.set(key, row);
  });
  return rows;
}
