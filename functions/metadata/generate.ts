import { readFileSync } from "node:fs";
import { join } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";

const folder = join(import.meta.dirname, "..");

/** The files that hold worksheet functions. */
export const functionFiles = [
  "openings.ts",
  "flow.ts",
  "range.ts",
  "required.ts",
  "judging.ts",
  "spread.ts",
  "unboxed.ts",
  "pairs.ts",
  "working.ts",
  "air.ts",
  "instruments.ts",
  "pan.ts",
  "estimate.ts",
  "reading-along.ts",
  "dwelling.ts",
  "equipment.ts",
];

/** The committed metadata that Excel loads. */
export const metadataFile = join(folder, "functions.json");

/**
 * The text of functions.json, from the comments of the functions. Throws on any complaint of the
 * generator (its own command line tool reports success all the same).
 */
export async function generateMetadata(
  files: readonly string[] = functionFiles.map((file) => join(folder, file)),
): Promise<string> {
  const result = await generateCustomFunctionsMetadata([...files]);
  if (result.errors.length > 0)
    throw new Error(`the function comments do not do:\n${result.errors.join("\n")}`);
  const metadata = JSON.parse(result.metadataJson) as Record<string, unknown>;
  // Lets one bad cell in a range arrive as an error value instead of failing the whole call.
  const complete = { allowErrorForDataTypeAny: true, ...metadata };
  return `${JSON.stringify(complete, null, 2)}\n`;
}

/** The committed metadata as it stands. */
export function committedMetadata(): string {
  return readFileSync(metadataFile, "utf8");
}
