import { kept } from "../../cells";
import type { SheetBlock } from "../blocks/block";
import type { Book } from "../formulas/book";
import { testsOf } from "../formulas/tests";
import { cellWord } from "../text/vocabulary";
import type { Habits } from "../types";
import type { Answered } from "./answered";

/** The firm's words for pass and fail, and how the verdict is come by. */
export function verdictOf(
  block: SheetBlock,
  book: Book,
  answered: Answered,
): Pick<Habits, "pass" | "fail" | "neither" | "verdict" | "unknown"> {
  const [pass, fail, neither] = [new Set<string>(), new Set<string>(), new Set<string>()];
  if (!block.from.given.has("verdict"))
    return { pass: [], fail: [], neither: [], verdict: undefined, unknown: [] };
  let [typed, computed, ownNumber] = [0, 0, 0];
  const meaningOf = (word: string) => answered("verdict", word) ?? cellWord(word).verdict;
  const agrees = new Map<string, { met: number; short: number; byFormula: boolean }>();
  for (let at = 0; at < block.fans.length + block.means.length; at++) {
    const place = block.at(at, "verdict");
    if (!place) continue;
    const { row, col } = place;
    const shape = block.cells.shape(row, col);
    const text = block.cells.text(row, col).trim();
    if (shape) {
      computed++;
      for (const { number, yes, no, left, right } of testsOf(shape, block.cells, row, col, book)
        .comparisons) {
        if (number !== undefined && (left.length === 0 || right.length === 0)) ownNumber++;
        const words = [yes, no].filter((word) => word !== undefined);
        for (const word of words)
          if (meaningOf(word) === undefined)
            kept(agrees, word, () => ({ met: 0, short: 0, byFormula: true }));
      }
    } else if (text !== "") typed++;
    if (text === "") continue;
    const known = meaningOf(text);
    if (known) (known === "pass" ? pass : known === "fail" ? fail : neither).add(text);
    const [flow, required] = [block.number(at, "flow"), block.number(at, "required")];
    if (known || flow === null || required === null) continue;
    const votes = kept(agrees, text, () => ({ met: 0, short: 0, byFormula: shape !== undefined }));
    if (flow >= required) votes.met++;
    else votes.short++;
  }
  const unknown: { role: "verdict"; word: string }[] = [];
  // A word that is not known means what it agrees with; typed a single time, it agrees with anything.
  for (const [word, { met, short, byFormula }] of agrees) {
    const votes = met + short;
    if (votes === 0) continue;
    const isLearnt = byFormula || votes > 1;
    if (isLearnt && met >= 0.75 * votes) pass.add(word);
    else if (isLearnt && short >= 0.75 * votes) fail.add(word);
    else {
      neither.add(word);
      unknown.push({ role: "verdict", word });
    }
  }
  const verdict =
    computed > typed
      ? ownNumber > computed / 2
        ? "flow against a number"
        : "flow against required"
      : typed
        ? "typed"
        : undefined;
  return { pass: [...pass], fail: [...fail], neither: [...neither], verdict, unknown };
}
