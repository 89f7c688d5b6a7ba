import { type WorksheetFunction, worksheetFunctions } from "../../functions";
import { cellName, type Place, parseRectangle, type Spot } from "../cells";
import { hasNativeForm, NoNativeForm, ruleFor } from "../rules";
import { type Cell, Workbook } from "../workbook";
import { Aids } from "./aids";
import type { LeftCell } from "./left";
import { callsOurs, type Node, type Nodes, nodesOf } from "./rewrite/nodes";
import { Places } from "./rewrite/places";
import { Rewriter, type Shared } from "./rewrite/rewriter";
import { storeValues } from "./store-values";

/** The most cells of one array formula that get a formula each. */
const mostFilled = 20_000;

export interface PlainCopy {
  readonly workbook: Workbook;
  /** Formula cells that got native formulas in place of ours. */
  readonly replaced: number;
  /**
   * Cells whose formula went and whose stored value stayed, since it has no native equivalent or
   * gives a text to read; and defined names that still speak of our functions.
   */
  readonly left: readonly LeftCell[];
}

/**
 * A copy of a workbook that any spreadsheet program recalculates without the add-in: each of our
 * worksheet functions is replaced by an equivalent native formula. The workbook itself is not
 * changed. The numbers of editions, the sets of openings and longer sums get sheets of their own;
 * every other part stays as it is.
 */
export function plainCopy(original: Workbook): PlainCopy {
  const workbook = Workbook.open(original.save());
  return new Copying(workbook).run();
}

class Copying {
  private readonly left: LeftCell[] = [];
  private replaced = 0;
  private readonly aids: Aids;
  private readonly shared: Shared;
  private readonly ids: ReadonlySet<string>;
  /** Ranges of array formulas that are replaced by a formula a cell, by their first cell. */
  private readonly spread = new Map<string, string>();

  constructor(private readonly workbook: Workbook) {
    const places = new Places(workbook);
    this.aids = new Aids(workbook, places);
    const functions = new Map<string, WorksheetFunction>(
      worksheetFunctions.map((each) => [each.id.toUpperCase(), each]),
    );
    this.ids = new Set(functions.keys());
    const arrayRef = ({ sheet, top, left }: Place) =>
      this.spread.get(`${sheet}!${cellName(top, left)}`) ?? null;
    this.shared = { places, aids: this.aids, functions, arrayRef };
  }

  run(): PlainCopy {
    const { workbook } = this;
    const found: { sheet: string; cell: Cell }[] = [];
    for (const sheet of workbook.sheets)
      for (const cell of sheet.cells()) {
        if (cell.formula === null) continue;
        const isOurs = callsOurs(cell.formula);
        if (isOurs && cell.arrayRef !== null)
          this.spread.set(`${sheet.name}!${cellName(cell.row, cell.col)}`, cell.arrayRef);
        if (isOurs || cell.formula.includes("ANCHORARRAY")) found.push({ sheet: sheet.name, cell });
      }
    for (const { sheet, cell } of found) this.replace(sheet, cell);
    for (const { name, sheet, formula } of workbook.names)
      if (callsOurs(formula))
        this.left.push({
          sheet: sheet ?? "",
          cell: name,
          why: "a defined name with our functions",
        });
    const before = workbook.sheets.length;
    this.aids.write(workbook);
    storeValues(workbook, workbook.sheets.slice(before));
    return { workbook, replaced: this.replaced, left: this.left };
  }

  private replace(sheet: string, cell: Cell): void {
    const { row, col, arrayRef } = cell;
    const formula = cell.formula as string;
    try {
      const nodes = nodesOf(formula, this.ids);
      if (callsText(nodes)) {
        this.keepValues(sheet, cell, "a text to read: kept as text");
        return;
      }
      const home = { sheet, row, col };
      const rewriter = new Rewriter(this.shared, home, arrayRef !== null);
      const result = arrayRef === null ? undefined : rewriter.result(nodes);
      if (arrayRef !== null && result) this.fill(home, arrayRef, result);
      else {
        const text = rewriter.formula(nodes);
        if (text === formula) return;
        this.sheet(sheet).setFormula(row, col, text, cell.value, arrayRef ?? undefined);
      }
      if (callsOurs(formula)) this.replaced++;
    } catch (problem) {
      if (!(problem instanceof NoNativeForm)) throw problem;
      this.keepValues(sheet, cell, problem.message);
    }
  }

  /** A formula of its own for each cell of an array formula. */
  private fill(
    home: Spot,
    arrayRef: string,
    result: ReturnType<Rewriter["result"]> & object,
  ): void {
    const { top, left, bottom, right } = parseRectangle(arrayRef);
    if ((bottom - top + 1) * (right - left + 1) > mostFilled)
      throw new NoNativeForm(`an array formula over ${arrayRef}, more than ${mostFilled} cells`);
    const sheet = this.sheet(home.sheet);
    const texts: { row: number; col: number; text: string }[] = [];
    for (let row = top; row <= bottom; row++)
      for (let col = left; col <= right; col++) {
        const [r, c] = [row - top, col - left];
        const isIn =
          (result.rows === 1 || r < result.rows) && (result.cols === 1 || c < result.cols);
        const at = [result.rows === 1 ? 0 : r, result.cols === 1 ? 0 : c] as const;
        texts.push({ row, col, text: isIn ? result.text(...at, false) : "NA()" });
      }
    for (const { row, col, text } of texts)
      sheet.setFormula(row, col, text, sheet.cell(row, col)?.value ?? "");
  }

  private keepValues(sheet: string, cell: Cell, why: string): void {
    this.left.push({ sheet, cell: cellName(cell.row, cell.col), why });
    const { row, col, value } = cell;
    this.sheet(sheet).setValue(row, col, value);
  }

  private sheet(name: string) {
    const sheet = this.workbook.sheet(name);
    if (!sheet) throw new Error(`no sheet ${name}`);
    return sheet;
  }
}

function callsText(nodes: Nodes): boolean {
  return nodes.some((node: Node) => {
    if (node.kind === "group") return callsText(node.nodes);
    if (node.kind === "token") return false;
    return (node.id !== undefined && givesText(node.id)) || node.args.some(callsText);
  });
}

/** A text to read, for which there is no native form: the copy keeps the text. */
function givesText(id: string): boolean {
  const rule = ruleFor(id);
  return rule !== undefined && !hasNativeForm(rule);
}
