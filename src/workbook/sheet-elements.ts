import { cellName } from "../cells";
import type { SheetContent } from "./cell-content";
import { damaged } from "./error";
import { StringItem } from "./shared-strings";
import type { Row } from "./sheet-data";
import { readSheetSetting } from "./sheet-settings";
import { prefixOf, type Tag, type XmlHandlers } from "./xml";

/** Takes up the elements of a sheet part, any that the format allows. */
export class SheetElements implements XmlHandlers {
  /** The element with the cells was met. */
  sawCells = false;
  #root = "";
  #names = namesWith("");
  #item = new StringItem("", "");
  #inSheetData = false;
  /** Depth inside the current cell: 0 outside, 1 in c, 2 in its v, f or is. */
  #cellDepth = 0;
  #row: Row | undefined;

  // The current cell.
  #type = "";
  #style = 0;
  #isMarked = false;
  #vm: string | undefined;
  #value = "";
  #hasValue = false;
  #hasInline = false;
  #formula = "";
  #formulaTag: Tag | undefined;
  /** Which text is being collected. */
  #collecting: "" | "v" | "f" | "is" = "";

  constructor(
    private readonly part: string,
    private readonly content: SheetContent,
  ) {}

  open(tag: Tag): void {
    if (this.#root === "") {
      this.#root = tag.name;
      const prefix = prefixOf(tag.name);
      this.#names = namesWith(prefix);
      this.#item = new StringItem(`${prefix}t`, `${prefix}rPh`);
    } else if (this.#cellDepth > 0) this.#openInCell(tag);
    else if (this.#inSheetData) this.#openInData(tag);
    else if (tag.name === this.#names.sheetData) this.#inSheetData = this.sawCells = true;
    else readSheetSetting(this.content.data, tag, prefixOf(this.#root), !this.sawCells);
  }

  close({ name }: Tag): void {
    if (this.#cellDepth > 0) {
      if (this.#collecting === "is") this.#item.close(name);
      if (--this.#cellDepth === 1) this.#collecting = "";
      else if (this.#cellDepth === 0) this.#endCell();
    } else if (name === this.#names.row) this.#row = undefined;
    else if (name === this.#names.sheetData) this.#inSheetData = false;
  }

  text(text: string): void {
    if (this.#collecting === "v") this.#value += text;
    else if (this.#collecting === "f") this.#formula += text;
    else if (this.#collecting === "is") this.#item.text(text);
  }

  #openInData({ name, attributes }: Tag): void {
    const { cursor, data } = this.content;
    if (name === this.#names.c) {
      if (this.#row === undefined) throw damaged(this.part, "a cell stands outside a row");
      this.content.cell();
      cursor.nextCol(attributes.r);
      this.#type = attributes.t ?? "";
      this.#isMarked = attributes.cm !== undefined;
      this.#vm = attributes.vm;
      this.#style = attributes.s === undefined ? 0 : Number(attributes.s);
      this.#value = "";
      this.#formula = "";
      this.#hasValue = false;
      this.#hasInline = false;
      this.#formulaTag = undefined;
      this.#cellDepth = 1;
    } else if (name === this.#names.row) {
      this.#row = data.row(cursor.nextRow(attributes.r));
      data.describeRow(cursor.row, this.#row, attributes);
    }
  }

  #openInCell(tag: Tag): void {
    this.#cellDepth++;
    if (this.#collecting === "is") this.#item.open(tag.name);
    if (this.#cellDepth !== 2) {
      if (this.#collecting === "v" || this.#collecting === "f")
        throw this.#flawed(`holds a <${tag.name}> in its <${this.#collecting}>`);
      return;
    }
    if (tag.name === this.#names.v) {
      if (this.#hasValue) throw this.#flawed("holds two values");
      this.#hasValue = true;
      this.#collecting = "v";
    } else if (tag.name === this.#names.f) {
      if (this.#formulaTag !== undefined) throw this.#flawed("holds two formulas");
      this.#formulaTag = tag;
      this.#collecting = "f";
    } else if (tag.name === this.#names.is) {
      this.#hasInline = true;
      this.#collecting = "is";
    }
  }

  #flawed(what: string) {
    const { row, col } = this.content.cursor;
    return damaged(this.part, `cell ${cellName(row, col)} ${what}`);
  }

  #endCell(): void {
    const { content } = this;
    const { col } = content.cursor;
    const into = this.#row as Row;
    const tag = this.#formulaTag;
    const formula =
      tag === undefined
        ? null
        : content.formula(this.#formula, tag.attributes, into, this.#isMarked);
    const value = this.#readValue();
    const last = into.cols.length - 1;
    let place = last + 1;
    if (last >= 0 && col <= (into.cols[last] as number)) {
      place = into.find(col);
      if (place >= 0)
        throw damaged(this.part, `it holds the cell ${cellName(content.cursor.row, col)} twice`);
      place = ~place;
    }
    into.insert(place, col, value, formula, this.#style);
  }

  #readValue() {
    if (this.#type !== "inlineStr") {
      const value = this.content.value(this.#type, this.#value, this.#hasValue);
      return this.#type === "e" && this.#vm !== undefined
        ? this.content.richError(this.#vm, value)
        : value;
    }
    const inline = this.#hasInline ? this.content.text(this.#item.take()) : null;
    // Beside a formula an empty text in place of a value says that none was worked out.
    return inline === "" && this.#formulaTag !== undefined ? null : inline;
  }
}

function namesWith(prefix: string) {
  const [sheetData, row, c] = [`${prefix}sheetData`, `${prefix}row`, `${prefix}c`];
  return { sheetData, row, c, v: `${prefix}v`, f: `${prefix}f`, is: `${prefix}is` };
}
