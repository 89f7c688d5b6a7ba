import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { chunksFile } from "../build/chunks";

/** What the site is built from, relative to the project. */
const sources = ["src", "functions", "workbooks", "manifest.xml", "package-lock.json"];

/**
 * Whether a built site is there, no older than anything it is built from, and made for the
 * development address: its manifest may have been written anew for another.
 */
export function isFresh(project: string, built: string): boolean {
  const made = statSync(join(built, chunksFile), { throwIfNoEntry: false })?.mtimeMs;
  if (made === undefined || sources.some((source) => newest(join(project, source)) > made))
    return false;
  const [ours, theirs] = [project, built].map((folder) => {
    const manifest = join(folder, "manifest.xml");
    return statSync(manifest, { throwIfNoEntry: false }) && readFileSync(manifest, "utf8");
  });
  return ours !== undefined && ours === theirs;
}

/** When the file, or what lies in the folder, was last changed; ms, 0 where there is nothing. */
function newest(path: string): number {
  const info = statSync(path, { throwIfNoEntry: false });
  if (info === undefined) return 0;
  if (!info.isDirectory()) return info.mtimeMs;
  return Math.max(info.mtimeMs, ...readdirSync(path).map((entry) => newest(join(path, entry))));
}
