import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Chunk, type Chunks, chunksFile } from "../../../src/site/build/chunks";

/** A built site's chunks, with the style sheets of each. */
export interface StyledChunks extends Chunks {
  readonly byFile: ReadonlyMap<string, Chunk & { readonly styles: readonly string[] }>;
}

interface Listed {
  readonly file: string;
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
  readonly css?: readonly string[];
}

/** What a built site consists of. */
export function readChunks(folder: string): StyledChunks {
  const listed = JSON.parse(readFileSync(join(folder, chunksFile), "utf8")) as Record<
    string,
    Listed
  >;
  const get = (key: string): Listed => {
    const entry = listed[key];
    if (!entry) throw new Error(`${chunksFile} does not tell of ${key}`);
    return entry;
  };
  const files = (keys: readonly string[] = []) => keys.map((key) => get(key).file);
  return {
    byFile: new Map(
      Object.values(listed).map(({ file, imports, dynamicImports, css }) => [
        file,
        { imports: files(imports), lazy: files(dynamicImports), styles: css ?? [] },
      ]),
    ),
    page: get("pane.html").file,
  };
}
