import { typeset } from "../../algebra";
import type { System } from "../../editions";
import type { Formula, Source, Unit } from "../../formulas";
import { withUnit } from "./say";
import type { Grounds } from "./working";

/** What a rule gave: a number or a word, where it stands, and how it came about. */
interface Ruled {
  readonly value: number | string;
  readonly source: Source;
  readonly working: string;
}

/**
 * A rule's answer with its own words and clause. The rules write their sums with numbers; where one
 * is a sum by one of `formulas`, the symbols are put before it and the result after it.
 */
export function lookedUp(
  { value, source, working }: Ruled,
  unit: Unit,
  system: System | undefined,
  formulas: readonly Formula[] = [],
): Grounds {
  const parts = working.split("; ");
  const words = parts.map((part, i) => {
    const symbols = symbolsOf(part, formulas);
    if (symbols === undefined) return part;
    const line = `${symbols}${part.slice(part.indexOf(" = "))}`;
    const isLast = i === parts.length - 1 && typeof value === "number";
    return isLast ? `${line} = ${withUnit(value, unit, system)}` : line;
  });
  return { words, sources: [source], gives: [value], unit };
}

/** The symbols of the formula that a sum was written by, known by what it gives and its shape. */
function symbolsOf(sum: string, formulas: readonly Formula[]): string | undefined {
  const lines = formulas.flatMap((formula) => typeset(formula).symbols);
  const result = (line: string) => line.slice(0, Math.max(0, line.indexOf(" = ")));
  const shape = (line: string) => line.slice(line.indexOf(" = ")).replace(/[\p{L}\p{N}._]+/gu, "#");
  return lines.find(
    (line) => result(sum) !== "" && result(line) === result(sum) && shape(line) === shape(sum),
  );
}
