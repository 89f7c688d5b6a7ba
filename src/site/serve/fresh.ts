import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { isStale } from "../../serve";
import { chunksFile } from "../build/chunks";

/**
 * Whether a built site is there, no older than anything it is built from, and made for the
 * development address: its manifest may have been written anew for another.
 */
export function isFresh(project: string, built: string): boolean {
  if (isStale(project, built, chunksFile)) return false;
  const [ours, theirs] = [project, built].map((folder) => {
    const manifest = join(folder, "manifest.xml");
    return statSync(manifest, { throwIfNoEntry: false }) && readFileSync(manifest, "utf8");
  });
  return ours !== undefined && ours === theirs;
}
