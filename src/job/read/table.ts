import type { System } from "../../editions";
import { conversionFactor } from "../../units";
import type { SheetFit } from "../fit";
import { type CellValue, cellName, type Grid, isBlankCell, isCellError } from "../grid";
import { type Field, type SheetLayout, unitOf } from "../sheets";

/** Why a number cell gave no number. */
export type Gap = "blank" | "text" | "error" | "absent";

/** The filled rows of one fitted sheet, column by column, in the job's units. */
export class Table {
  readonly name: string;
  /** Sheet row (from 0) of each filled row. */
  readonly rows: readonly number[];
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
    const column = this.fit.columns.get(key);
    return column ? this.grid.value(this.rows[i] as number, column.col) : null;
  }

  formula(key: string, i: number): string | null {
    const column = this.fit.columns.get(key);
    return column ? this.grid.formula(this.rows[i] as number, column.col) : null;
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
      column = Float64Array.from(this.rows, (_, i) => {
        const value = this.raw(key, i);
        return typeof value === "number" ? value * factor : Number.NaN;
      });
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
      column = this.rows.map((_, i) => {
        const value = this.raw(key, i);
        return value === null || isCellError(value) ? "" : String(value).trim();
      });
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

/** Rows below the headings in which a person has written something; totals are not rows. */
function filledRows(grid: Grid, fit: SheetFit, layout: SheetLayout): number[] {
  const typed = layout.fields.flatMap((field) => {
    const column = fit.columns.get(field.key);
    return column ? [{ col: column.col, computed: field.computed === true }] : [];
  });
  const rows: number[] = [];
  for (let row = fit.headerRow + 1; row < grid.rowCount; row++) {
    const filled = typed.some(({ col, computed }) => {
      const value = grid.value(row, col);
      return !isBlankCell(value) && !(computed && grid.formula(row, col) !== null);
    });
    if (filled && !isTotal(grid, row, typed)) rows.push(row);
  }
  return rows;
}

function isTotal(grid: Grid, row: number, typed: readonly { col: number }[]): boolean {
  const first = typed
    .map(({ col }) => col)
    .sort((a, b) => a - b)
    .map((col) => grid.value(row, col))
    .find((value) => !isBlankCell(value));
  return typeof first === "string" && /^(total|sum|average|mean|count)s?\b/i.test(first.trim());
}
