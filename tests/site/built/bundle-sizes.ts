import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { paneChunks } from "../../../src/site/build/chunks";
import { readChunks } from "./read-chunks";

/** Sizes of a built site's code, bytes after gzip, each file by itself as it travels. */
export interface BundleSizes {
  /** functions.js. */
  readonly functions: number;
  /** The pane up to its first screen, Check: script and style. Not office.js, nor functions.js. */
  readonly pane: number;
  /** What the pane's other screens fetch when they are first opened. */
  readonly lazy: number;
}

/** What the sizes are to stay within. */
export const bundleGoals = { functions: 55_000, pane: 250_000 } as const;

/** Measures the built site in a folder. */
export function bundleSizes(distFolder: string): BundleSizes {
  const chunks = readChunks(distFolder);
  const sizeOf = (file: string) => gzipSync(readFileSync(join(distFolder, file))).length;
  const styled = (files: ReadonlySet<string>) =>
    new Set([...files, ...[...files].flatMap((file) => chunks.byFile.get(file)?.styles ?? [])]);
  const sum = (files: ReadonlySet<string>) =>
    [...styled(files)].reduce((total, file) => total + sizeOf(file), 0);
  const { first, later } = paneChunks(chunks);
  return { functions: sizeOf("functions.js"), pane: sum(first), lazy: sum(later) };
}
