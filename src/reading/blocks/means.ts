import type { Cells } from "../cells/cells";
import { cellWord } from "../text/vocabulary";
import type { MeanRow } from "../types";
import type { SheetBlock } from "./block";

/** Rows left out as means of the tests above them, beside which alone the required rate stands. */
export function meansOf(block: SheetBlock): MeanRow[] {
  const { cells, fans, listing, from } = block;
  const [flow, required] = [from.given.get("flow"), from.given.get("required")];
  if (flow === undefined || required === undefined) return [];
  const found: MeanRow[] = [];
  let of = 0;
  let above = -1;
  for (const row of block.skipped) {
    const tests: number[] = [];
    for (; of < fans.length && fans[of]! < row; of++) if (fans[of]! > above) tests.push(of);
    above = row;
    const last = tests.at(-1);
    if (last === undefined) continue;
    const shift = listing.shifts[last]!;
    const [mean, asked] = [flow, required].map((line) => cells.number(row, line + shift));
    const flows = tests.flatMap((test) => block.number(test, "flow") ?? []);
    // A sum is no mean: that lies among what it is of.
    const isMean = mean! >= Math.min(...flows) && mean! <= Math.max(...flows);
    const isAlone = tests.every((test) => block.number(test, "required") === null);
    if (!isMean || !isAlone || !(asked! > 0)) continue;
    const verdict = verdictIn(cells, row);
    found.push({
      ...{ of: last, flow: mean!, flowAt: cells.place(row, flow + shift), required: asked! },
      verdict,
    });
  }
  return found;
}

/** The last word for pass or fail in a row. */
function verdictIn(cells: Cells, row: number): MeanRow["verdict"] {
  for (let col = cells.cols - 1; col >= 0; col--) {
    if (cells.isBlank(row, col)) continue;
    const word = cells.text(row, col).trim();
    const says = cellWord(word).verdict;
    if (says === "pass" || says === "fail") return { says, word, at: cells.place(row, col) };
  }
  return undefined;
}
