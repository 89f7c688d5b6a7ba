import { asFormula, formulaOf, toCellValue } from "./cell-text";
import { HostError, sheetGone, sheetHidden } from "./host-error";
import { type Book, run } from "./run";
import type { CellContent, CellPlace } from "./types";
import { checkWritable } from "./writable";

/** The active cell, once no cell is being edited. */
export function selection(): Promise<CellPlace> {
  return run(activeCell, { waitsForEdit: true });
}

async function activeCell(book: Book): Promise<CellPlace> {
  const cell = book.workbook.getActiveCell();
  cell.load("address,rowIndex,columnIndex,worksheet/name");
  await book.sync();
  return {
    sheet: cell.worksheet.name,
    row: cell.rowIndex,
    col: cell.columnIndex,
    address: withoutSheet(cell.address),
  };
}

/** Shows a cell: activates its sheet and selects it. A hidden sheet stays hidden and is told of. */
export function selectCell(sheet: string, cell: string): Promise<void> {
  return run(async (book) => {
    const proxy = book.sheets.getItemOrNullObject(sheet);
    proxy.load("name,visibility");
    await book.sync();
    if (proxy.isNullObject) throw sheetGone(sheet);
    if (proxy.visibility !== "Visible") throw sheetHidden(proxy.name);
    proxy.activate();
    proxy.getRange(cell).select();
    await book.sync();
  });
}

/**
 * Enters a formula, with or without "=", in the active cell and returns that cell's address. A
 * cell that holds something is left as it is and told of.
 */
export function insertFormula(formula: string): Promise<string> {
  return run(async (book) => {
    const cell = book.workbook.getActiveCell();
    cell.load("address,formulas");
    const { worksheet } = cell;
    worksheet.load("name,protection/protected");
    await book.sync();
    const address = withoutSheet(cell.address);
    if (cell.formulas[0]?.[0] !== "")
      throw new HostError(
        "CellFilled",
        `${address} holds something already. Select an empty cell, then insert the formula.`,
      );
    await checkWritable(book, worksheet, worksheet.name, [cell]);
    cell.formulas = [[asFormula(formula)]];
    await book.sync();
    return address;
  });
}

/** What a cell holds, row and column from 0. */
export function describeCell(sheet: string, row: number, col: number): Promise<CellContent> {
  return run(async (book) => {
    const proxy = book.sheets.getItemOrNullObject(sheet);
    proxy.load("name");
    const cell = proxy.getRangeByIndexes(row, col, 1, 1);
    cell.load("values,formulas,valueTypes,text");
    await book.sync();
    if (proxy.isNullObject) throw sheetGone(sheet);
    const [value, formula, type, text] = [
      cell.values[0]?.[0],
      cell.formulas[0]?.[0],
      cell.valueTypes[0]?.[0],
      cell.text[0]?.[0],
    ];
    return {
      formula: formulaOf(value, formula),
      value: toCellValue(value, formula, type),
      // Without the room that a number format leaves after a number.
      text: typeof value === "number" ? (text ?? "").trimEnd() : (text ?? ""),
    };
  });
}

function withoutSheet(address: string): string {
  return address.slice(address.lastIndexOf("!") + 1);
}
