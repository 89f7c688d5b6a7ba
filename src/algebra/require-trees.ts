import type { Formula } from "../formulas";
import { programOf } from "./program";

/**
 * Throws where a formula's text has no tree, and says how to mend it. Whatever catches the errors
 * of single cells asks this first, so that a forgotten tree never passes for a bad cell.
 */
export function requireTrees(formulas: readonly Formula[]): void {
  for (const formula of formulas) programOf(formula);
}
