import { isIdentical, parseCell } from "../cells";
import type { Grid, Mend, Write } from "../job";
import { asText, formulaOf, textFormat, toCellValue } from "./cell-text";
import { contentsOf, loadContents } from "./contents";
import { HostError, sheetGone } from "./host-error";
import { run } from "./run";
import type { Undo, UndoCell } from "./types";
import { checkWritable, sheetToWrite } from "./writable";

/**
 * Writes a mend's cells and returns what stood there before. Refused where a sheet is protected, and
 * where a cell does not hold any more what was `checked`.
 */
export function applyMend(sheet: string, mend: Mend, checked?: Checked): Promise<Undo> {
  return run(async (book) => {
    const proxy = sheetToWrite(book, sheet);
    const cells = mend.writes.map((write) => loadContents(proxy.getRange(write.cell)));
    const models = mend.writes.flatMap((write) => ("formulaOf" in write ? [write.formulaOf] : []));
    const looked = [
      ...mend.writes.map(({ cell }, i) => [cell, cells[i] as Excel.Range] as const),
      ...models.map((cell) => [cell, loadContents(proxy.getRange(cell))] as const),
    ];
    await book.sync();
    await checkWritable(book, proxy, sheet, cells);
    if (checked) refuseChanged(sheet, looked, checked);
    const before = cells.map((cell, i) => undoOf(mend.writes[i]?.cell ?? "", cell));
    for (const cell of cells) book.begun.overwrites(proxy.name, cell);

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

/** A sheet as it was when it was checked. */
type Checked = Pick<Grid, "value" | "formula">;

/** Refuses to write over what nobody has looked at. */
function refuseChanged(
  sheet: string,
  cells: readonly (readonly [name: string, cell: Excel.Range])[],
  checked: Checked,
): void {
  const changed = cells.flatMap(([name, { values, valueTypes, formulas }]) => {
    const at = parseCell(name);
    const [value, type, formula] = [values[0]?.[0], valueTypes[0]?.[0], formulas[0]?.[0]];
    const before = checked.formula(at.row, at.col);
    const isSame =
      formulaOf(value, formula) === before &&
      (before !== null ||
        isIdentical(toCellValue(value, formula, type), checked.value(at.row, at.col)));
    return isSame ? [] : [name];
  });
  if (changed.length > 0)
    throw new HostError(
      "CellChanged",
      `${changed.join(", ")} on ${sheet} was changed since the check: nothing was written. Check again.`,
    );
}

/** Puts back what stood before a mend. Cells that were changed since are left, and told of. */
export function undoMend(undo: Undo): Promise<void> {
  return run(async (book) => {
    const proxy = sheetToWrite(book, undo.sheet);
    const cells = undo.cells.map(({ cell }) => loadContents(proxy.getRange(cell)));
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
    for (const cell of cells) book.begun.overwrites(proxy.name, cell);
    book.holdCalculation();
    undo.cells.forEach(({ formula, numberFormat }, i) => {
      const cell = cells[i] as Excel.Range;
      // First the format: a text such as "12" stays one only in a cell formatted as text.
      if (numberFormat !== undefined) cell.numberFormat = [[numberFormat]];
      cell.formulas = [[formula]];
    });
    await book.sync();
  });
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

function undoOf(cell: string, range: Excel.Range): UndoCell & { readonly isTextCell: boolean } {
  const { formulas, numberFormats } = contentsOf(range);
  const formula = formulas[0]?.[0] as UndoCell["formula"];
  return { cell, formula, isTextCell: numberFormats[0]?.[0] === textFormat };
}
