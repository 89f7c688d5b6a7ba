import type { WorksheetFunction } from "../../functions";
import { type CellValue, cellName, errors, rectangleText } from "../cells";
import type { Book } from "./book";
import { Graph, isCell } from "./graph/graph";
import { inOrder } from "./graph/order";
import { FormulaCell, type Grid } from "./grid";
import { type Change, Ledger, plain } from "./ledger";
import { evaluate } from "./outcome";
import { parseFormula } from "./parse";
import type { Programs } from "./programs";
import { inStoredForm } from "./spelling";
import { ownExtent, Spiller } from "./spill";
import { readTyped } from "./typed";
import { Matrix } from "./values";
import { Work } from "./work";

/** Spills can uncover each other's cells; more rounds than this mean that they never settle. */
const mostRounds = 20;
/** So many formulas are entered into the graph at a time, which takes a few milliseconds. */
const sliceOfFormulas = 1_000;
const circularReference = "a circular reference";

/** Changes cells and brings everything that depends on them up to date. */
export class Editor {
  private readonly ledger = new Ledger();
  private readonly spiller: Spiller;
  private readonly graph: Graph;
  /** Anchors whose spill was written into. */
  private again: FormulaCell[] = [];
  /** The formulas just typed, which have no stored value to keep. */
  private readonly entered = new Set<FormulaCell>();
  /** Formulas that wait to be worked out while several edits are made together. */
  private gathered: FormulaCell[] | undefined;

  constructor(
    private readonly book: Book,
    private readonly programs: Programs,
    private readonly functions: readonly WorksheetFunction[],
    /** Only what is typed is worked out; what depends on it waits for `recalculateAll`. */
    private readonly isManual: () => boolean,
  ) {
    this.spiller = new Spiller(book, this.ledger);
    this.graph = new Graph(this.spiller.blocked);
  }

  /** Enters all formulas into the graph, some at a time; before the end nothing is to be edited. */
  *prepare(): Generator<void, void, void> {
    const work = new Work();
    let count = 0;
    for (const cell of this.formulas()) {
      this.enroll(cell, work);
      if (++count % sliceOfFormulas === 0) yield;
    }
  }

  set(grid: Grid, row: number, col: number, value: CellValue): Change[] {
    keepWhole(grid, row, col);
    // The workbook goes first: it may refuse, and then nothing has changed.
    if (value === null) grid.sheet.clear(row, col);
    else grid.sheet.setValue(row, col, plain(value));
    this.vacate(grid, row, col);
    this.ledger.write(grid, row, col, value);
    this.ledger.stir(grid, row, col);
    return this.settle([]);
  }

  enter(grid: Grid, row: number, col: number, typed: string): Change[] {
    const { value: given, formula: text } = readTyped(typed, this.book.workbook.date1904);
    if (text === undefined) return this.set(grid, row, col, given);
    keepWhole(grid, row, col);
    parseFormula(text, this.programs.library.ids);
    const stored = inStoredForm(text, this.functions, this.book.tableAt(grid, row, col)?.name);
    const isSame = grid.formula(row, col)?.formula === stored;
    // As typed today, a formula is taken cell by cell; only one that needs it is kept as an array.
    const trial = this.programs.find(grid, row, col, stored, true);
    const extent = trial.needsArray ? ownExtent({ row, col }) : null;
    // A new formula has no stored value to keep; until it is worked out it must not pass for one.
    const value = isSame ? grid.get(row, col) : errors.na;
    const arrayRef = extent ? rectangleText(extent) : undefined;
    // What is typed spills, where an array formula of the older kind stood too.
    if (grid.maker(row, col)?.isFixed) grid.sheet.clear(row, col);
    grid.sheet.setFormula(row, col, stored, plain(value), arrayRef);
    this.vacate(grid, row, col);
    const cell = new FormulaCell(grid, row, col, stored, extent);
    grid.setMaker(row, col, cell);
    this.ledger.write(grid, row, col, value);
    if (!extent && this.givesArray(cell)) cell.extent = ownExtent(cell);
    this.enroll(cell);
    if (!isSame) this.entered.add(cell);
    this.ledger.stir(grid, row, col);
    return this.settle([cell]);
  }

  /** Makes several edits of different cells and works out once what depends on them. */
  together(edits: () => void): Change[] {
    this.gathered = [];
    let changes: Change[] = [];
    try {
      edits();
    } finally {
      const cells = this.gathered;
      this.gathered = undefined;
      changes = this.settle(cells);
    }
    return changes;
  }

