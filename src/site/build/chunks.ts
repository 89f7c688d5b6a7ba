import { readFileSync } from "node:fs";
import { join } from "node:path";

/** Vite's list of what it has built, in the built site. */
export const chunksFile = "chunks.json";

/** A built file with code, and the files it needs. */
export interface Chunk {
  /** Fetched with it. */
  readonly imports: readonly string[];
  /** Fetched when the code asks for them. */
  readonly lazy: readonly string[];
  /** Style sheets. */
  readonly styles: readonly string[];
}

/** Chunks by file, and the file that a page of the site begins with. */
export interface Chunks {
  readonly byFile: ReadonlyMap<string, Chunk>;
  entryOf(page: string): string;
}

interface Listed {
  readonly file: string;
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
  readonly css?: readonly string[];
}

/** What a built site consists of. */
export function readChunks(folder: string): Chunks {
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
    entryOf: (page) => get(page).file,
  };
}

/** The files and whatever `next` leads to from them, each once. */
export function reach(
  from: Iterable<string>,
  next: (file: string) => readonly string[],
): Set<string> {
  const reached = new Set(from);
  // A set hands out what is added to it while it is walked.
  for (const file of reached) for (const further of next(file)) reached.add(further);
  return reached;
}

/** What the pane's page fetches: at once, before the first screen shows; and the rest, later. */
export function paneChunks({ byFile, entryOf }: Chunks): {
  readonly first: ReadonlySet<string>;
  readonly later: ReadonlySet<string>;
} {
  const imports = (file: string) => byFile.get(file)?.imports ?? [];
  const lazy = (file: string) => byFile.get(file)?.lazy ?? [];
  const page = reach([entryOf("pane.html")], imports);
  // The page itself asks for the pane, as soon as Excel is ready.
  const first = reach([...page, ...[...page].flatMap(lazy)], imports);
  const all = reach(first, (file) => [...imports(file), ...lazy(file)]);
  return { first, later: new Set([...all].filter((file) => !first.has(file))) };
}
