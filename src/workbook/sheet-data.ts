import { type CellValue, maxCols } from "../cells";
import type { SharedFormula } from "./shared-formula";

/** Formula text, the shared formula the cell takes part in, or null. */
export type StoredFormula = string | SharedFormula | null;

/** What a row says of its cells beside their values. */
export interface RowShape {
  readonly cols: number[];
  readonly formulas: StoredFormula[];
  readonly styles: number[];
}

/**
 * The cells of one row in columns of arrays, ordered by column. Rows are mostly alike but for their
 * values, so a row may share its other arrays with the row above until it is changed.
 */
export class Row {
  /** Format for new cells of the row; null when the row states none. */
  style: number | null = null;
  #isOwn: boolean;

  constructor(
    private own: RowShape = { cols: [], formulas: [], styles: [] },
    readonly values: CellValue[] = [],
    isShared = false,
  ) {
    this.#isOwn = !isShared;
  }

  get cols(): readonly number[] {
    return this.own.cols;
  }
  get formulas(): readonly StoredFormula[] {
    return this.own.formulas;
  }
  get styles(): readonly number[] {
    return this.own.styles;
  }

  setFormula(place: number, formula: StoredFormula): void {
    this.#changing().formulas[place] = formula;
  }

  setStyle(place: number, style: number): void {
    this.#changing().styles[place] = style;
  }

  #changing(): RowShape {
    if (!this.#isOwn) {
      const { cols, formulas, styles } = this.own;
      this.own = { cols: [...cols], formulas: [...formulas], styles: [...styles] };
      this.#isOwn = true;
    }
    return this.own;
  }

  /** Place of a column in the arrays; when it is not there, ~place where it belongs. */
  find(col: number): number {
    const { cols } = this.own;
    let low = 0;
    let high = cols.length - 1;
    // Most rows have no gaps, so the column is its own index.
    if (cols[col] === col) return col;
    while (low <= high) {
      const middle = (low + high) >> 1;
      const found = cols[middle] as number;
      if (found === col) return middle;
      if (found < col) low = middle + 1;
      else high = middle - 1;
    }
    return ~low;
  }

  insert(
    place: number,
    col: number,
    value: CellValue,
    formula: StoredFormula,
    style: number,
  ): void {
    const { cols, formulas, styles } = this.#changing();
    cols.splice(place, 0, col);
    this.values.splice(place, 0, value);
    formulas.splice(place, 0, formula);
    styles.splice(place, 0, style);
  }
}

/** What a sheet part says, in memory. */
export class SheetData {
  readonly rows = new Map<number, Row>();
  readonly arrayRefs = new Map<number, string>();
  /** Those of them that keep their range whatever they give: array formulas of the older kind. */
  readonly fixedArrays = new Set<number>();
  readonly hiddenRows = new Set<number>();
  readonly hiddenCols = new Set<number>();
  readonly columnWidths = new Map<number, number>();
  readonly columnStyles = new Map<number, number>();
  readonly merges: string[] = [];
  frozenRows = 0;
  frozenCols = 0;
  isProtected = false;
  isFiltered = false;
  #order: number[] | undefined;
  #extent: { rows: number; cols: number } | undefined;

  static key(row: number, col: number): number {
    return row * maxCols + col;
  }

  /** The range of the array formula that a cell anchors. */
  arrayRef(row: number, col: number): string | null {
    if (this.arrayRefs.size === 0) return null;
    return this.arrayRefs.get(SheetData.key(row, col)) ?? null;
  }

  /** Whether the array formula that a cell anchors keeps its range. */
  isFixedArray(row: number, col: number): boolean {
    return this.fixedArrays.size > 0 && this.fixedArrays.has(SheetData.key(row, col));
  }

  /** The row's cells, made when missing. */
  row(index: number): Row {
    const row = this.rows.get(index);
    return row ?? this.add(index, new Row());
  }

  /** Adds a row that was not there. */
  add(index: number, row: Row): Row {
    this.rows.set(index, row);
    this.#order = undefined;
    return row;
  }

  /** Takes up what the attributes of a row element say beside its number. */
  describeRow(index: number, row: Row, attributes: Readonly<Record<string, string>>): void {
    const { s, customFormat, hidden } = attributes;
    if (s !== undefined && customFormat !== undefined) row.style = Number(s);
    if (hidden === "1" || hidden === "true") this.hiddenRows.add(index);
  }

  /** Row numbers in ascending order. */
  get order(): readonly number[] {
    if (this.#order === undefined) this.#order = [...this.rows.keys()].sort((a, b) => a - b);
    return this.#order;
  }

  /** Call after any change of a value or formula. */
  changed(): void {
    this.#extent = undefined;
  }

  get extent(): { readonly rows: number; readonly cols: number } {
    if (this.#extent === undefined) {
      let rows = 0;
      let cols = 0;
      for (const [index, row] of this.rows) {
        for (let place = row.cols.length - 1; place >= 0; place--) {
          if (row.values[place] === null && row.formulas[place] === null) continue;
          rows = Math.max(rows, index + 1);
          cols = Math.max(cols, (row.cols[place] as number) + 1);
          break;
        }
      }
      this.#extent = { rows, cols };
    }
    return this.#extent;
  }
}
