import { cellName } from "../../cells";
import { type Look, pageSpecOf, placeOf, type SheetPlan } from "../../records";
import { addressesOf } from "../areas";
import { cellsOf, empty } from "../begun";
import { asText } from "../cell-text";
import { sheetProtected } from "../host-error";
import { type Book, run } from "../run";
import { addSheet, checkStructure, freeName } from "./own-sheet";
import { pageRefused, setUpPage } from "./page";
import { type Written, writeRows } from "./write-blocks";
import { writeChart } from "./write-chart";

/** Points a character of column width. */
const characterPoints = 5.25;
const lineColor = "#B9C4C1";

/**
 * Writes a record into the open workbook and returns the name of its sheet: the sheet made from
 * such a plan before is written anew in its place; a foreign sheet of that name is left alone. A
 * page that cannot be set up, as without a printer, leaves the record standing and is told of.
 */
export function writePlan(
  plan: SheetPlan,
  tell: (note: string) => void = () => {},
): Promise<string> {
  return run(async (book) => {
    const { sheet, copy, charts } = await emptySheet(book, plan);
    const width = Math.max(...plan.rows.map(({ cells }) => cells.length));
    await writeRows(book, sheet, 0, 0, contentOf(plan, width));
    sheet.getRangeByIndexes(0, 0, plan.rows.length, width).numberFormat = formatsOf(plan, width);
    for (const [look, cells] of cellsByLook(plan)) dress(sheet, look, cells);
    for (const range of plan.merges) sheet.getRange(range).merge(false);
    measure(sheet, plan);
    sheet.load("name");
    await book.sync();
    if (plan.chart) await writeChart(book, sheet, plan.chart);
    book.begun.stands();
    if (copy) book.begun.leaves(copy.name, sheet.name, namesOf(charts));
    try {
      for (const former of charts) former.delete();
      copy?.delete();
      await book.sync();
      setUpPage(sheet, pageSpecOf(plan.page));
      await book.sync();
    } catch (thrown) {
      await book.begun.takeBack();
      tell(pageRefused(thrown));
    }
    return sheet.name;
  });
}

/** The sheet for a plan, with what goes once the plan stands on it: its former cells and charts. */
interface Emptied {
  readonly sheet: Excel.Worksheet;
  readonly copy?: Excel.Worksheet;
  readonly charts: readonly Excel.Chart[];
}

/** A new sheet, or the one made before with nothing left in its cells. */
async function emptySheet(book: Book, plan: SheetPlan): Promise<Emptied> {
  book.sheets.load("items/name,items/protection/protected");
  await book.sync();
  const known = book.sheets.items.map((sheet) => {
    const first = sheet.getRangeByIndexes(0, 0, 1, 1);
    first.load("values");
    return { sheet, first };
  });
  await book.sync();
  const names = known.map(({ sheet }) => sheet.name);
  const { name, isThere } = placeOf(
    plan,
    known.map(({ sheet, first }) => ({ name: sheet.name, first: first.values[0]?.[0] })),
  );
  if (!isThere) {
    await checkStructure(book);
    return { sheet: addSheet(book, name), charts: [] };
  }
  const own = known.find(({ sheet }) => sheet.name === name)?.sheet as Excel.Worksheet;
  if (own.protection.protected) throw sheetProtected(name);
  await checkStructure(book);
  own.charts.load("items/name");
  const used = own.getUsedRange();
  used.load("address");
  await book.sync();
  const charts = [...own.charts.items];
  const copyName = freeName("Before", names);
  const copy = addSheet(book, copyName);
  copy.load("name");
  copy.getRange(cellsOf(used.address)).copyFrom(used);
  await book.sync();
  book.begun.renews(name, copyName, namesOf(charts));
  empty(own);
  return { sheet: own, copy, charts };
}

function namesOf(charts: readonly Excel.Chart[]): string[] {
  return charts.map(({ name }) => name);
}

function contentOf(plan: SheetPlan, width: number): Written[][] {
  return plan.rows.map(({ cells }) =>
    Array.from({ length: width }, (_, col): Written => {
      const cell = cells[col];
      if (cell?.formula !== undefined) return `=${cell.formula}`;
      const value = cell?.value ?? "";
      return typeof value === "string" ? asText(value) : value;
    }),
  );
}

function formatsOf(plan: SheetPlan, width: number): string[][] {
  return plan.rows.map(({ cells }) =>
    Array.from({ length: width }, (_, col) => cells[col]?.look.format ?? "General"),
  );
}

/** The names of the cells that share a look. */
function cellsByLook(plan: SheetPlan): Map<Look, string[]> {
  const byLook = new Map<Look, string[]>();
  plan.rows.forEach(({ cells }, row) => {
    cells.forEach((cell, col) => {
      if (cell === null) return;
      const own = byLook.get(cell.look) ?? [];
      byLook.set(cell.look, own);
      own.push(cellName(row, col));
    });
  });
  return byLook;
}

const alignments = { left: "Left", center: "Center", right: "Right" } as const;

function dress(sheet: Excel.Worksheet, look: Look, cells: readonly string[]): void {
  for (const address of addressesOf(cells)) {
    const { format } = sheet.getRanges(address);
    const { bold, italic, size, color, fill, align, wrap, valign, line } = look;
    format.verticalAlignment = valign === "bottom" ? "Bottom" : "Top";
    if (bold) format.font.bold = true;
    if (italic) format.font.italic = true;
    if (size !== undefined) format.font.size = size;
    if (color !== undefined) format.font.color = `#${color}`;
    if (fill !== undefined) format.fill.color = `#${fill}`;
    if (align !== undefined) format.horizontalAlignment = alignments[align];
    if (wrap) format.wrapText = true;
    if (line === undefined) continue;
    // Cells below each other come as one range: the lines between them are its inner ones.
    const sides =
      line === "around"
        ? (["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight", "InsideHorizontal"] as const)
        : (["EdgeBottom", "InsideHorizontal"] as const);
    for (const side of sides) {
      const border = format.borders.getItem(side);
      border.style = "Continuous";
      border.weight = line === "heavy under" ? "Medium" : "Thin";
      border.color = lineColor;
    }
  }
}

function measure(sheet: Excel.Worksheet, { columns, rows }: SheetPlan): void {
  columns.forEach((width, col) => {
    sheet.getRangeByIndexes(0, col, 1, 1).format.columnWidth = width * characterPoints;
  });
  let first = 0;
  rows.forEach(({ height }, row) => {
    if (rows[row + 1]?.height === height) return;
    sheet.getRangeByIndexes(first, 0, row - first + 1, 1).format.rowHeight = height;
    first = row + 1;
  });
}
