import type { Spot } from "../../cells";
import { Cells } from "../cells/cells";
import type { Shape } from "../cells/shapes";
import type { ReadWorkbook } from "../host";
import { type Ref, refOf, tableColumn } from "./tree";

/** The workbook as formulas see it: other sheets, names and tables. */
export class Book {
  private readonly loaded = new Map<string, Cells>();
  private readonly names: ReadonlyMap<string, string>;

  constructor(readonly workbook: ReadWorkbook) {
    this.names = new Map(
      (workbook.names ?? []).map(({ name, formula }) => [
        name.toLowerCase(),
        formula.replace(/^=/, ""),
      ]),
    );
  }

  /** The cells of a sheet, loaded once. */
  cells(name: string): Cells | undefined {
    const key = name.toLowerCase();
    let cells = this.loaded.get(key);
    if (!cells) {
      const grid = this.workbook.sheets.find((sheet) => sheet.name.toLowerCase() === key);
      if (!grid) return undefined;
      cells = Cells.load(grid);
      this.loaded.set(key, cells);
    }
    return cells;
  }

  /** What a name stands for: a number of its own or a reference. */
  named(name: string, shape: Shape): { number: number } | { ref: Ref } | undefined {
    const text = this.names.get(name.replace(/^.*!/, "").toLowerCase());
    if (text === undefined) return undefined;
    if (text.trim() !== "" && Number.isFinite(Number(text))) return { number: Number(text) };
    const ref = refOf(text, shape);
    return ref && { ref };
  }

  /** The column of the sheet that a structured reference of the same row names. */
  column(text: string, cells: Cells): number | undefined {
    const named = tableColumn(text);
    if (!named) return undefined;
    const table = (this.workbook.tables ?? []).find(
      ({ name, sheet }) =>
        sheet.toLowerCase() === cells.grid.name.toLowerCase() &&
        (named.table === "" || name.toLowerCase() === named.table.toLowerCase()),
    );
    const at = table?.columns.findIndex(
      (column) => column.toLowerCase() === named.column.toLowerCase(),
    );
    if (table && at !== undefined && at >= 0) return table.left + at;
    const straight = cells.turned ? cells.turn() : cells;
    for (let row = 0; row < Math.min(40, straight.rows); row++)
      for (let col = 0; col < straight.cols; col++)
        if (straight.text(row, col).toLowerCase() === named.column.toLowerCase()) return col;
    return undefined;
  }

  /** The number in a fixed cell and where it stands. */
  fixedNumber(ref: Ref, own: Cells): { number: number; place: Spot } | undefined {
    const cells = ref.sheet === undefined ? own : this.cells(ref.sheet);
    if (!cells) return undefined;
    const straight = cells.turned ? cells.turn() : cells;
    if (!straight.has(ref.row, ref.col)) return undefined;
    const number = straight.number(ref.row, ref.col);
    return Number.isNaN(number)
      ? undefined
      : { number, place: { sheet: straight.grid.name, row: ref.row, col: ref.col } };
  }
}
