import type { System } from "../../editions";
import { conversionFactor } from "../../units";
import type { SheetFit } from "../fit";
import { type CellValue, cellName, type Grid, hasFormula, isBlankCell, isCellError } from "../grid";
import { type Field, type SheetLayout, unitOf } from "../sheets";

/** Why a number cell gave no number. */
export type Gap = "blank" | "text" | "error" | "absent";

/** The filled rows of one fitted sheet, column by column, in the job's units. */
export class Table {
  readonly name: string;
  /** Sheet row (from 0) of each filled row. */
  readonly rows: readonly number[];
  private readonly valueColumns = new Map<string, readonly CellValue[]>();
  private readonly numberColumns = new Map<string, Float64Array>();
  private readonly textColumns = new Map<string, readonly string[]>();

  constructor(
    readonly grid: Grid,
    readonly fit: SheetFit,
    readonly layout: SheetLayout,
    readonly system: System,
  ) {
    this.name = grid.name;
    this.rows = filledRows(grid, fit, layout);
  }

  get length(): number {
    return this.rows.length;
  }

  has(key: string): boolean {
    return this.fit.columns.has(key);
  }

  /** What a cell holds, as stored. */
  raw(key: string, i: number): CellValue {
    return this.raws(key)[i] ?? null;
  }

  /** What a field's cells hold, as stored; empty for a field that is not there. */
  raws(key: string): readonly CellValue[] {
    let values = this.valueColumns.get(key);
    if (!values) {
      values = this.readColumn(this.fit.columns.get(key)?.col);
      this.valueColumns.set(key, values);
    }
    return values;
  }

  private readColumn(col: number | undefined): readonly CellValue[] {
    if (col === undefined) return [];
    const { grid, rows } = this;
    return grid.column ? grid.column(col, rows) : rows.map((row) => grid.value(row, col));
  }

  formula(key: string, i: number): string | null {
    const col = this.fit.columns.get(key)?.col;
    const row = this.rows[i];
    return col === undefined || row === undefined ? null : this.grid.formula(row, col);
  }

  /** Whether `formula` gives one, which costs less to know. */
  hasFormula(key: string, i: number): boolean {
    const col = this.fit.columns.get(key)?.col;
    const row = this.rows[i];
    return col !== undefined && row !== undefined && hasFormula(this.grid, row, col);
  }

  /** The cell's name, such as "K12"; of the row's first column where the field is absent. */
  ref(key: string, i: number): string {
    return cellName(this.rows[i] as number, this.fit.columns.get(key)?.col ?? 0);
  }

  heading(key: string): string {
    return this.fit.columns.get(key)?.heading ?? this.field(key).title;
  }

  field(key: string): Field {
    const field = this.layout.fields.find((entry) => entry.key === key);
    if (!field) throw new Error(`the ${this.layout.title} sheet has no field ${key}`);
    return field;
  }

  /** Multiplies a stored number into the job's unit; 1 where the heading names no other unit. */
  factor(key: string): number {
    const unit = this.fit.columns.get(key)?.unit;
    const { measure } = this.field(key);
    return unit && measure ? conversionFactor(unit, unitOf(measure, this.system)) : 1;
  }

  /** A field's numbers in the job's unit; NaN where the cell holds none. */
  numbers(key: string): Float64Array {
    let column = this.numberColumns.get(key);
    if (!column) {
      const factor = this.has(key) ? this.factor(key) : 1;
      const values = this.raws(key);
      column = new Float64Array(this.length);
      for (let i = 0; i < column.length; i++) {
        const value = values[i];
        column[i] = typeof value === "number" ? value * factor : Number.NaN;
      }
      this.numberColumns.set(key, column);
    }
    return column;
  }

  number(key: string, i: number): number {
    return this.numbers(key)[i] as number;
  }

  /** A field's texts, trimmed; "" where blank or an error. Numbers become their digits. */
  texts(key: string): readonly string[] {
    let column = this.textColumns.get(key);
    if (!column) {
      const values = this.raws(key);
      column = this.rows.map((_, i) => textOf(values[i] ?? null));
      this.textColumns.set(key, column);
    }
    return column;
  }

  text(key: string, i: number): string {
    return this.texts(key)[i] as string;
  }

  /** Why there is no number, or undefined where there is one. */
  gap(key: string, i: number): Gap | undefined {
    if (!this.has(key)) return "absent";
    const value = this.raw(key, i);
    if (typeof value === "number") return undefined;
    if (isBlankCell(value)) return "blank";
    return isCellError(value) ? "error" : "text";
  }
}

function textOf(value: CellValue): string {
  if (typeof value === "string") return value.trim();
  return value === null || isCellError(value) ? "" : String(value);
}

/** Rows below the headings in which a person has written something; totals are not rows. */
function filledRows(grid: Grid, fit: SheetFit, layout: SheetLayout): number[] {
  const fitted = layout.fields
    .flatMap((field) => {
      const column = fit.columns.get(field.key);
      return column ? [{ col: column.col, computed: field.computed === true }] : [];
    })
    .sort((a, b) => a.col - b.col);
  const isTyped = (row: number) =>
    fitted.some(({ col, computed }) => {
      const value = grid.value(row, col);
      return !isBlankCell(value) && !(computed && hasFormula(grid, row, col));
    });
  const isTotal = (row: number) => {
    const first = fitted.find(({ col }) => !isBlankCell(grid.value(row, col)));
    const value = first && grid.value(row, first.col);
    return typeof value === "string" && /^\s*(total|sum|average|mean|count)s?\b/i.test(value);
  };
  const rows: number[] = [];
  for (let row = fit.headerRow + 1; row < grid.rowCount; row++)
    if (isTyped(row) && !isTotal(row)) rows.push(row);
  return rows;
}
