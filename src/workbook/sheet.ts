import { checkContent } from "./cell-xml";
import { addEdit, type SheetEdits } from "./edit";
import { MAX_COLS, MAX_ROWS, parseRange, toRef } from "./refs";
import { SharedFormula } from "./shared-formula";
import { type Row, SheetData, type StoredFormula } from "./sheet-data";
import type { Cell, CellValue, CellVisitor, Sheet, SheetState, TableInfo } from "./types";

function sameValue(a: CellValue, b: CellValue): boolean {
  if (typeof a === "object" && a !== null && typeof b === "object" && b !== null) {
    return a.error === b.error;
  }
  return a === b;
}

function formulaText(stored: StoredFormula, row: number, col: number): string | null {
  return stored instanceof SharedFormula ? stored.at(row, col) : stored;
}

function checkPlace(row: number, col: number): void {
  if (!(Number.isInteger(row) && row >= 0 && row < MAX_ROWS)) {
    throw new RangeError(`Row ${row} is outside the sheet; rows run from 0 to ${MAX_ROWS - 1}.`);
  }
  if (!(Number.isInteger(col) && col >= 0 && col < MAX_COLS)) {
    throw new RangeError(
      `Column ${col} is outside the sheet; columns run from 0 to ${MAX_COLS - 1}.`,
    );
  }
}

/** What a sheet needs of the workbook it belongs to. */
export interface SheetOwner {
  read(): SheetData;
  tables(): readonly TableInfo[];
  edited(): void;
}

/** A worksheet of a package: read on first use, so any member may throw a WorkbookError. */
export class PackageSheet implements Sheet {
  #data: SheetData | undefined;
  #edits: SheetEdits = new Map();
  #tables: readonly TableInfo[] | undefined;
  /** True once a formula went: the calculation chain then names a cell that has none. */
  formulaRemoved = false;

  constructor(
    readonly name: string,
    readonly state: SheetState,
    readonly part: string,
    private readonly owner: SheetOwner,
  ) {}

  get data(): SheetData {
    this.#data ??= this.owner.read();
    return this.#data;
  }

  get isProtected(): boolean {
    return this.data.isProtected;
  }
  get rowCount(): number {
    return this.data.extent.rows;
  }
  get colCount(): number {
    return this.data.extent.cols;
  }
  get hiddenRows(): ReadonlySet<number> {
    return this.data.hiddenRows;
  }
  get hiddenCols(): ReadonlySet<number> {
    return this.data.hiddenCols;
  }
  get merges(): readonly string[] {
    return this.data.merges;
  }
  get columnWidths(): ReadonlyMap<number, number> {
    return this.data.columnWidths;
  }
  get frozenRows(): number {
    return this.data.frozenRows;
  }
  get frozenCols(): number {
    return this.data.frozenCols;
  }
  get isFiltered(): boolean {
    return this.data.isFiltered;
  }

  cell(row: number, col: number): Cell | undefined {
    const cells = this.data.rows.get(row);
    const place = cells?.find(col) ?? -1;
    return cells === undefined || place < 0 ? undefined : this.#cellAt(row, cells, place);
  }

  *cells(): Iterable<Cell> {
    const { data } = this;
    for (const row of data.order) {
      const cells = data.rows.get(row);
      if (cells === undefined) continue;
      for (let place = 0; place < cells.cols.length; place++) yield this.#cellAt(row, cells, place);
    }
  }

  visit(see: CellVisitor): void {
    const { data } = this;
    for (const row of data.order) {
      const cells = data.rows.get(row) as Row;
      const { cols, values, formulas } = cells;
      for (let place = 0; place < cols.length; place++) {
        const value = values[place] as CellValue;
        const stored = formulas[place] as StoredFormula;
        if (value === null && stored === null) continue;
        const col = cols[place] as number;
        see(row, col, value, formulaText(stored, row, col), data.arrayRef(row, col));
      }
    }
  }

  setValue(row: number, col: number, value: CellValue): void {
    this.#edit(row, col, null, value, null);
  }

  setFormula(row: number, col: number, formula: string, value: CellValue, arrayRef?: string): void {
    this.#edit(row, col, formula, value, arrayRef ?? null);
  }

  clear(row: number, col: number): void {
    this.#edit(row, col, null, null, null);
  }

