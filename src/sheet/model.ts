import type { WorksheetFunction } from "../../functions";
import { type CellValue, type Copied, errors, type Place } from "../cells";
import { Book, type WorkbookView } from "./book";
import type { Blank } from "./compile/expr";
import { Editor } from "./editor";
import { forEachRead } from "./graph/graph";
import { FormulaCell, type Grid } from "./grid";
import type { Change } from "./ledger";
import { isKnownToAgree } from "./native/agreeing";
import { evaluate } from "./outcome";
import { parseFormula } from "./parse";
import { Programs } from "./programs";
import { obstacleTo, wantedBy } from "./spill";
import { Work } from "./work";

/** The values of one sheet, and the formulas as stored: without "=", null where there is none. */
export interface SheetCells {
  value(row: number, col: number): CellValue;
  formula(row: number, col: number): string | null;
  hasFormula(row: number, col: number): boolean;
  /** The values of these rows of a column. */
  column(col: number, rows: readonly number[]): CellValue[];
  /** The same object for formulas known to be copies of each other; null where nothing is known. */
  copyOf(row: number, col: number): Copied | null;
}

/** A formula cell that keeps its stored value, and what in it is not evaluated. */
interface UnsupportedCell {
  readonly sheet: string;
  readonly row: number;
  readonly col: number;
  readonly what: string;
}

/** What a formula gives, or what in it is not evaluated. */
export type Fresh = { readonly value: CellValue } | { readonly unsupported: string };

export interface ModelOptions {
  /** The time that TODAY and NOW give; the system clock where left out. */
  readonly now?: () => Date;
  /** How a blank cell reaches our functions; Excel's builds differ, and tests try each. */
  readonly blank?: Blank;
}

/**
 * A workbook that recalculates. Rows and columns are 0-based, sheets go by name whatever the case;
 * a sheet that is not there throws a RangeError.
 *
 * Values that change are written to the workbook. A formula that cannot be evaluated keeps its
 * stored value, which the formulas that read it go on using.
 */
export class SheetModel {
  protected readonly book: Book;
  private readonly programs: Programs;
  private editor: Editor | undefined;
  /** What is left to be done before the first edit. */
  private steps: Iterator<void> | undefined;
  /** Whether what depends on an edit waits for `recalculateAll`. */
  isManual = false;
  /** What all calls of `recompute` may cost together. */
  protected work = new Work();

  constructor(
    workbook: WorkbookView,
    private readonly functions: readonly WorksheetFunction[],
    options: ModelOptions = {},
  ) {
    this.book = new Book(workbook, options.now ?? (() => new Date()));
    this.programs = new Programs(
      this.book,
      functions,
      options.blank === undefined ? "usual" : options.blank,
    );
  }

  value(sheet: string, row: number, col: number): CellValue {
    return this.grid(sheet).get(row, col);
  }

  /** A sheet as it stands now, for reading many cells of it. */
  cells(sheet: string): SheetCells {
    const grid = this.grid(sheet);
    return {
      value: (row, col) => grid.get(row, col),
      formula: (row, col) => grid.formulaText(row, col) ?? null,
      copyOf: (row, col) => {
        const source = grid.source(row, col);
        return typeof source === "object" ? source : null;
      },
      hasFormula: (row, col) => grid.source(row, col) !== undefined,
      column: (col, rows) => rows.map((row) => grid.get(row, col)),
    };
  }

  /**
   * The value of one cell worked out afresh from the stored values of what it reads; nothing is
   * changed. A cell that a formula spills over gets its part of the result.
   */
  recompute(sheet: string, row: number, col: number): Fresh {
    const grid = this.grid(sheet);
    const cell = grid.passing(row, col);
    if (!cell) return { value: grid.get(row, col) };
    const outcome = this.work.within(() => {
      const program = this.programs.of(cell);
      const run = () => evaluate(cell, program);
      // Of a single formula nothing is known from other rows.
      const recall = typeof cell.source === "string" ? null : this.programs.recall(program);
      return recall ? recall.of(cell.row, cell.col, run) : run();
    });
    if ("unsupported" in outcome) return outcome;
    const { spills, value } = outcome;
    if (cell.row === row && cell.col === col) {
      const isBlocked =
        spills && !cell.isFixed && obstacleTo(this.book, cell, wantedBy(cell, spills));
      return { value: isBlocked ? errors.spill : value };
    }
    const [r, c] = [row - cell.row, col - cell.col];
    if (cell.isFixed) return { value: spills ? spills.stretched(r, c) : value };
    if (!spills) return { value: null };
    return { value: r < spills.rows && c < spills.cols ? spills.at(r, c) : null };
  }

