import {
  type CellValue,
  cellName,
  kept,
  longestStoredFormula,
  parseRectangle,
  type Rectangle,
  rectangleText,
} from "../cells";
import { serialOfIsoDate } from "./dates";
import { damaged, quoted, WorkbookError } from "./error";
import type { Budget } from "./limits";
import { plainWhole } from "./plain-number";
import { RowCursor } from "./row-cursor";
import { SharedFormula } from "./shared-formula";
import { type Row, SheetData, type StoredFormula } from "./sheet-data";
import { decodeXString } from "./text";

export interface ReadContext {
  readonly depth: number;
  readonly cells: Budget;
  /** Characters of text in cells. */
  readonly text: Budget;
  /** Bytes for the general XML parser. */
  readonly markup: Budget;
  readonly date1904: boolean;
  /** The shared strings, read when the first cell needs them. */
  strings(): readonly string[];
  /** Errors newer than the format by the vm attribute of their cells. */
  richErrors(): ReadonlyMap<string, string>;
}

/** The attributes of a formula element that say what kind it is. */
interface FormulaAttributes {
  readonly t?: string;
  readonly si?: string;
  readonly ref?: string;
}

/** What the cells of one sheet part mean, whichever way their elements are read. */
export class SheetContent {
  readonly data = new SheetData();
  /** Cells met so far, those that array formulas fill among them. */
  #cells = 0;
  /** Characters of text in them. */
  #text = 0;
  /** Where the cell being read stands. */
  readonly cursor: RowCursor;
  readonly #shared = new Map<string, SharedFormula>();
  /** Cells that name a shared formula before its master was met: rare, filled in when it is. */
  readonly #waiting = new Map<string, { row: Row; col: number }[]>();
  #strings: readonly string[] | undefined;

  constructor(
    private readonly part: string,
    private readonly context: ReadContext,
  ) {
    this.cursor = new RowCursor(part);
  }

  /** A stored value from its text; null where there is none. Inline strings are not read here. */
  value(type: string, text: string, isThere: boolean): CellValue {
    if (type === "str") return isThere ? this.text(decodeXString(text)) : null;
    if (text === "") return null;
    switch (type) {
      case "":
      case "n":
        return this.#number(text);
      case "s":
        return this.string(plainWhole(text.trim(), 0, text.trim().length));
      case "b":
        return this.#truth(text.trim());
      case "e":
        return { error: decodeXString(text) };
      case "d":
        return serialOfIsoDate(text, this.context.date1904) ?? this.#number(text);
      default:
        throw this.#flawed(`is of unknown type ${quoted(type)}`);
    }
  }

  /** Counts a cell. */
  cell(cells = 1): void {
    this.#cells += cells;
    if (this.#cells > this.context.cells.left) this.context.cells.take(this.#cells);
  }

  /** Counts a text that stands in a cell. */
  text(text: string): string {
    this.#text += text.length;
    if (this.#text > this.context.text.left) this.context.text.take(this.#text);
    return text;
  }

  /** What was read, counted against the limits of the workbook. */
  done(): SheetData {
    this.context.cells.take(this.#cells);
    this.context.text.take(this.#text);
    return this.data;
  }

  #truth(text: string): boolean {
    if (text === "1" || text === "true") return true;
    if (text === "0" || text === "false") return false;
    throw this.#flawed(`holds ${quoted(text)} for TRUE or FALSE`);
  }

  /** The error that a cell with a vm attribute stands for. */
  richError(vm: string, stored: CellValue): CellValue {
    const error = this.context.richErrors().get(vm);
    return error === undefined ? stored : { error };
  }

  string(index: number): string {
    this.#strings ??= this.context.strings();
    const text = this.#strings[index];
    if (text === undefined) throw this.#flawed("names a string that is missing");
    return this.text(text);
  }

  /** Whether the master of a shared formula was met. */
  hasShared(si: string): boolean {
    return this.#shared.has(si);
  }

  /** `isDynamic`: the cell is marked as one whose result spills. */
  formula(
    text: string,
    { t, si, ref }: FormulaAttributes,
    row: Row | undefined,
    isDynamic: boolean,
  ): StoredFormula {
    const { cursor, data } = this;
    if (text.length > longestStoredFormula)
      throw this.#flawed(`holds a formula of ${text.length} characters, more than a cell can`);
    if (t === "array" && ref !== undefined) {
      const key = SheetData.key(cursor.row, cursor.col);
      this.#countArray(ref);
      data.arrayRefs.set(key, ref);
      if (!isDynamic) data.fixedArrays.add(key);
    }
    // A what-if table has no formula of its own; its cells keep the values stored.
    if (t === "dataTable") return null;
    if (t !== "shared" || si === undefined) return text === "" ? null : text;
    const known = this.#shared.get(si);
    if (text === "") {
      if (known === undefined && row !== undefined)
        kept(this.#waiting, si, () => []).push({ row, col: cursor.col });
      return known ?? null;
    }
    // A second text under the same number stands for itself unless it opens a new range.
    if (known !== undefined && ref === undefined) return text;
    const master = new SharedFormula(cursor.row, cursor.col, text);
    this.#shared.set(si, master);
    for (const { row: into, col } of this.#waiting.get(si) ?? [])
      into.setFormula(into.find(col), master);
    this.#waiting.delete(si);
    return master;
  }

  /** An array formula fills its range, so that range counts as so many cells. */
  #countArray(ref: string): void {
    let range: Rectangle;
    try {
      range = parseRectangle(ref);
    } catch {
      throw this.#flawed(`holds an array formula for the range ${quoted(ref)}, which is none`);
    }
    const { top, left, bottom, right } = range;
    const cells = (bottom - top + 1) * (right - left + 1);
    if (this.#cells + cells > this.context.cells.left)
      throw new WorkbookError(
        "too-large",
        `The array formula in cell ${this.#name} fills ${rectangleText(range)}, more cells than are read: enter it for the cells it is needed in.`,
      );
    this.cell(cells);
  }

  /** A decimal number as XML Schema writes it: no hexadecimal, no Infinity, no blank. */
  #number(text: string): number {
    const parsed = /^\s*[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?\s*$/i.test(text)
      ? Number(text)
      : Number.NaN;
    if (!Number.isFinite(parsed)) throw this.#flawed(`holds ${quoted(text)} for a number`);
    return parsed;
  }

  #flawed(what: string) {
    return damaged(this.part, `cell ${this.#name} ${what}`);
  }

  get #name(): string {
    return cellName(this.cursor.row, this.cursor.col);
  }
}