  recalculateAll(): Change[] {
    return this.settle([...this.formulas()], false);
  }

  /** Marks the formulas that read themselves, without evaluating anything. */
  findCircles(): void {
    const pass = this.graph.nextPass();
    inOrder(
      this.alone([...this.formulas()], pass),
      pass,
      () => {},
      (cells) => this.refuseCircle(cells),
    );
  }

  private *formulas(): Iterable<FormulaCell> {
    for (const grid of this.book.all()) yield* grid.formulas();
  }

  private enroll(cell: FormulaCell, work = new Work()): void {
    const program = work.within(() => this.programs.of(cell));
    cell.problem = program.unsupported;
    if ("run" in program) this.graph.add(cell, program);
  }

  /** Whether a formula gives an array that its text does not show, as our functions can. */
  private givesArray(cell: FormulaCell): boolean {
    const program = this.programs.find(cell.grid, cell.row, cell.col, cell.formula, true);
    const outcome = new Work().within(() => evaluate(cell, program));
    return "value" in outcome && outcome.spills !== undefined;
  }

  /** Takes the old content of a cell out of the graph, and whatever it spilled off the sheet. */
  private vacate(grid: Grid, row: number, col: number): void {
    const maker = grid.maker(row, col);
    if (!maker) return;
    grid.setMaker(row, col, undefined);
    if (maker.row === row && maker.col === col) {
      this.graph.remove(maker);
      this.spiller.withdraw(maker, null);
    } else this.again.push(maker);
  }

  /** Works out what is due until nothing stirs; returns the changes of the whole edit. */
  private settle(cells: readonly FormulaCell[], isManual = this.isManual()): Change[] {
    if (this.gathered) {
      this.gathered.push(...cells);
      return [];
    }
    const work = new Work();
    let also = isManual ? cells : [...cells, ...this.again, ...this.graph.volatile];
    if (!isManual) this.again = [];
    for (let round = 0; round < mostRounds; round++) {
      const pass = this.graph.nextPass();
      // After the first round only cells that a spill newly covers or leaves were read too early.
      const stirred = this.ledger.takeStirred();
      const due = isManual ? this.alone(also, pass) : this.graph.due(stirred, also, pass);
      if (due.length === 0) break;
      this.book.clock.revision++;
      const { writes } = this.ledger;
      inOrder(
        due,
        pass,
        (cell) => this.work(cell, work),
        (circle) => this.refuseCircle(circle),
      );
      // What these read may have been worked out after them.
      also = this.ledger.writes > writes && !isManual ? [...this.graph.seeking] : [];
    }
    this.entered.clear();
    this.book.clock.revision++;
    return this.ledger.close();
  }

  /** These formulas without what depends on them, due in this pass. */
  private alone(cells: readonly FormulaCell[], pass: number): readonly FormulaCell[] {
    for (const cell of cells) cell.mark.due = pass;
    return cells;
  }

  private work(cell: FormulaCell, work: Work): void {
    const outcome = work.within(() => evaluate(cell, this.programs.of(cell)));
    if ("unsupported" in outcome) {
      this.refuse(cell, outcome.unsupported);
      return;
    }
    cell.problem = null;
    const { grid, row, col } = cell;
    const { value, spills } = outcome;
    if (cell.extent !== null) this.spiller.spill(cell, spills ?? new Matrix(1, 1, [value]));
    else if (this.ledger.write(grid, row, col, value))
      grid.sheet.setFormula(row, col, cell.formula, plain(value));
  }

  /** Leaves a cell at its stored value; one just typed has none and says why. */
  private refuse(cell: FormulaCell, reason: string): void {
    cell.problem = reason;
    if (!this.entered.has(cell)) return;
    const message = `not evaluated: ${reason}`;
    this.ledger.write(cell.grid, cell.row, cell.col, {
      ...(cell.program?.refusal ?? errors.na),
      message,
    });
  }

  private refuseCircle(cells: readonly FormulaCell[]): void {
    for (const cell of cells) this.refuse(cell, cell.program?.unsupported ?? circularReference);
  }
}

/** Refuses to change a part of an array formula that fills several cells as one. */
function keepWhole(grid: Grid, row: number, col: number): void {
  const maker = grid.maker(row, col);
  if (!maker?.isFixed || maker.extent === null || isCell(maker.extent)) return;
  throw new RangeError(
    `${grid.name}!${cellName(row, col)} is part of the array formula that fills ${rectangleText(maker.extent)}; change that formula as a whole in a spreadsheet program.`,
  );
}
