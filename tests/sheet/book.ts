import type { WorksheetFunction } from "../../functions";
import { type CellValue, cellName, parseCell, parseRectangle } from "../../src/cells";
import { type Change, SheetModel, type WorkbookView } from "../../src/sheet";
import { type CellSpec, type DefinedName, type TableInfo, Workbook } from "../../src/workbook";

type Content = number | string | boolean | { readonly error: string } | CellSpec;

interface Extras {
  readonly names?: readonly DefinedName[];
  readonly tables?: readonly TableInfo[];
  readonly functions?: readonly WorksheetFunction[];
  readonly date1904?: boolean;
  readonly now?: () => Date;
}

/** A workbook from cells by reference, "Sheet!B2" or "B2" for the sheet Main; "=…" is a formula. */
export function book(cells: Readonly<Record<string, Content>>): Workbook {
  const workbook = Workbook.create();
  const sheets = new Map<string, CellSpec[][]>([["Main", []]]);
  for (const [where, content] of Object.entries(cells)) {
    const [sheet, ref] = place(where);
    const { row, col } = parseCell(ref);
    const rows = sheets.get(sheet) ?? [];
    sheets.set(sheet, rows);
    for (let r = rows.length; r <= row; r++) rows.push([]);
    rows[row]![col] = specOf(content);
  }
  for (const [name, rows] of sheets)
    workbook.addSheet(name, { rows: rows.map((row) => Array.from(row, (cell) => cell ?? null)) });
  return workbook;
}

function specOf(content: Content): CellSpec {
  if (typeof content === "object") return "error" in content ? { value: content } : content;
  if (typeof content === "string" && content.startsWith("=")) return { formula: content.slice(1) };
  return { value: content };
}

function place(where: string): [string, string] {
  const at = where.lastIndexOf("!");
  return at < 0 ? ["Main", where] : [where.slice(0, at), where.slice(at + 1)];
}

/** A model with reading and typing by reference. */
export class Desk {
  readonly model: SheetModel;

  constructor(
    readonly workbook: Workbook,
    extras: Extras = {},
  ) {
    const view: WorkbookView = {
      sheets: workbook.sheets,
      sheet: (name) => workbook.sheet(name),
      names: extras.names ?? [],
      tables: extras.tables ?? [],
      date1904: extras.date1904 ?? false,
    };
    const options = extras.now ? { now: extras.now } : {};
    this.model = new SheetModel(view, extras.functions ?? [], options);
  }

  value(where: string): CellValue {
    const [sheet, ref] = place(where);
    const { row, col } = parseCell(ref);
    return this.model.value(sheet, row, col);
  }

  values(range: string): CellValue[][] {
    const { top, left, bottom, right } = parseRectangle(range);
    const out: CellValue[][] = [];
    for (let row = top; row <= bottom; row++) {
      const line: CellValue[] = [];
      for (let col = left; col <= right; col++) line.push(this.model.value("Main", row, col));
      out.push(line);
    }
    return out;
  }

  /** Types into a cell; gives the references of the cells that changed. */
  type(where: string, text: string): string[] {
    const [sheet, ref] = place(where);
    const { row, col } = parseCell(ref);
    return refs(this.model.enter(sheet, row, col, text));
  }

  /** The value that a formula typed into the far cell ZZ1 gives. */
  ask(formula: string): CellValue {
    this.type("ZZ1", "");
    this.type("ZZ1", formula);
    return this.value("ZZ1");
  }
}

export function refs(changes: readonly Change[]): string[] {
  return changes.map(({ row, col }) => cellName(row, col)).sort();
}

/** A desk over cells. */
export function desk(cells: Readonly<Record<string, Content>>, extras?: Extras): Desk {
  const made = new Desk(book(cells), extras);
  made.model.recalculateAll();
  return made;
}
