/** Vite's list of what it has built, in the built site. */
export const chunksFile = "chunks.json";

/** A built file with code, and the files it needs. */
export interface Chunk {
  /** Fetched with it. */
  readonly imports: readonly string[];
  /** Fetched when the code asks for them. */
  readonly lazy: readonly string[];
}

/** Chunks by file, and the one that the pane's page begins with. */
export interface Chunks {
  readonly byFile: ReadonlyMap<string, Chunk>;
  readonly page: string;
}

/** The files and whatever `next` leads to from them, each once. */
function reach(from: Iterable<string>, next: (file: string) => readonly string[]): Set<string> {
  const reached = new Set(from);
  // A set hands out what is added to it while it is walked.
  for (const file of reached) for (const further of next(file)) reached.add(further);
  return reached;
}

/** What the pane's page fetches: at once, before the first screen shows; and the rest, later. */
export function paneChunks({ byFile, page: entry }: Chunks): {
  readonly first: ReadonlySet<string>;
  readonly later: ReadonlySet<string>;
} {
  const imports = (file: string) => byFile.get(file)?.imports ?? [];
  const lazy = (file: string) => byFile.get(file)?.lazy ?? [];
  const page = reach([entry], imports);
  // The page itself asks for the pane, as soon as Excel is ready.
  const first = reach([...page, ...[...page].flatMap(lazy)], imports);
  const all = reach(first, (file) => [...imports(file), ...lazy(file)]);
  return { first, later: new Set([...all].filter((file) => !first.has(file))) };
}
