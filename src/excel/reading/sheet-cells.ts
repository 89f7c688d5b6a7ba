import { type CellValue, CopiedDown, type Rectangle } from "../../cells";
import type { Grid } from "../../job";
import { formulaOf, toCellValue } from "../cell-text";
import { plainLooks, type SheetLooks } from "./looks";

/** A row as read; columns count from 0 whatever the used range. */
interface Row {
  readonly values: CellValue[];
  /** null where no cell of the row holds a formula. */
  readonly formulas: (string | CopiedDown | null)[] | null;
}

/** What a block of cells came back as. */
export interface BlockCells {
  readonly values: readonly (readonly unknown[])[];
  readonly formulas: readonly (readonly unknown[])[];
  readonly valueTypes?: readonly (readonly string[])[] | undefined;
  readonly numberFormat?: readonly (readonly string[])[] | undefined;
}

/** The cells of one sheet, filled block by block. */
export class SheetCells implements Grid {
  private readonly rows: (Row | undefined)[] = [];
  /** The formula met last in each column. */
  private readonly latest: (CopiedDown | undefined)[] = [];
  /** Codes of number formats; rows of the same formats share one line. */
  private readonly formats: (readonly string[] | undefined)[] = [];
  looks: SheetLooks = plainLooks;
  merges: readonly Rectangle[] = [];
  hiddenSheet: Grid["hiddenSheet"];

  constructor(
    readonly name: string,
    readonly rowCount: number,
    readonly colCount: number,
  ) {}

  readonly hiddenRow = (row: number): boolean => this.looks.hiddenRows.has(row);

  readonly hiddenCol = (col: number): boolean => this.looks.hiddenCols.has(col);

  readonly numberFormat = (row: number, col: number): string | undefined =>
    this.formats[row]?.[col];

  readonly isUnseen = (row: number, col: number): boolean => this.looks.isUnseen(row, col);

  value(row: number, col: number): CellValue {
    return this.rows[row]?.values[col] ?? null;
  }

  formula(row: number, col: number): string | null {
    const formula = this.rows[row]?.formulas?.[col] ?? null;
    return formula === null || typeof formula === "string" ? formula : formula.at(row);
  }

  hasFormula(row: number, col: number): boolean {
    return (this.rows[row]?.formulas?.[col] ?? null) !== null;
  }

  copyOf(row: number, col: number): CopiedDown | null {
    const formula = this.rows[row]?.formulas?.[col] ?? null;
    return typeof formula === "string" ? null : formula;
  }

  column(col: number, rows: readonly number[]): CellValue[] {
    return rows.map((row) => this.rows[row]?.values[col] ?? null);
  }

  put({ top, left }: Pick<Rectangle, "top" | "left">, cells: BlockCells): void {
    const { values: lines, formulas: formulaLines, valueTypes, numberFormat = [] } = cells;
    for (const [r, codes] of numberFormat.entries()) this.putFormats(top + r, left, codes);
    lines.forEach((line, r) => {
      const before = this.rows[top + r];
      const values: CellValue[] = before?.values.slice() ?? [];
      const texts: (string | CopiedDown | null)[] = before?.formulas?.slice() ?? [];
      while (values.length < left) values.push(null);
      while (texts.length < values.length) texts.push(null);
      line.forEach((value, c) => {
        const own = formulaLines[r]?.[c];
        const formula = formulaOf(value, own);
        values[left + c] = toCellValue(value, own, valueTypes?.[r]?.[c]);
        texts[left + c] = formula && this.copied(formula, top + r, left + c);
      });
      this.rows[top + r] = { values, formulas: texts.some((text) => text !== null) ? texts : null };
    });
  }

  private putFormats(row: number, left: number, codes: readonly string[]): void {
    const line = [...(this.formats[row] ?? [])];
    while (line.length < left) line.push("");
    line.splice(left, codes.length, ...codes);
    const above = this.formats[row - 1];
    const isSame = above?.length === line.length && line.every((code, c) => code === above[c]);
    this.formats[row] = isSame ? above : line;
  }

  /** The same sheet with a block of its cells read again. */
  again({ top, left }: Pick<Rectangle, "top" | "left">, cells: BlockCells): SheetCells {
    const sheet = new SheetCells(this.name, this.rowCount, this.colCount);
    for (const row of this.rows) sheet.rows.push(row);
    sheet.latest.push(...this.latest);
    for (const line of this.formats) sheet.formats.push(line);
    const { looks, merges, hiddenSheet } = this;
    Object.assign(sheet, { looks, merges, hiddenSheet });
    sheet.put({ top, left }, cells);
    return sheet;
  }

  /** What stands for a formula and all its copies below. */
  private copied(formula: string, row: number, col: number): string | CopiedDown {
    if (!CopiedDown.suits(formula)) return formula;
    let latest = this.latest[col];
    if (!latest?.matches(formula, row)) {
      latest = new CopiedDown(formula, row, col);
      this.latest[col] = latest;
    }
    return latest;
  }

  /** Takes a value read as text for the error value that it is. */
  markError(row: number, col: number): void {
    const values = this.rows[row]?.values;
    const value = values?.[col];
    if (values && typeof value === "string") values[col] = { error: value };
  }
}
