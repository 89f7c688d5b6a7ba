import type { Formula } from "../formulas";
import type { Expression } from "./expression";

/** Makes the trees that do not stand ready. */
export interface Maker {
  parse(text: string): Expression;
  differentiate(formula: Formula, symbol: string): Expression;
}

let maker: Maker | undefined;

/**
 * Lets trees that do not stand ready be made on the spot. Tests do so; nothing that ships does,
 * and so no bundle carries the parser.
 */
export function makeTreesWith(other: Maker): void {
  maker = other;
}

/** The maker, where there is one; without it a text whose tree does not stand ready is refused. */
export function makerFor(text: string): Maker {
  if (!maker)
    throw new Error(
      `the formula text "${text}" has no tree in src/algebra/made: run npm run formulas`,
    );
  return maker;
}
