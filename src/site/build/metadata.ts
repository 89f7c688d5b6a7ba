// The generator has no place in functions/index.ts, which browsers load: it reads source files.
import { committedMetadata, generateMetadata } from "../../../functions/metadata";

/**
 * The text of functions.json. Throws on any complaint of the generator, and where the committed
 * file is not what the comments of the functions generate today.
 */
export async function freshMetadata(committed: string = committedMetadata()): Promise<string> {
  const generated = await generateMetadata();
  if (generated !== committed)
    throw new Error(
      "functions/functions.json is stale: it is not what the comments of the functions say; run npm run metadata",
    );
  return generated;
}
