import { maxRows, rowPlaces } from "../cells";

/**
 * The formula met last in a column, to know the next one as the same copied down: the texts are
 * equal but for the row numbers of relative references, which have moved along. This costs a
 * fraction of working out the pattern, which decides wherever this test says no.
 */
export class CopiedDown<T> {
  private readonly places: readonly number[];

  constructor(
    private readonly formula: string,
    row: number,
    col: number,
    /** What is known of the formula: its program, or whatever its reader keeps. */
    readonly program: T,
  ) {
    this.places = rowPlaces(formula, row, col);
  }

  /** Whether a formula in the same column, at this row, has the same pattern. May miss one that has. */
  matches(formula: string, row: number): boolean {
    const { places, formula: model } = this;
    let at = 0;
    let from = 0;
    for (let i = 0; i < places.length; i += 3) {
      const start = places[i] as number;
      for (; from < start; from++, at++)
        if (formula.charCodeAt(at) !== model.charCodeAt(from)) return false;
      const expected = row + (places[i + 2] as number) + 1;
      if (expected < 1 || expected > maxRows) return false;
      let number = 0;
      for (; ; at++) {
        const digit = formula.charCodeAt(at) - 48;
        if (!(digit >= 0 && digit <= 9)) break;
        number = number * 10 + digit;
      }
      if (number !== expected) return false;
      from = places[i + 1] as number;
    }
    if (formula.length - at !== model.length - from) return false;
    for (; from < model.length; from++, at++)
      if (formula.charCodeAt(at) !== model.charCodeAt(from)) return false;
    return true;
  }
}
