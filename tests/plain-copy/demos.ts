import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const folder = join(import.meta.dirname, "../../workbooks");

/** The committed workbooks, by file name. */
export const demos: Readonly<Record<string, Uint8Array>> = Object.fromEntries(
  readdirSync(folder)
    .filter((name) => name.endsWith(".xlsx"))
    .map((name) => [name, new Uint8Array(readFileSync(join(folder, name)))]),
);
