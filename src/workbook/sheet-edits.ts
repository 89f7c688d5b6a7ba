import { type CellValue, cellName, isIdentical, maxCols, maxRows, parseRectangle } from "../cells";
import { checkAnchor, checkContent } from "./cell-xml";
import { addEdit, type SheetEdits } from "./edit";
import { SharedFormula } from "./shared-formula";
import { SheetData } from "./sheet-data";
import type { Cell, TableInfo } from "./types";

function checkPlace(row: number, col: number): void {
  if (!(Number.isInteger(row) && row >= 0 && row < maxRows)) {
    throw new RangeError(`Row ${row} is outside the sheet; rows run from 0 to ${maxRows - 1}.`);
  }
  if (!(Number.isInteger(col) && col >= 0 && col < maxCols)) {
    throw new RangeError(
      `Column ${col} is outside the sheet; columns run from 0 to ${maxCols - 1}.`,
    );
  }
}

/** What edits need to know of the sheet they change. */
interface EditedSheet {
  readonly name: string;
  readonly data: SheetData;
  cell(row: number, col: number): Cell | undefined;
  tables(): readonly TableInfo[];
}

/** The edits of a sheet's cells that are not yet written to its part. */
export class CellEdits {
  #edits: SheetEdits = new Map();
  #tables: readonly TableInfo[] | undefined;
  /** True once a formula went: the calculation chain then names a cell that has none. */
  formulaRemoved = false;

  constructor(private readonly sheet: EditedSheet) {}

  /** The edits so far; the caller writes them. */
  take(): SheetEdits {
    const edits = this.#edits;
    this.#edits = new Map();
    return edits;
  }

  /** Gives a cell another format; false when it has it already. */
  style(row: number, col: number, style: number): boolean {
    checkPlace(row, col);
    const { data } = this.sheet;
    const old = this.sheet.cell(row, col);
    if (style === (old?.style ?? styleOfNewCell(data, row, col))) return false;
    const cells = data.row(row);
    const place = cells.find(col);
    if (place < 0) cells.insert(~place, col, null, null, style);
    else cells.setStyle(place, style);
    addEdit(this.#edits, row, col, {
      formula: undefined,
      value: undefined,
      newStyle: style,
      style,
    });
    return true;
  }

  /** Gives a cell a formula or a value or neither; false when it has just that already. */
  content(
    row: number,
    col: number,
    formula: string | null,
    value: CellValue,
    arrayRef: string | null,
  ): boolean {
    checkPlace(row, col);
    const where = `${this.sheet.name}!${cellName(row, col)}`;
    checkContent(where, formula, value);
    if (arrayRef !== null) checkAnchor(where, row, col, formula, arrayRef);
    const old = this.sheet.cell(row, col);
    const hadFormula = old !== undefined && old.formula !== null;
    // The same formula again keeps its element, whatever kind it is, and only renews the value.
    const keeps =
      hadFormula && old.formula === formula && (arrayRef === null || arrayRef === old.arrayRef);
    if (old === undefined && formula === null && value === null) return false;
    if (
      old !== undefined &&
      (keeps || (!hadFormula && formula === null)) &&
      isIdentical(old.value, value)
    ) {
      return false;
    }
    this.#checkHeading(row, col);
    if (hadFormula && !keeps) {
      this.#leaveFormula(row, col, formula === null || old.arrayRef !== arrayRef);
    }
    this.#store(row, col, keeps ? undefined : formula, value, keeps ? undefined : arrayRef);
    const isFixed = this.sheet.data.isFixedArray(row, col);
    const written = formula === null ? null : { text: formula, arrayRef, isFixed };
    const newStyle = old?.style ?? styleOfNewCell(this.sheet.data, row, col);
    addEdit(this.#edits, row, col, { formula: keeps ? undefined : written, value, newStyle });
    return true;
  }

  /**
   * Headings of tables stand in the table's part and in formulas too; were the cell alone changed,
   * the file would be taken for damaged.
   */
  #checkHeading(row: number, col: number): void {
    this.#tables ??= this.sheet.tables();
    for (const table of this.#tables) {
      const { top, left, right } = parseRectangle(table.ref);
      if (!table.headerRow || row !== top || col < left || col > right) continue;
      throw new RangeError(
        `${this.sheet.name}!${cellName(row, col)} is a heading of the table "${table.name}"; change it in a spreadsheet program.`,
      );
    }
  }

  /** What a formula leaves behind when it goes: the cells that shared its text, the calculation chain. */
  #leaveFormula(row: number, col: number, chainBreaks: boolean): void {
    if (chainBreaks) this.formulaRemoved = true;
    const { rows } = this.sheet.data;
    const cells = rows.get(row);
    const stored = cells?.formulas[cells.find(col)];
    if (!(stored instanceof SharedFormula) || stored.row !== row || stored.col !== col) return;
    for (const [otherRow, others] of rows) {
      for (let place = 0; place < others.cols.length; place++) {
        if (others.formulas[place] !== stored) continue;
        const otherCol = others.cols[place] as number;
        const text = stored.at(otherRow, otherCol);
        others.setFormula(place, text);
        addEdit(this.#edits, otherRow, otherCol, {
          formula: { text, arrayRef: null, isFixed: false },
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
    const { data } = this.sheet;
    const cells = data.row(row);
    const place = cells.find(col);
    if (place < 0) {
      cells.insert(~place, col, value, formula ?? null, styleOfNewCell(data, row, col));
    } else {
      cells.values[place] = value;
      if (formula !== undefined) cells.setFormula(place, formula);
    }
    const key = SheetData.key(row, col);
    if (arrayRef === null) {
      data.arrayRefs.delete(key);
      data.fixedArrays.delete(key);
    } else if (arrayRef !== undefined) data.arrayRefs.set(key, arrayRef);
    data.changed();
  }
}

/** A new cell takes the format of its row, else of its column. */
export function styleOfNewCell(data: SheetData, row: number, col: number): number {
  return data.rows.get(row)?.style ?? data.columnStyles.get(col) ?? 0;
}
