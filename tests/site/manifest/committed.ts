import { readFileSync } from "node:fs";
import { join } from "node:path";
import { helpFile, worksheetFunctions } from "../../../functions";

export const root = join(import.meta.dirname, "../../..");

/** The committed manifest. */
export const committed = readFileSync(join(root, "manifest.xml"), "utf8");

/** The files that the manifest may name, written down apart from the build. */
export const siteFiles: readonly string[] = [
  "pane.html",
  "functions.js",
  "old-view.js",
  "functions.json",
  "index.html",
  "support.html",
  "privacy.html",
  "manifest.xml",
  "chunks.json",
  ...[16, 32, 64, 80, 128].map((size) => `icons/icon-${size}.png`),
  ...worksheetFunctions.map(({ id }) => helpFile(id)),
];

/** Text with one passage changed. Throws where the passage is not there, once. */
export function changed(text: string, from: string, to: string): string {
  if (text.split(from).length !== 2) throw new Error(`"${from}" must stand in the text once`);
  return text.replace(from, () => to);
}
