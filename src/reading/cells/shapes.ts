import { columnIndex, kept } from "../../cells";
import type { ReadGrid } from "../host";

/** One formula as it stands in all the cells that it was copied to. */
export interface Shape {
  readonly id: number;
  /** The formula where it was met first, without "=". */
  readonly formula: string;
  readonly row: number;
  readonly col: number;
}

const pieces =
  /"(?:[^"]|"")*"|'(?:[^']|'')*'!?|\[[^\]]*\]|(?<![\p{L}\p{N}_.])(\$?)([A-Za-z]{1,3})(\$?)(\d{1,7})(?![\p{L}\p{N}_(!.])/gu;

/** Gives formulas that are copies of each other one number, so that each is parsed once. */
export class FormulaShapes {
  /** The shape of number 0 is none. */
  readonly all: Shape[] = [{ id: 0, formula: "", row: 0, col: 0 }];
  private readonly byObject = new Map<object, number>();
  private readonly byText = new Map<string, number>();

  constructor(private readonly grid: ReadGrid) {}

  /** The number of the cell's shape; 0 where it holds no formula. */
  at(row: number, col: number): number {
    const copy = this.grid.copyOf?.(row, col) ?? null;
    if (copy !== null) {
      const known = this.byObject.get(copy);
      if (known !== undefined) return known;
    }
    const formula = this.grid.formula(row, col);
    if (formula === null) return 0;
    const text = relative(formula, row, col);
    const id = kept(
      this.byText,
      text,
      () => this.all.push({ id: this.all.length, formula, row, col }) - 1,
    );
    if (copy !== null) this.byObject.set(copy, id);
    return id;
  }
}

/** The formula with each relative reference by its distance. */
function relative(formula: string, row: number, col: number): string {
  return formula.replace(
    pieces,
    (whole, fixedCol, letters: string | undefined, fixedRow, digits) => {
      if (letters === undefined) return whole;
      const index = columnIndex(letters);
      const c = fixedCol ? `C${index + 1}` : `C[${index - col}]`;
      return `${fixedRow ? `R${digits}` : `R[${Number(digits) - 1 - row}]`}${c}`;
    },
  );
}
