import type { CellValue } from "../cells";
import type { Arrangement, ConditionalFormat, Validation } from "./arrange/spec";
import type { ChartSpec } from "./chart/spec";
import { CopiedFormula } from "./copied-formula";
import type { SheetEdits } from "./edit";
import { SharedFormula } from "./shared-formula";
import { SheetAround } from "./sheet-around";
import type { Row, SheetData, StoredFormula } from "./sheet-data";
import { CellEdits, styleOfNewCell } from "./sheet-edits";
import type { SheetOwner } from "./sheet-owner";
import type { Cell, CellVisitor, Sheet, SheetState, TableInfo } from "./types";

function formulaText(stored: StoredFormula, row: number, col: number): string | null {
  return stored instanceof SharedFormula ? stored.at(row, col) : stored;
}

/** A worksheet of a package: read on first use, so any member may throw a WorkbookError. */
export class PackageSheet implements Sheet {
  #data: SheetData | undefined;
  readonly #edits = new CellEdits(this);
  readonly #around: SheetAround;

  constructor(
    readonly name: string,
    readonly state: SheetState,
    readonly part: string,
    private readonly owner: SheetOwner,
  ) {
    this.#around = new SheetAround(this, owner);
  }

  get data(): SheetData {
    this.#data ??= this.owner.read();
    return this.#data;
  }

  /** What the sheet says, where it was read already. */
  get known(): SheetData | undefined {
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
  isHiddenRow(row: number): boolean {
    return this.data.hiddenRows.has(row);
  }
  isHiddenCol(col: number): boolean {
    return this.data.hiddenCols.has(col);
  }
  numberFormat(row: number, col: number): string {
    return this.owner.formatCode(this.#styleAt(row, col));
  }
  isUnseen(row: number, col: number): boolean {
    const { ink, ground } = this.owner.colors(this.#styleAt(row, col));
    return ink === ground;
  }
  #styleAt(row: number, col: number): number {
    const cells = this.data.rows.get(row);
    const place = cells?.find(col) ?? -1;
    return place < 0 ? styleOfNewCell(this.data, row, col) : (cells?.styles[place] ?? 0);
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
        const formula = stored instanceof CopiedFormula ? stored : formulaText(stored, row, col);
        see(row, col, value, formula, data.arrayRef(row, col), data.isFixedArray(row, col));
      }
    }
  }

  setValue(row: number, col: number, value: CellValue): void {
    this.#noted(this.#edits.content(row, col, null, value, null));
  }

  setFormula(row: number, col: number, formula: string, value: CellValue, arrayRef?: string): void {
    this.#noted(this.#edits.content(row, col, formula, value, arrayRef ?? null));
  }

  clear(row: number, col: number): void {
    this.#noted(this.#edits.content(row, col, null, null, null));
  }

  setStyle(row: number, col: number, style: number): void {
    this.#noted(this.#edits.style(row, col, style));
  }

  get conditionalFormats(): readonly ConditionalFormat[] {
    return this.#around.conditionalFormats;
  }
  get validations(): readonly Validation[] {
    return this.#around.validations;
  }
  arrange(changes: Arrangement): void {
    this.#around.arrange(changes);
  }
  get charts(): readonly string[] {
    return this.#around.charts;
  }
  addChart(chart: ChartSpec): string {
    return this.#around.addChart(chart);
  }
  removeChart(name: string): void {
    this.#around.removeChart(name);
  }

  tables(): readonly TableInfo[] {
    return this.owner.tables();
  }

  /** The edits not yet written to the part; the caller writes them. */
  takeEdits(): SheetEdits {
    return this.#edits.take();
  }

  /** Whether a formula went since this was asked last: the calculation chain names a cell without one. */
  takeFormulaRemoved(): boolean {
    const removed = this.#edits.formulaRemoved;
    this.#edits.formulaRemoved = false;
    return removed;
  }

  #noted(isEdited: boolean): void {
    if (isEdited) this.owner.edited();
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
}
