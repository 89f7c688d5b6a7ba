import type { Mend, Write } from "../job";
import { asText, formulaOf, textFormat } from "./cell-text";
import { HostError, sheetGone } from "./host-error";
import { type Book, run } from "./run";
import type { Undo, UndoCell } from "./types";
import { checkWritable, sheetToWrite } from "./writable";

/** Writes a mend's cells and returns what stood there before. A protected sheet is left as it is. */
export function applyMend(sheet: string, mend: Mend): Promise<Undo> {
  return run(async (book) => {
    const proxy = sheetToWrite(book, sheet);
    const cells = mend.writes.map((write) => load(proxy.getRange(write.cell)));
    await book.sync();
    await checkWritable(book, proxy, sheet, cells);
    const before = cells.map((cell, i) => contentOf(mend.writes[i]?.cell ?? "", cell));

    book.holdCalculation();
    mend.writes.forEach((write, i) => {
      put(proxy, cells[i] as Excel.Range, write, before[i]?.isTextCell === true);
    });
    for (const cell of cells) cell.load("formulas");
    await book.sync();
    return {
      label: mend.label,
      sheet: proxy.name,
      cells: before.map(({ isTextCell, ...undo }, i): UndoCell => {
        const written = cells[i]?.formulas[0]?.[0] as UndoCell["formula"];
        const hasNewFormat = isTextCell && !isText(mend.writes[i]);
        return { ...undo, written, ...(hasNewFormat ? { numberFormat: textFormat } : {}) };
      }),
    };
  });
}

/** Puts back what stood before a mend. Cells that were changed since are left, and told of. */
export function undoMend(undo: Undo): Promise<void> {
  return run(async (book) => {
    const proxy = sheetToWrite(book, undo.sheet);
    const cells = undo.cells.map(({ cell }) => load(proxy.getRange(cell)));
    await book.sync();
    if (proxy.isNullObject) throw sheetGone(undo.sheet);
    const isKept = undo.cells.map(
      ({ written }, i) => written === undefined || cells[i]?.formulas[0]?.[0] === written,
    );
    const changed = undo.cells.filter((_, i) => !isKept[i]).map(({ cell }) => cell);
    if (changed.length > 0)
      throw new HostError(
        "CellChanged",
        `${changed.join(", ")} on ${undo.sheet} was changed since: nothing was taken back.`,
      );
    await checkWritable(book, proxy, undo.sheet, cells);
    restore(book, undo.cells, cells);
    await book.sync();
  });
}

function restore(book: Book, before: readonly UndoCell[], cells: readonly Excel.Range[]): void {
  book.holdCalculation();
  before.forEach(({ formula, numberFormat }, i) => {
    const cell = cells[i] as Excel.Range;
    // First the format: a text such as "12" stays one only in a cell formatted as text.
    if (numberFormat !== undefined) cell.numberFormat = [[numberFormat]];
    cell.formulas = [[formula]];
  });
}

function load(cell: Excel.Range): Excel.Range {
  cell.load("values,valueTypes,formulas,numberFormat");
  return cell;
}

function put(sheet: Excel.Worksheet, cell: Excel.Range, write: Write, isTextCell: boolean): void {
  // A cell formatted as text would take a number or a formula as text.
  if (isTextCell && !isText(write)) cell.numberFormat = [["General"]];
  if ("formulaOf" in write) cell.copyFrom(sheet.getRange(write.formulaOf), "Formulas");
  else if (typeof write.value === "string")
    cell.values = [[isTextCell ? write.value : asText(write.value)]];
  else cell.values = [[write.value ?? ""]];
}

function isText(write: Write | undefined): boolean {
  return write !== undefined && "value" in write && typeof write.value === "string";
}

/** What a cell holds, written so that Excel takes it back as the same. */
function contentOf(cell: string, range: Excel.Range): UndoCell & { readonly isTextCell: boolean } {
  const value = range.values[0]?.[0] as UndoCell["formula"];
  const formula = range.formulas[0]?.[0] as UndoCell["formula"];
  const isTextCell = range.numberFormat[0]?.[0] === textFormat;
  const isPlainText = range.valueTypes[0]?.[0] === "String" && formulaOf(value, formula) === null;
  // On a text cell that keeps its format an apostrophe would become part of the text.
  const back = isPlainText && !isTextCell ? asText(String(value)) : formula;
  return { cell, formula: back, isTextCell };
}
