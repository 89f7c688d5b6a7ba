import { type CellValue, CopiedDown, longestStoredFormula, maxCols, packedRef } from "../cells";
import type { SheetContent } from "./cell-content";
import { CopiedFormula } from "./copied-formula";
import { plainNumber, plainWhole } from "./plain-number";
import { PlainText } from "./plain-text";
import { Row, type RowShape, type StoredFormula } from "./sheet-data";
import { decodeXString } from "./text";
import { holds } from "./text-pool";

const zero = 48;
const letterA = 65;
const letterZ = 90;
const quote = 34;
const letterF = 102;
const letterI = 105;
const letterR = 114;
const letterS = 115;
const letterT = 116;
const letterV = 118;
const slash = 47;
const less = 60;
const greater = 62;

/** The types of cells, each with the quote after it. */
const types = ['s"', 'str"', 'inlineStr"', 'b"', 'e"', 'n"'];

/**
 * Reads cells in the plain form that spreadsheet programs write: rows, cells, values, formulas and
 * unformatted inline strings, without comments or prefixes, each row once and its cells in order.
 * Anything else throws NotPlain.
 */
export class PlainCells {
  readonly #xml: PlainText;
  #above: RowShape = { cols: [], formulas: [], styles: [] };

  // The current row, copied in one piece when it is done.
  #cols: number[] = [];
  #values: CellValue[] = [];
  #formulas: StoredFormula[] = [];
  #styles: number[] = [];

  /** The formula met last in each column: its text, or what it is a copy of. */
  #latest: (string | CopiedFormula)[] = [];
  #latestRow: number[] = [];

  // The current cell.
  #type = "";
  #style = 0;
  /** The cell carries metadata, which marks a formula that spills. */
  #isMarked = false;
  /** Its vm attribute, which may tell a newer error. */
  #vm: string | undefined;

  constructor(
    /** The cell data in pieces, each of whole rows. */
    private readonly pieces: Iterator<string>,
    private readonly content: SheetContent,
  ) {
    this.#xml = new PlainText("", 0);
  }

  /** Reads up to the end tag of the cell data; returns the text from there on, as far as it was read. */
  read(): string {
    const xml = this.#xml;
    for (;;) {
      xml.skipSpace();
      const start = xml.at;
      if (start === xml.text.length) this.#next();
      else if (xml.skip("</sheetData>")) return xml.text.slice(start);
      else {
        xml.expect("<row");
        this.#row();
      }
    }
  }

