import type { Rows } from "./rows";

/** Several cells side by side for each row; a spoiled row holds its fault in each of them. */
export function sideBySide(rows: Rows, width: number, cells: (i: number) => unknown[]): any[][] {
  const found: unknown[][] = [];
  const sides = Array.from({ length: width }, (_, side) =>
    rows
      .result((i) => {
        found[i] ??= cells(i);
        return found[i]?.[side];
      })
      .flat(),
  );
  return (sides[0] ?? []).map((_, i) => sides.map((side) => side[i]));
}
