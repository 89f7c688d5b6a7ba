import type { MeanRow } from "../types";
import type { SheetBlock } from "./block";

/** Rows left out as means of the tests above them, beside which alone the required rate stands. */
export function meansOf(block: SheetBlock): MeanRow[] {
  const { cells, fans, listing, from } = block;
  const [flow, required] = [from.given.get("flow"), from.given.get("required")];
  if (flow === undefined || required === undefined) return [];
  const found: MeanRow[] = [];
  let test = 0;
  let above = -1;
  for (const row of block.skipped) {
    const of: number[] = [];
    for (; test < fans.length && fans[test]! < row; test++) if (fans[test]! > above) of.push(test);
    above = row;
    if (of.length === 0) continue;
    const shift = listing.shifts[of[0]!]!;
    const [mean, asked] = [flow, required].map((line) => cells.number(row, line + shift));
    const flows = of.flatMap((each) => block.number(each, "flow") ?? []);
    // A sum is no mean: that lies among what it is of.
    const isMean = mean! >= Math.min(...flows) && mean! <= Math.max(...flows);
    const isAlone = of.every((each) => block.number(each, "required") === null);
    if (isMean && isAlone && asked! > 0) found.push({ row, of });
  }
  return found;
}
