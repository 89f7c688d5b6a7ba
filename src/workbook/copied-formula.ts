import { afterNumber, type Copied, CopiedDown, rowPlaces } from "../cells";
import { SharedFormula } from "./shared-formula";
import { escapeText } from "./text";

/**
 * A formula that stands copied down a column: each cell has its own text in the file, equal but for
 * the row numbers of relative references, which move along. The text is made when asked for: a
 * large sheet has hundreds of thousands of them, and most readers need only know that it is the same.
 */
export class CopiedFormula extends SharedFormula implements Copied {
  readonly #copied: CopiedDown;
  /** Where row numbers stand in the formula as it is written in XML, with its code units. */
  readonly #written: readonly number[];
  readonly #codes: Uint16Array;

  constructor(formula: string, row: number, col: number) {
    // No cell is the master that others would lose with it.
    super(-1, col, formula);
    this.#copied = new CopiedDown(formula, row, col);
    const written = escapeText(formula);
    this.#written = written === formula ? this.#copied.places : rowPlaces(written, row, col);
    this.#codes = new Uint16Array(written.length);
    for (let i = 0; i < written.length; i++) this.#codes[i] = written.charCodeAt(i);
  }

  override at(row: number): string {
    return this.#copied.at(row);
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