  #next(): void {
    const { done, value } = this.pieces.next();
    if (done) this.#xml.fail();
    this.#xml.text = value;
    this.#xml.at = 0;
  }

  #row(): void {
    const xml = this.#xml;
    const { cursor, data } = this.content;
    const attributes = xml.attributes();
    const index = cursor.nextRow(attributes.r);
    if (data.rows.has(index)) xml.fail();
    let count = 0;
    if (!xml.skip("/>")) {
      xml.expect(">");
      for (; ; count++) {
        xml.skipSpace();
        if (!xml.skip("<c")) break;
        this.#cell(count);
      }
      xml.expect("</row>");
    }
    const row = new Row(this.#shape(count), this.#values.slice(0, count), true);
    data.add(index, row);
    data.describeRow(index, row, attributes);
  }

  /** What the row says beside its values: as the row above, where it says the same. */
  #shape(count: number): RowShape {
    const above = this.#above;
    if (above.cols.length === count) {
      let i = 0;
      while (
        i < count &&
        above.cols[i] === this.#cols[i] &&
        above.formulas[i] === this.#formulas[i] &&
        above.styles[i] === this.#styles[i]
      )
        i++;
      if (i === count) return above;
    }
    this.#above = {
      cols: this.#cols.slice(0, count),
      formulas: this.#formulas.slice(0, count),
      styles: this.#styles.slice(0, count),
    };
    return this.#above;
  }

  #cell(place: number): void {
    const xml = this.#xml;
    const { cursor } = this.content;
    const last = place === 0 ? -1 : cursor.col;
    this.content.cell();
    this.#openCell();
    if (cursor.col <= last) xml.fail();
    this.#cols[place] = cursor.col;
    this.#styles[place] = this.#style;
    this.#values[place] = null;
    this.#formulas[place] = null;
    if (xml.skip("/>")) return;
    xml.expect(">");
    this.#cellContent(place);
  }

  /** The attributes of a cell. */
  #openCell(): void {
    if (!this.#openPlain()) this.#openAny();
  }

  /**
   * The attributes as nearly all programs write them: r, then s, then t where they are given, each
   * after one blank. False, with nothing moved over, where they stand otherwise.
   */
  #openPlain(): boolean {
    const xml = this.#xml;
    const { text } = xml;
    const { cursor } = this.content;
    let at = xml.at;
    if (!holds(text, at, ' r="')) return false;
    at += 4;
    let letters = 0;
    let code = text.charCodeAt(at);
    for (; code >= letterA && code <= letterZ; code = text.charCodeAt(++at))
      letters = letters * 26 + code - letterA + 1;
    let row = 0;
    for (let digit = code - zero; digit >= 0 && digit <= 9; digit = code - zero) {
      row = row * 10 + digit;
      code = text.charCodeAt(++at);
    }
    if (code !== quote || letters < 1 || letters > maxCols || row !== cursor.row + 1) return false;
    at++;
    let style = 0;
    if (holds(text, at, ' s="')) {
      const start = at + 4;
      for (at = start; at < start + 10; at++) {
        const digit = text.charCodeAt(at) - zero;
        if (!(digit >= 0 && digit <= 9)) break;
        style = style * 10 + digit;
      }
      if (at === start || at > start + 9 || text.charCodeAt(at) !== quote) return false;
      at++;
    }
    let type = "";
    if (holds(text, at, ' t="')) {
      const known = types.find((each) => holds(text, at + 4, each));
      if (known === undefined) return false;
      at += 4 + known.length;
      type = known.slice(0, -1);
    }
    code = text.charCodeAt(at);
    if (code !== greater && code !== slash) return false;
    xml.at = at;
    cursor.col = letters - 1;
    this.#style = style;
    this.#type = type;
    this.#isMarked = false;
    this.#vm = undefined;
    return true;
  }

  #openAny(): void {
    const xml = this.#xml;
    const { text } = xml;
    const { cursor } = this.content;
    let packed = cursor.row * maxCols + cursor.col + 1;
    let seen = 0;
    let others: Set<string> | undefined;
    this.#type = "";
    this.#style = 0;
    this.#vm = undefined;
    while (xml.nextAttribute()) {
      const { nameStart, nameEnd, valueStart, valueEnd } = xml;
      const letter = nameEnd - nameStart === 1 ? text.charCodeAt(nameStart) : 0;
      let bit = 0;
      if (letter === letterR) {
        bit = 1;
        packed = packedRef(text, valueStart, valueEnd);
      } else if (letter === letterS) {
        bit = 2;
        this.#style = plainWhole(text, valueStart, valueEnd);
        if (Number.isNaN(this.#style)) xml.fail();
      } else if (letter === letterT) {
        bit = 4;
        this.#type = xml.pool.slice(text, valueStart, valueEnd);
      } else {
        const name = text.slice(nameStart, nameEnd);
        if (others?.has(name)) xml.fail();
        others ??= new Set();
        others.add(name);
        if (name === "vm") this.#vm = text.slice(valueStart, valueEnd);
      }
      if ((seen & bit) !== 0) xml.fail();
      seen |= bit;
    }
    this.#isMarked = others?.has("cm") === true;
    cursor.col = packed - cursor.row * maxCols;
    if (packed < 0 || cursor.col < 0 || cursor.col >= maxCols) xml.fail();
  }

  #cellContent(place: number): void {
    const xml = this.#xml;
    const { text } = xml;
    let value: CellValue | undefined;
    let inline: string | undefined;
    let hasFormula = false;
    for (;;) {
      xml.skipSpace();
      if (text.charCodeAt(xml.at) !== less) xml.fail();
      const next = text.charCodeAt(xml.at + 1);
      if (next === slash) break;
      xml.at += 2;
      if (next === letterF && !hasFormula) {
        hasFormula = true;
        this.#formulas[place] = this.#formula();
      } else if (next === letterV && value === undefined) value = this.#value();
      else if (next === letterI && inline === undefined) inline = this.#inlineString();
      else xml.fail();
    }
    xml.expect("</c>");
    if (inline !== undefined) {
      if (this.#type !== "inlineStr") xml.fail();
      // Beside a formula an empty text in place of a value says that none was worked out.
      if (inline !== "" || !hasFormula) this.#values[place] = inline;
    } else if (value !== undefined) this.#values[place] = value;
  }

  #formula(): StoredFormula {
    const xml = this.#xml;
    if (xml.text.charCodeAt(xml.at) === greater) return this.#copied() ?? this.#single();
    const attributes = xml.attributes();
    const formula = this.#inner("</f>");
    const { t, si } = attributes;
    if (t === "shared" && si !== undefined && formula === "" && !this.content.hasShared(si))
      xml.fail();
    return this.content.formula(formula, attributes, undefined, this.#isMarked);
  }

  /** The formula above in the column, where the one that comes next is the same copied down. */
  #copied(): CopiedFormula | undefined {
    const xml = this.#xml;
    const { row, col } = this.content.cursor;
    let known = this.#latest[col];
    if (known === undefined) return undefined;
    if (typeof known === "string") {
      if (!CopiedDown.suits(known)) return undefined;
      known = new CopiedFormula(known, this.#latestRow[col] as number, col);
      this.#latest[col] = known;
    }
    const end = known.endIn(xml.text, xml.at + 1, row);
    // What does not end here is another formula, and read as such.
    if (end < 0 || !holds(xml.text, end, "</f>")) return undefined;
    xml.at = end + 4;
    return known;
  }

  #single(): StoredFormula {
    const { row, col } = this.content.cursor;
    const formula = this.#inner("</f>");
    if (formula === "") return null;
    if (formula.length > longestStoredFormula) this.#xml.fail();
    this.#latest[col] = formula;
    this.#latestRow[col] = row;
    return formula;
  }

  #value(): CellValue {
    const xml = this.#xml;
    const { text } = xml;
    const type = this.#type;
    if (type === "" || type === "n" || type === "s") {
      if (text.charCodeAt(xml.at) === greater) {
        const number = plainNumber(text, xml.at + 1);
        if (!Number.isNaN(number)) {
          xml.at = text.indexOf("<", xml.at);
          xml.expect("</v>");
          return type === "s" ? this.content.string(number) : number;
        }
      }
    }
    if (text.charCodeAt(xml.at) !== greater) xml.attributes();
    const written = this.#inner("</v>");
    if (type === "inlineStr") return null;
    const value = this.content.value(type, written, true);
    return type === "e" && this.#vm !== undefined ? this.content.richError(this.#vm, value) : value;
  }

  #inlineString(): string {
    const xml = this.#xml;
    xml.expect("s>");
    xml.skipSpace();
    xml.expect("<t");
    if (xml.text.charCodeAt(xml.at) !== greater) xml.attributes();
    const written = this.#inner("</t>");
    xml.skipSpace();
    xml.expect("</is>");
    return this.content.text(decodeXString(written));
  }

  /** The text of an element whose attributes were read, up to and past its end tag. */
  #inner(end: string): string {
    const xml = this.#xml;
    if (xml.skip("/>")) return "";
    xml.expect(">");
    const text = xml.content();
    xml.expect(end);
    return text;
  }
}
