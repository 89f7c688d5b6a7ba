import { type CellValue, kept, type Rectangle } from "../../cells";
import type { ReadGrid } from "../host";
import { textNumber } from "../text/number";
import { FormulaShapes, type Shape } from "./shapes";

/** What a cell holds, as far as reading goes. */
export const Kind = { blank: 0, number: 1, textNumber: 2, text: 3, flag: 4, error: 5 } as const;

/** More cells than this are not looked at: the columns furthest right are left out. */
const mostCells = 12_000_000;

/**
 * The cells of one sheet in typed arrays. `turned` gives the same cells with rows and columns
 * swapped, so that one code reads sheets that run either way.
 */
export class Cells {
  readonly rows: number;
  readonly cols: number;
  private constructor(
    readonly grid: ReadGrid,
    readonly turned: boolean,
    private readonly width: number,
    private readonly height: number,
    private readonly kinds: Uint8Array,
    private readonly numbers: Float64Array,
    private readonly texts: Int32Array,
    private readonly pool: readonly string[],
    private readonly formulas: Int32Array,
    readonly shapes: readonly Shape[],
  ) {
    this.rows = turned ? width : height;
    this.cols = turned ? height : width;
  }

  static load(grid: ReadGrid): Cells {
    const height = grid.rowCount;
    const width = Math.min(grid.colCount, Math.max(1, Math.floor(mostCells / Math.max(1, height))));
    const size = width * height;
    const kinds = new Uint8Array(size);
    const numbers = new Float64Array(size);
    const texts = new Int32Array(size);
    const formulas = new Int32Array(size);
    const pool: string[] = [""];
    const ids = new Map<string, number>();
    const shapes = new FormulaShapes(grid);
    const rows = Array.from({ length: height }, (_, row) => row);
    for (let col = 0; col < width; col++) {
      const values = grid.column?.(col, rows);
      for (let row = 0; row < height; row++) {
        const at = row * width + col;
        const value = values ? values[row]! : grid.value(row, col);
        const made = grid.hasFormula ? grid.hasFormula(row, col) : true;
        if (made) formulas[at] = shapes.at(row, col);
        if (value === null || value === "") continue;
        kinds[at] = kindOf(value);
        if (typeof value === "number") numbers[at] = value;
        if (typeof value !== "string") continue;
        const number = textNumber(value);
        if (number !== undefined) {
          kinds[at] = Kind.textNumber;
          numbers[at] = number;
        } else if (value.trim() === "") kinds[at] = Kind.blank;
        const id = kept(ids, value, () => pool.push(value) - 1);
        texts[at] = id;
      }
    }
    return new Cells(grid, false, width, height, kinds, numbers, texts, pool, formulas, shapes.all);
  }

  turn(): Cells {
    const { grid, turned, width, height, kinds, numbers, texts, pool, formulas, shapes } = this;
    return new Cells(grid, !turned, width, height, kinds, numbers, texts, pool, formulas, shapes);
  }

  private at(row: number, col: number): number {
    return this.turned ? col * this.width + row : row * this.width + col;
  }

  has(row: number, col: number): boolean {
    return row >= 0 && col >= 0 && row < this.rows && col < this.cols;
  }

  kind(row: number, col: number): number {
    return this.kinds[this.at(row, col)]!;
  }

  isNumber(row: number, col: number): boolean {
    const kind = this.kind(row, col);
    return kind === Kind.number || kind === Kind.textNumber;
  }

  /** The number of a cell, also one written as text; NaN where there is none. */
  number(row: number, col: number): number {
    const at = this.at(row, col);
    const kind = this.kinds[at]!;
    return kind === Kind.number || kind === Kind.textNumber ? this.numbers[at]! : Number.NaN;
  }

  /** The text of a cell that holds one, also of a number written as text; "" where there is none. */
  text(row: number, col: number): string {
    return this.pool[this.texts[this.at(row, col)]!]!;
  }

  /** The same number for the same text of this sheet, 0 where there is none. */
  textId(row: number, col: number): number {
    return this.texts[this.at(row, col)]!;
  }

  textOf(id: number): string {
    return this.pool[id]!;
  }

  isBlank(row: number, col: number): boolean {
    return this.kinds[this.at(row, col)] === Kind.blank;
  }

  hasFormula(row: number, col: number): boolean {
    return this.formulas[this.at(row, col)] !== 0;
  }

  /** The formula of a cell, one object for all its copies. */
  shape(row: number, col: number): Shape | undefined {
    const id = this.formulas[this.at(row, col)]!;
    return id === 0 ? undefined : this.shapes[id];
  }

  isDate(row: number, col: number): boolean {
    const { grid, turned } = this;
    const format = turned ? grid.numberFormat?.(col, row) : grid.numberFormat?.(row, col);
    return format !== undefined && /[yd]/i.test(format.replace(/"[^"]*"|\[[^\]]*\]|\\./g, ""));
  }

  get merges(): readonly Rectangle[] {
    const own = this.grid.merges ?? [];
    if (!this.turned) return own;
    return own.map(({ top, left, bottom, right }) => ({
      top: left,
      left: top,
      bottom: right,
      right: bottom,
    }));
  }

  /** Row and column of the sheet itself. */
  place(row: number, col: number): { sheet: string; row: number; col: number } {
    return this.turned
      ? { sheet: this.grid.name, row: col, col: row }
      : { sheet: this.grid.name, row, col };
  }
}

function kindOf(value: Exclude<CellValue, null>): number {
  if (typeof value === "number") return Kind.number;
  if (typeof value === "string") return Kind.text;
  return typeof value === "boolean" ? Kind.flag : Kind.error;
}