  setStyle(row: number, col: number, style: number): void {
    checkPlace(row, col);
    const old = this.cell(row, col);
    if (style === (old?.style ?? this.#styleOfNewCell(row, col))) return;
    const cells = this.data.row(row);
    const place = cells.find(col);
    if (place < 0) cells.insert(~place, col, null, null, style);
    else cells.styles[place] = style;
    addEdit(this.#edits, row, col, {
      formula: undefined,
      value: undefined,
      newStyle: style,
      style,
    });
    this.owner.edited();
  }

  /** The edits not yet written to the part; the caller writes them. */
  takeEdits(): SheetEdits {
    const edits = this.#edits;
    this.#edits = new Map();
    return edits;
  }

  #cellAt(row: number, cells: Row, place: number): Cell {
    const col = cells.cols[place] as number;
    return {
      row,
      col,
      value: cells.values[place] as CellValue,
      formula: formulaText(cells.formulas[place] ?? null, row, col),
      arrayRef: this.data.arrayRef(row, col),
      style: cells.styles[place] as number,
    };
  }

  #edit(
    row: number,
    col: number,
    formula: string | null,
    value: CellValue,
    arrayRef: string | null,
  ): void {
    checkPlace(row, col);
    checkContent(`${this.name}!${toRef(row, col)}`, formula, value);
    if (arrayRef !== null) this.#checkAnchor(row, col, arrayRef);
    const old = this.cell(row, col);
    const hadFormula = old !== undefined && old.formula !== null;
    // The same formula again keeps its element, whatever kind it is, and only renews the value.
    const keeps =
      hadFormula && old.formula === formula && (arrayRef === null || arrayRef === old.arrayRef);
    if (old === undefined && formula === null && value === null) return;
    if (
      old !== undefined &&
      (keeps || (!hadFormula && formula === null)) &&
      sameValue(old.value, value)
    ) {
      return;
    }
    this.#checkHeading(row, col);
    if (hadFormula && !keeps) {
      this.#leaveFormula(row, col, formula === null || old.arrayRef !== arrayRef);
    }
    this.#store(row, col, keeps ? undefined : formula, value, keeps ? undefined : arrayRef);
    const written = formula === null ? null : { text: formula, arrayRef };
    const newStyle = old?.style ?? this.#styleOfNewCell(row, col);
    addEdit(this.#edits, row, col, { formula: keeps ? undefined : written, value, newStyle });
    this.owner.edited();
  }

  #checkAnchor(row: number, col: number, arrayRef: string): void {
    const { top, left } = parseRange(arrayRef);
    if (top === row && left === col) return;
    throw new RangeError(
      `${this.name}!${toRef(row, col)}: the range ${arrayRef} must start at the formula's own cell.`,
    );
  }

  /**
   * Headings of tables stand in the table's part and in formulas too; were the cell alone changed,
   * the file would be taken for damaged.
   */
  #checkHeading(row: number, col: number): void {
    this.#tables ??= this.owner.tables();
    for (const table of this.#tables) {
      const { top, left, right } = parseRange(table.ref);
      if (!table.headerRow || row !== top || col < left || col > right) continue;
      throw new RangeError(
        `${this.name}!${toRef(row, col)} is a heading of the table "${table.name}"; change it in a spreadsheet program.`,
      );
    }
  }

  /** What a formula leaves behind when it goes: the cells that shared its text, the calculation chain. */
  #leaveFormula(row: number, col: number, chainBreaks: boolean): void {
    if (chainBreaks) this.formulaRemoved = true;
    const { rows } = this.data;
    const cells = rows.get(row);
    const stored = cells?.formulas[cells.find(col)];
    if (!(stored instanceof SharedFormula) || stored.row !== row || stored.col !== col) return;
    for (const [otherRow, others] of rows) {
      for (let place = 0; place < others.cols.length; place++) {
        if (others.formulas[place] !== stored) continue;
        const otherCol = others.cols[place] as number;
        const text = stored.at(otherRow, otherCol);
        others.formulas[place] = text;
        addEdit(this.#edits, otherRow, otherCol, {
          formula: { text, arrayRef: null },
          value: undefined,
          newStyle: 0,
        });
      }
    }
  }

  #store(
    row: number,
    col: number,
    formula: string | null | undefined,
    value: CellValue,
    arrayRef: string | null | undefined,
  ): void {
    const { data } = this;
    const cells = data.row(row);
    const place = cells.find(col);
    if (place < 0) {
      cells.insert(~place, col, value, formula ?? null, this.#styleOfNewCell(row, col));
    } else {
      cells.values[place] = value;
      if (formula !== undefined) cells.formulas[place] = formula;
    }
    const key = SheetData.key(row, col);
    if (arrayRef === null) data.arrayRefs.delete(key);
    else if (arrayRef !== undefined) data.arrayRefs.set(key, arrayRef);
    data.changed();
  }

  /** A new cell takes the format of its row, else of its column. */
  #styleOfNewCell(row: number, col: number): number {
    return this.data.rows.get(row)?.style ?? this.data.columnStyles.get(col) ?? 0;
  }
}
