import type { ReadContext } from "../../src/workbook/cell-content";
import { CopiedFormula } from "../../src/workbook/copied-formula";
import { WorkbookError } from "../../src/workbook/error";
import { Budget, defaultLimits } from "../../src/workbook/limits";
import { SharedFormula } from "../../src/workbook/shared-formula";
import type { Row, SheetData, StoredFormula } from "../../src/workbook/sheet-data";
import { readAnySheet, readPlainSheet, readSheet } from "../../src/workbook/sheet-read";

export interface Given {
  readonly strings?: readonly string[];
  readonly date1904?: boolean;
  readonly depth?: number;
  readonly cells?: number;
  readonly text?: number;
  readonly markup?: number;
}

const part = "xl/worksheets/sheet1.xml";

export function contextOf({
  strings = [],
  date1904 = false,
  depth,
  ...bounds
}: Given): ReadContext {
  return {
    depth: depth ?? defaultLimits.depth,
    cells: new Budget(bounds.cells ?? defaultLimits.cells, "too many cells"),
    text: new Budget(bounds.text ?? defaultLimits.text, "too much text"),
    markup: new Budget(bounds.markup ?? defaultLimits.markup, "too much markup"),
    date1904,
    strings: () => strings,
    richErrors: () => new Map(),
  };
}

/** A shared formula as it is kept; a copied one as the text it stands for. */
function formulaOf(stored: StoredFormula, row: number) {
  if (stored instanceof CopiedFormula) return stored.at(row);
  if (!(stored instanceof SharedFormula)) return stored;
  return { row: stored.row, col: stored.col, formula: stored.formula };
}

/** All that a reading found, in a form that can be compared. */
function told(data: SheetData) {
  return {
    rows: data.order.map((index) => {
      const { cols, values, formulas, styles, style } = data.rows.get(index) as Row;
      const texts = formulas.map((stored) => formulaOf(stored, index));
      return { index, cols, values, styles, style, formulas: texts };
    }),
    fileOrder: [...data.rows.keys()],
    extent: data.extent,
    arrayRefs: [...data.arrayRefs],
    hiddenRows: [...data.hiddenRows],
    hiddenCols: [...data.hiddenCols],
    columnWidths: [...data.columnWidths],
    columnStyles: [...data.columnStyles],
    merges: data.merges,
    frozen: [data.frozenRows, data.frozenCols],
    flags: [data.isProtected, data.isFiltered],
  };
}

function outcome(read: typeof readPlainSheet, bytes: Uint8Array, given: Given) {
  const context = contextOf(given);
  try {
    const data = read(part, bytes, context);
    return data && { ...told(data), cellsLeft: context.cells.left };
  } catch (error) {
    if (!(error instanceof WorkbookError)) throw error;
    return { code: error.code, message: error.message };
  }
}

/** What the plain reading, the full one and both together make of a sheet part. */
export function bothWays(sheet: string | Uint8Array, given: Given = {}) {
  const bytes = typeof sheet === "string" ? new TextEncoder().encode(sheet) : sheet;
  return {
    plain: outcome(readPlainSheet, bytes, given),
    /** Cut into pieces that end within cells, tags and characters. */
    inPieces: outcome((name, of, context) => readPlainSheet(name, of, context, 11), bytes, given),
    full: outcome(readAnySheet, bytes, given),
    together: outcome(readSheet, bytes, given),
  };
}

/** Whether the plain reading takes the sheet part. */
export const isPlain = (sheet: string) =>
  readPlainSheet(part, new TextEncoder().encode(sheet), contextOf({})) !== undefined;
