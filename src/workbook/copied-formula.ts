import { maxRows, rowPlaces } from "../cells";
import { SharedFormula } from "./shared-formula";
import { escapeText } from "./text";

/**
 * A formula that stands copied down a column: each cell has its own text in the file, equal but for
 * the row numbers of relative references, which move along. The text is made when asked for: a
 * large sheet has hundreds of thousands of them, and most readers need only know that it is the same.
 */
export class CopiedFormula extends SharedFormula {
  /** Where row numbers stand in the formula, three numbers each: start, end, row less the own row. */
  readonly #places: readonly number[];
  /** The same for the formula as it is written in XML, with its code units. */
  readonly #written: readonly number[];
  readonly #codes: Uint16Array;

  constructor(formula: string, row: number, col: number) {
    // No cell is the master that others would lose with it.
    super(-1, col, formula);
    this.#places = rowPlaces(formula, row, col);
    const written = escapeText(formula);
    this.#written = written === formula ? this.#places : rowPlaces(written, row, col);
    this.#codes = new Uint16Array(written.length);
    for (let i = 0; i < written.length; i++) this.#codes[i] = written.charCodeAt(i);
  }

  /** Whether formulas can be told to be the same by their text: tables depend on where they stand. */
  static suits(formula: string): boolean {
    return !formula.includes("[");
  }

  override at(row: number): string {
    const { formula } = this;
    const places = this.#places;
    let text = "";
    let from = 0;
    for (let i = 0; i < places.length; i += 3) {
      text += formula.slice(from, places[i]) + (row + (places[i + 2] as number) + 1);
      from = places[i + 1] as number;
    }
    return text + formula.slice(from);
  }

  /**
   * Where the text that `at` gives for this row ends, when it stands at this place in XML, with no
   * more escaped than must be and ">"; -1 when another text stands there.
   */
  endIn(text: string, start: number, row: number): number {
    const places = this.#written;
    const codes = this.#codes;
    let at = start;
    let from = 0;
    for (let i = 0; i < places.length; i += 3) {
      const to = places[i] as number;
      for (; from < to; from++, at++) if (text.charCodeAt(at) !== codes[from]) return -1;
      at = afterNumber(text, at, row + (places[i + 2] as number) + 1);
      if (at < 0) return -1;
      from = places[i + 1] as number;
    }
    for (; from < codes.length; from++, at++) if (text.charCodeAt(at) !== codes[from]) return -1;
    return at;
  }
}

/** Where a number ends that stands at a place just as a program writes it, or -1. */
function afterNumber(text: string, start: number, expected: number): number {
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
