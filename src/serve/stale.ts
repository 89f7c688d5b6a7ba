import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";

/** What the site is built from, relative to the project. */
const sources = ["src", "functions", "workbooks", "manifest.xml", "package-lock.json"];

/** Whether a built site is missing or older than something it is built from; `made` is a file that each build writes. */
export function isStale(project: string, built: string, made: string): boolean {
  const at = newest(join(built, made));
  return at === 0 || sources.some((source) => newest(join(project, source)) > at);
}

/** When the file, or what lies in the folder, was last changed; ms, 0 where there is nothing. */
function newest(path: string): number {
  const info = statSync(path, { throwIfNoEntry: false });
  if (info === undefined) return 0;
  if (!info.isDirectory()) return info.mtimeMs;
  return Math.max(info.mtimeMs, ...readdirSync(path).map((entry) => newest(join(path, entry))));
}
