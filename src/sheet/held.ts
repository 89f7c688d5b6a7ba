import type { WorksheetFunction } from "../../functions";
import {
  type CellValue,
  type Copied,
  offsetOf,
  type Place,
  type Rectangle,
  rectangleText,
} from "../cells";
import type { CellVisitor, Sheet } from "../workbook";
import { type Fresh, SheetModel } from "./model";
import { Work } from "./work";

/** A sheet that a host holds; formulas without "=", in either spelling. */
interface HeldSheet {
  readonly name: string;
  readonly rowCount: number;
  readonly colCount: number;
  value(row: number, col: number): CellValue;
  formula(row: number, col: number): string | null;
  readonly copyOf?: (row: number, col: number) => Copied | null;
  readonly hiddenRow?: (row: number) => boolean;
}

interface HeldWorkbook {
  readonly sheets: readonly HeldSheet[];
  readonly names?: readonly { readonly name: string; readonly formula: string }[];
  readonly tables?: readonly (Rectangle & {
    readonly name: string;
    readonly sheet: string;
    readonly columns: readonly string[];
  })[];
  readonly dateOffset?: number;
}

/**
 * A model over a workbook that a host holds, for looking and never for edits. Hosts give each cell
 * of an array formula the text of the whole and do not tell what a formula spills over: what
 * depends on that is not evaluated.
 */
export class HeldModel extends SheetModel {
  private readonly sheets: ReadonlyMap<string, SheetView>;

  constructor(held: HeldWorkbook, functions: readonly WorksheetFunction[]) {
    const views = held.sheets.map((sheet) => new SheetView(sheet));
    const sheets = views as Partial<Sheet>[] as Sheet[];
    super(
      {
        sheets,
        sheet: (name) => sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase()),
        names: (held.names ?? []).map((name) => ({ ...name, sheet: null })),
        tables: (held.tables ?? []).map((table) => ({
          ...table,
          ref: rectangleText(table),
          headerRow: true,
          totalsRow: false,
        })),
        date1904: held.dateOffset === offsetOf(true),
      },
      functions,
    );
    this.sheets = new Map(views.map((sheet) => [sheet.name.toLowerCase(), sheet]));
  }

  /** Goes over to the same workbook after an edit of these cells alone. */
  again({ sheets }: HeldWorkbook, cells: readonly Place[]): this {
    for (const sheet of sheets) {
      const view = this.sheets.get(sheet.name.toLowerCase());
      if (view) view.sheet = sheet;
    }
    for (const { sheet, top, left, bottom, right } of cells) {
      const view = this.sheets.get(sheet.toLowerCase());
      const grid = this.book.grid(sheet);
      if (!view || !grid) continue;
      for (let row = top; row <= bottom; row++)
        for (let col = left; col <= right; col++)
          grid.renew(row, col, view.value(row, col), view.source(row, col));
    }
    this.book.clock.revision++;
    this.work = new Work();
    return this;
  }

  override recompute(sheet: string, row: number, col: number): Fresh {
    const formula = this.formula(sheet, row, col);
    if (formula === null) return super.recompute(sheet, row, col);
    const isRepeated =
      formula.includes(":") &&
      (this.formula(sheet, row - 1, col) === formula ||
        this.formula(sheet, row, col - 1) === formula);
    if (isRepeated) return { unsupported: "what may be a part of an array formula" };
    return this.spillRefused(formula) ?? super.recompute(sheet, row, col);
  }

  override evaluate(formula: string, sheet: string, row: number, col: number): Fresh {
    return this.spillRefused(formula) ?? super.evaluate(formula, sheet, row, col);
  }

  private formula(sheet: string, row: number, col: number): string | null {
    return this.sheets.get(sheet.toLowerCase())?.formula(row, col) ?? null;
  }

  private spillRefused(formula: string): Fresh | undefined {
    if (!formula.includes("#") && !/ANCHOR/i.test(formula)) return undefined;
    return /[\d)]#/.test(formula.replace(/"[^"]*"/g, "")) || /\bANCHORARRAY\(/i.test(formula)
      ? { unsupported: "a spilled range (#)" }
      : undefined;
  }
}

/** What the model reads of a sheet. */
class SheetView implements Pick<Sheet, "name" | "rowCount" | "colCount" | "hiddenRows" | "visit"> {
  readonly name: string;
  readonly rowCount: number;
  readonly colCount: number;
  private hidden: ReadonlySet<number> | undefined;

  constructor(public sheet: HeldSheet) {
    ({ name: this.name, rowCount: this.rowCount, colCount: this.colCount } = sheet);
  }

  get hiddenRows(): ReadonlySet<number> {
    const rows = Array.from({ length: this.rowCount }, (_, row) => row);
    this.hidden ??= new Set(rows.filter((row) => this.sheet.hiddenRow?.(row)));
    return this.hidden;
  }

  value(row: number, col: number): CellValue {
    return this.sheet.value(row, col);
  }

  formula(row: number, col: number): string | null {
    return this.sheet.formula(row, col);
  }

  /** The formula's text, or what it is a copy of. */
  source(row: number, col: number): string | Copied | null {
    return this.sheet.copyOf?.(row, col) ?? this.sheet.formula(row, col);
  }

  visit(see: CellVisitor): void {
    for (let row = 0; row < this.rowCount; row++)
      for (let col = 0; col < this.colCount; col++) {
        const value = this.value(row, col);
        const formula = this.source(row, col);
        if (value !== null || formula !== null) see(row, col, value, formula, null);
      }
  }
}
