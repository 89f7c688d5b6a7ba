import { once } from "../../cells";
import { plainName } from "../fit";
import type { Job } from "./job";

/** The row of the Dwellings table that has this name; the first of several, undefined for none. */
export function dwellingRow(job: Job, name: string): number | undefined {
  return rowsOf(job).get(plainName(name));
}

const rowsOf = once((job: Job) => {
  const rows = new Map<string, number>();
  job.tables.dwellings?.texts("dwelling").forEach((name, row) => {
    const key = plainName(name);
    if (name !== "" && !rows.has(key)) rows.set(key, row);
  });
  return rows;
});
