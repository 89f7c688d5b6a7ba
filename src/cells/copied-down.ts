import { maxRows } from "./rectangle";
import { rowPlaces } from "./row-pattern";

/** What stands for all the texts of a formula copied down a column. */
export interface Copied {
  /** The formula as it stands in a row. */
  at(row: number): string;
}

/**
 * The formula met last in a column, to know the next one as the same copied down: the texts are
 * equal but for the row numbers of relative references, which have moved along. This costs a
 * fraction of working out the pattern, which decides wherever this test says no.
 */
export class CopiedDown implements Copied {
  /** Where row numbers stand in the text, as `rowPlaces` tells them. */
  readonly places: readonly number[];

  constructor(
    private readonly formula: string,
    row: number,
    col: number,
  ) {
    this.places = rowPlaces(formula, row, col);
  }

  /** Whether formulas can be told to be the same by their text: tables depend on where they stand. */
  static suits(formula: string): boolean {
    return !formula.includes("[");
  }

  at(row: number): string {
    const { formula, places } = this;
    let text = "";
    let from = 0;
    for (let i = 0; i < places.length; i += 3) {
      text += formula.slice(from, places[i]) + (row + (places[i + 2] as number) + 1);
      from = places[i + 1] as number;
    }
    return text + formula.slice(from);
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
      at = afterNumber(formula, at, row + (places[i + 2] as number) + 1);
      if (at < 0) return false;
      from = places[i + 1] as number;
    }
    if (formula.length - at !== model.length - from) return false;
    for (; from < model.length; from++, at++)
      if (formula.charCodeAt(at) !== model.charCodeAt(from)) return false;
    return true;
  }
}

/** Where a row number ends that stands at a place just as a program writes it, or -1. */
export function afterNumber(text: string, start: number, expected: number): number {
  if (expected < 1 || expected > maxRows || text.charCodeAt(start) === zero) return -1;
  let number = 0;
  let at = start;
  for (; ; at++) {
    const digit = text.charCodeAt(at) - zero;
    if (!(digit >= 0 && digit <= 9)) break;
    number = number * 10 + digit;
  }
  return number === expected ? at : -1;
}

const zero = 48;