  /**
   * What a formula would give in a cell, from the values now on the sheets; nothing is kept. Of a
   * result that spills the first value.
   */
  evaluate(formula: string, sheet: string, row: number, col: number): Fresh {
    const cell = new FormulaCell(this.grid(sheet), row, col, formula, null);
    const outcome = new Work().within(() => evaluate(cell, this.programs.of(cell)));
    return "unsupported" in outcome ? outcome : { value: outcome.value };
  }

  /** Throws a FormulaSyntaxError for a formula that cannot be read. */
  checkFormula(formula: string): void {
    parseFormula(formula, this.programs.library.ids);
  }

  /**
   * Takes what a user typed: a number, date, text, TRUE, or a formula after "="; "" clears, a
   * leading apostrophe keeps text. Returns every cell that changed. Throws a FormulaSyntaxError
   * for a formula that cannot be read; then nothing is changed.
   */
  enter(sheet: string, row: number, col: number, text: string): Change[] {
    return this.edit().enter(this.grid(sheet), row, col, text);
  }

  /** Stores a value, removes a formula there, and returns every cell that changed. */
  set(sheet: string, row: number, col: number, value: CellValue): Change[] {
    return this.edit().set(this.grid(sheet), row, col, value);
  }

  /**
   * Makes several edits (calls of `enter` and `set`, of different cells) and works out only once
   * what depends on them. Returns every cell that changed. When an edit throws, those before it
   * stay made and worked out.
   */
  together(edits: () => void): Change[] {
    return this.edit().together(edits);
  }

  /** The cell whose formula spills over this one; null for a cell with content of its own. */
  anchorOf(
    sheet: string,
    row: number,
    col: number,
  ): { readonly row: number; readonly col: number } | null {
    const maker = this.grid(sheet).maker(row, col);
    if (!maker || (maker.row === row && maker.col === col)) return null;
    return { row: maker.row, col: maker.col };
  }

  /** Whether `recompute` has no work left: formulas then keep their stored values. */
  get isSpent(): boolean {
    return this.work.isSpent;
  }

  /** Whether all in a formula is known to give here what a spreadsheet program gives. */
  isKnownToAgree(formula: string): boolean {
    return isKnownToAgree(formula);
  }

  /** Works out every formula, in the order in which they depend on each other. */
  recalculateAll(): Change[] {
    return this.edit().recalculateAll();
  }

  /** The ranges that the formula of a cell reads. */
  precedents(sheet: string, row: number, col: number): Place[] {
    const cell = this.grid(sheet).maker(row, col);
    if (!cell) return [];
    const refs: Place[] = [];
    forEachRead(cell, this.programs.of(cell), (grid, extent) =>
      refs.push({ sheet: grid.name, ...extent }),
    );
    return refs;
  }

  /** Every formula cell that keeps its stored value, with what is not evaluated in it. */
  unsupported(): UnsupportedCell[] {
    const editor = this.edit();
    editor.findCircles();
    const found: UnsupportedCell[] = [];
    for (const grid of this.book.all())
      for (const { row, col, problem } of grid.formulas())
        if (problem !== null) found.push({ sheet: grid.name, row, col, what: problem });
    return found;
  }

  /** Reads the workbook anew, after it was changed past the model. */
  refresh(): void {
    this.book.forget();
    this.programs.forget();
    this.editor = undefined;
    this.steps = undefined;
  }

  /** Does a part of what the first edit needs; false once nothing of that is left. */
  prepare(): boolean {
    this.editor ??= new Editor(this.book, this.programs, this.functions, () => this.isManual);
    this.steps ??= this.editor.prepare();
    try {
      return !this.steps.next().done;
    } catch (thrown) {
      // With a part of the graph an edit would leave cells as they were.
      this.editor = undefined;
      this.steps = undefined;
      throw thrown;
    }
  }

  private edit(): Editor {
    while (this.prepare());
    return this.editor as Editor;
  }

  private grid(sheet: string): Grid {
    const grid = this.book.grid(sheet);
    if (!grid) throw new RangeError(`The workbook has no sheet "${sheet}".`);
    return grid;
  }
}
