/** Replaces text.slice(start, end); start === end inserts. */
export interface Splice {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Splices may come in any order but may not overlap; insertions at one place keep their order. */
export function applySplices(text: string, splices: readonly Splice[]): string {
  // An insertion goes before a replacement that starts at the same place. The sort is stable.
  const ordered = [...splices].sort((a, b) => a.start - b.start || a.end - b.end);
  const pieces: string[] = [];
  let at = 0;
  for (const splice of ordered) {
    if (splice.start < at) throw new Error(`Splices overlap at character ${splice.start}.`);
    pieces.push(text.slice(at, splice.start), splice.text);
    at = splice.end;
  }
  pieces.push(text.slice(at));
  return pieces.join("");
}
