import type { WorksheetFunction } from "../../functions";
import { type Copied, CopiedDown, kept, rowPattern } from "../cells";
import type { Book } from "./book";
import { compileFormula, type Library } from "./compile/compile";
import type { Blank } from "./compile/expr";
import type { FormulaCell, Grid } from "./grid";
import { nativeFunctions } from "./native";
import type { Program } from "./program";
import { Recall } from "./recall";

/** The compiled formulas of a workbook: one program serves all cells with the same row pattern. */
export class Programs {
  readonly library: Library;
  private known = new Map<Grid, Map<string, Program>>();
  /** The formula met last in each column. */
  private latest = new Map<Grid, { readonly copied: CopiedDown; readonly program: Program }[]>();
  private copies = new Map<Copied, Program>();
  private recalls = new Map<Program, Recall | null>();

  constructor(
    private readonly book: Book,
    functions: readonly WorksheetFunction[],
    blank: Blank,
  ) {
    const own = new Map(functions.map((each) => [each.id.toUpperCase(), each]));
    const { now } = book;
    const natives = nativeFunctions({ date1904: book.workbook.date1904, now });
    this.library = { natives, blank, own, ids: new Set(own.keys()) };
  }

  /** The program of a cell, compiled when its pattern is new. */
  of(cell: FormulaCell): Program {
    cell.program ??=
      typeof cell.source === "string" || cell.extent !== null
        ? this.find(cell.grid, cell.row, cell.col, cell.formula, cell.extent !== null)
        : this.ofCopy(cell, cell.source);
    return cell.program;
  }

  /** What is known of a formula from other rows; null where it goes by more than what it reads. */
  recall(program: Program): Recall | null {
    return kept(this.recalls, program, () => Recall.of(program) ?? null);
  }

  private ofCopy(cell: FormulaCell, source: Copied): Program {
    return kept(this.copies, source, () =>
      this.byPattern(cell.grid, cell.row, cell.col, cell.formula, false),
    );
  }

  find(grid: Grid, row: number, col: number, formula: string, isArray: boolean): Program {
    // Tables depend on where the formula stands, array formulas are rare.
    if (isArray || !CopiedDown.suits(formula))
      return this.byPattern(grid, row, col, formula, isArray);
    const columns = kept(this.latest, grid, () => []);
    const latest = columns[col];
    if (latest?.copied.matches(formula, row)) return latest.program;
    const program = this.byPattern(grid, row, col, formula, false);
    columns[col] = { copied: new CopiedDown(formula, row, col), program };
    return program;
  }

  private byPattern(
    grid: Grid,
    row: number,
    col: number,
    formula: string,
    isArray: boolean,
  ): Program {
    const programs = kept(this.known, grid, () => new Map());
    let key = rowPattern(formula, row, col);
    if (isArray) key = `{${key}`;
    // A bare [@Column] means another table elsewhere on the sheet.
    if (formula.includes("[")) key += `\n${this.book.tableAt(grid, row, col)?.name ?? ""}`;
    return kept(programs, key, () =>
      compileFormula(formula, { grid, row, col }, isArray, this.book, this.library),
    );
  }

  forget(): void {
    this.known = new Map();
    this.latest = new Map();
    this.copies = new Map();
    this.recalls = new Map();
  }
}
