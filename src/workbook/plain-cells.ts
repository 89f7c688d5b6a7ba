import {
  type CellValue,
  CopiedDown,
  columnLetters,
  longestStoredFormula,
  maxCols,
  packedRef,
} from "../cells";
import type { SheetContent } from "./cell-content";
import { CopiedFormula } from "./copied-formula";
import { plainNumber, plainWhole } from "./plain-number";
import { PlainText } from "./plain-text";
import { Row, type RowShape, type StoredFormula } from "./sheet-data";
import { decodeXString } from "./text";
import { apart, holds } from "./text-pool";

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

/** How a cell is written from behind its row number up to its formula or value, and after it. */
interface CellForm {
  readonly tail: string;
  readonly type: string;
  readonly style: number;
  readonly hasFormula: boolean;
  /** "" for a cell without content. */
  readonly end: string;
}

/** Cells of a column are written in a few ways: with a value and without. */
const mostForms = 4;

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

  /** By column, how cells in it were written, lately met first. */
  readonly #forms: CellForm[][] = [];
  /** By column, how its cells begin up to the row number. */
  readonly #heads: string[] = [];
  /** By column and one more, the column that followed it; the first stands for the start of a row. */
  readonly #following: number[] = [];
  /** The number of the row as it is written. */
  #rowNumber = "";

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
    this.#rowNumber = String(index + 1);
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
    if (this.#again(place)) return;
    const start = xml.at;
    this.content.cell();
    this.#openCell();
    if (cursor.col <= last) xml.fail();
    if (!this.#isMarked && this.#vm === undefined) this.#learn(last, start);
    this.#cols[place] = cursor.col;
    this.#styles[place] = this.#style;
    this.#values[place] = null;
    this.#formulas[place] = null;
    if (xml.skip("/>")) return;
    xml.expect(">");
    this.#cellContent(place);
  }

  /**
   * A cell written as one of its column before, but for its row number and value: true when it was read.
   * Nothing is moved over where it is written otherwise.
   */
  #again(place: number): boolean {
    const xml = this.#xml;
    const { text } = xml;
    const { content } = this;
    const col = this.#following[place === 0 ? 0 : content.cursor.col + 1];
    const head = col === undefined ? undefined : this.#heads[col];
    if (col === undefined || head === undefined || !holds(text, xml.at, head)) return false;
    let at = xml.at + head.length;
    if (!holds(text, at, this.#rowNumber)) return false;
    at += this.#rowNumber.length;
    let form: CellForm | undefined;
    for (const each of this.#forms[col] as CellForm[])
      if (holds(text, at, each.tail)) {
        form = each;
        break;
      }
    if (!form) return false;
    at += form.tail.length;
    let formula: StoredFormula = null;
    if (form.hasFormula) {
      const copied = this.#latest[col];
      const end = copied instanceof CopiedFormula ? copied.endIn(text, at, content.cursor.row) : -1;
      if (end < 0 || !holds(text, end, "</f><v>")) return false;
      formula = copied as CopiedFormula;
      at = end + 7;
    }
    let value: CellValue = null;
    if (form.type === "inlineStr" || form.type === "str") {
      const end = xml.plainEnd(at);
      if (!holds(text, end, form.end)) return false;
      value = content.text(decodeXString(xml.pool.slice(text, at, end)));
      at = end;
    } else if (form.end !== "") {
      const number = plainNumber(text, at);
      at = text.indexOf("<", at);
      if (Number.isNaN(number) || !holds(text, at, form.end)) return false;
      value = form.type === "s" ? content.string(number) : number;
    }
    xml.at = at + form.end.length;
    content.cell();
    content.cursor.col = col;
    this.#cols[place] = col;
    this.#styles[place] = form.style;
    this.#values[place] = value;
    this.#formulas[place] = formula;
    return true;
  }

  /** Notes how a cell is written that began at a place, for others of its column. */
  #learn(before: number, start: number): void {
    const { text } = this.#xml;
    const { col } = this.content.cursor;
    const head = ` r="${columnLetters(col)}`;
    const from = start + head.length + this.#rowNumber.length;
    if (!holds(text, start, head + this.#rowNumber) || text.charCodeAt(from) !== quote) return;
    const isInline = this.#type === "inlineStr";
    const opening = [isInline ? "<is><t>" : "<v>", ...(isInline ? [] : ["<f>"])];
    const tagEnd = text.indexOf(">", from) + 1;
    const isEmpty = text.charCodeAt(tagEnd - 2) === slash;
    const next = isEmpty ? "" : opening.find((each) => holds(text, tagEnd, each));
    const isKnown = ["", "n", "s", "str", "inlineStr"].includes(this.#type);
    if (next === undefined || !isKnown || (this.#type === "str" && next === "<v>")) return;
    this.#following[before + 1] = col;
    this.#heads[col] = head;
    this.#forms[col] ??= [];
    const forms = this.#forms[col] as CellForm[];
    const tail = apart(text, from, tagEnd + next.length);
    if (forms.some((form) => form.tail === tail)) return;
    forms.unshift({
      tail,
      type: this.#type,
      style: this.#style,
      hasFormula: next === "<f>",
      end: isEmpty ? "" : isInline ? "</t></is></c>" : "</v></c>",
    });
    forms.length = Math.min(forms.length, mostForms);
  }

  /** The attributes of a cell. */
  #openCell(): void {
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
