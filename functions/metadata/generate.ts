import { readFileSync } from "node:fs";
import { join } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { shells } from "./lists";

/** The committed metadata that Excel loads. */
export const metadataFile = join(import.meta.dirname, "../functions.json");

/** The ids of the committed metadata, in the order in which they were released. */
export function releasedIds(): string[] {
  const { functions } = JSON.parse(committedMetadata()) as { functions: { id: string }[] };
  return functions.map(({ id }) => id);
}

/**
 * The text of functions.json, from the comments of the functions. Throws on any complaint of the
 * generator (its own command line tool reports success all the same).
 */
export async function generateMetadata(
  files: readonly string[] = [...shells(releasedIds()).values()],
): Promise<string> {
  const result = await generateCustomFunctionsMetadata([...files]);
  if (result.errors.length > 0)
    throw new Error(`the function comments do not do:\n${result.errors.join("\n")}`);
  const metadata = JSON.parse(result.metadataJson) as Record<string, unknown>;
  // Lets one bad cell in a range arrive as an error value instead of failing the whole call.
  const { allowCustomDataForDataTypeAny: _, ...rest } = metadata;
  const complete = { allowErrorForDataTypeAny: true, ...rest };
  return `${JSON.stringify(complete, null, 2)}\n`;
}

/** The committed metadata as it stands. */
export function committedMetadata(): string {
  return readFileSync(metadataFile, "utf8");
}
