// What the comments of the worksheet functions say, read where something is built or tested. Plain
// JavaScript, since the command's bundle is made before anything here reads TypeScript.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";

const functions = join(import.meta.dirname, "..");

/** Functions by id, with the file of each, in the order in which they were released. */
export function released() {
  const lines = readFileSync(join(functions, "made.ts"), "utf8").matchAll(/{ (\w+) } from "(.+)"/g);
  return new Map([...lines].map(([, id, path]) => [id, join(functions, `${path}.ts`)]));
}

/**
 * functions.json, which Excel loads. Throws on any complaint of the generator (its own command line
 * tool reports success all the same).
 */
export async function generateMetadata(files = [...released().values()]) {
  const { errors, metadataJson } = await generateCustomFunctionsMetadata(files);
  if (errors.length > 0) throw new Error(`the function comments do not do:\n${errors.join("\n")}`);
  const { allowCustomDataForDataTypeAny: _, ...rest } = JSON.parse(metadataJson);
  // Lets one bad cell in a range arrive as an error value instead of failing the whole call.
  return `${JSON.stringify({ allowErrorForDataTypeAny: true, ...rest }, null, 2)}\n`;
}

/** What the comments say, by id: first of the function, then of each parameter. */
export async function descriptions() {
  const { functions } = JSON.parse(await generateMetadata());
  return Object.fromEntries(
    functions.map(({ id, description, parameters }) => [
      id,
      [description, ...parameters.map((parameter) => parameter.description)],
    ]),
  );
}

/** What a bundler defines, for `functions/index.ts` to tell what the comments say. */
export const defined = async () => ({
  descriptionsOfFunctions: JSON.stringify(await descriptions()),
});
