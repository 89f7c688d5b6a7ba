import { type CellValue, type Copied, parseRectangle, type Rectangle } from "../cells";
import type { Sheet } from "../workbook";
import type { Cells, Clock } from "./area";
import type { Program } from "./program";

/** A cell that holds a formula, with what the model knows about it. */
export class FormulaCell {
  program: Program | undefined;
  /** Why the cell keeps its stored value; null when it evaluates. */
  problem: string | null = null;
  /** The multi-cell ranges it reads, once the graph is built. */
  ranges: readonly RangeNode[] = noRanges;
  /** The cells a blocked spill waits for. */
  blocked: Rectangle | null = null;
  private marks: Mark | undefined;

  constructor(
    readonly grid: Grid,
    readonly row: number,
    readonly col: number,
    /** The formula's text, or what it is a copy of. */
    readonly source: string | Copied,
    /** The cells an array or spilled formula fills; null for a plain formula. */
    public extent: Rectangle | null,
    /** It fills just these cells, whatever the size of its result. */
    readonly isFixed = false,
  ) {}

  get formula(): string {
    const { source } = this;
    return typeof source === "string" ? source : source.at(this.row);
  }

  /** Marks of the ordering walk, made when it first comes by. */
  get mark(): Mark {
    this.marks ??= new Mark();
    return this.marks;
  }
}

/** A range that formulas read, shared by all that read it. */
export class RangeNode {
  readonly dependents = new Set<FormulaCell>();
  readonly mark = new Mark();

  constructor(
    readonly grid: Grid,
    readonly extent: Rectangle,
  ) {}
}

/** Where the ordering walk stands with a node. */
class Mark {
  /** The pass in which the node was found in need of evaluation. */
  due = 0;
  /** The pass in which the walk reached it. */
  seen = 0;
  index = 0;
  low = 0;
  open = false;
}

const noRanges: readonly RangeNode[] = [];

type Maker = FormulaCell | string | Copied;

const usualCols = 64;

/** The values and formulas of one sheet in arrays by row, for fast reading. */
export class Grid implements Cells {
  /** By row, then column; a hole is a blank. */
  readonly values: CellValue[][] = [];
  /**
   * What makes the value of a cell: a formula cell, its own or the anchor that spills over it, or the
   * formula of which no cell was asked for yet. Most of a large sheet never are.
   */
  private readonly makers: Maker[][] = [];
  /** Rows that share their line of makers with the row above, until one of them changes. */
  private readonly isSharing: boolean[] = [];
  rowCount: number;
  colCount: number;
  /** The write that changed each column last, and the size. */
  private readonly changed: number[] = [];
  private resized = 0;

  constructor(
    readonly sheet: Sheet,
    readonly clock: Clock,
  ) {
    this.rowCount = sheet.rowCount;
    this.colCount = sheet.colCount;
    const anchors: FormulaCell[] = [];
    let last = 0;
    sheet.visit((row, col, value, formula, arrayRef, isFixed) => {
      if (row !== last) this.share(last);
      last = row;
      if (value !== null) this.put(row, col, value);
      if (formula === null) return;
      const extent = arrayRef === null ? null : parseRectangle(arrayRef);
      if (extent) {
        const made = new FormulaCell(this, row, col, formula, extent, isFixed === true);
        anchors.push(made);
        this.setMaker(row, col, made);
      } else this.setMaker(row, col, formula);
    });
    for (const anchor of anchors) this.claim(anchor);
  }

  get name(): string {
    return this.sheet.name;
  }

  get hiddenRows(): ReadonlySet<number> {
    return this.sheet.hiddenRows;
  }

  formulaText(row: number, col: number): string | undefined {
    const source = this.source(row, col);
    return typeof source === "object" ? source.at(row) : source;
  }

  /** The formula of the cell itself: its text, or what it is a copy of. */
  source(row: number, col: number): string | Copied | undefined {
    const maker = this.makers[row]?.[col];
    if (!(maker instanceof FormulaCell)) return maker;
    return maker.row === row && maker.col === col ? maker.source : undefined;
  }

  spillAt(row: number, col: number): Rectangle | null {
    return this.formula(row, col)?.extent ?? null;
  }

  get(row: number, col: number): CellValue {
    const line = this.values[row];
    if (line === undefined) return null;
    const value = line[col];
    return value === undefined ? null : value;
  }

  hasChanged(left: number, right: number, since: number): boolean {
    if (this.resized > since) return true;
    const end = Math.min(right, this.changed.length - 1);
    for (let col = left; col <= end; col++) if ((this.changed[col] ?? 0) > since) return true;
    return false;
  }

  put(row: number, col: number, value: CellValue): void {
    this.changed[col] = ++this.clock.writes;
    let line = this.values[row];
    if (line === undefined) {
      if (value === null) return;
      line = this.newLine();
      this.values[row] = line;
    }
    line[col] = value;
    if (value !== null) this.reach(row, col);
  }

  /** Takes what a cell holds from its sheet, which was changed elsewhere. */
  renew(row: number, col: number, value: CellValue, formula: string | Copied | null): void {
    this.put(row, col, value);
    this.setMaker(row, col, formula ?? undefined);
  }

  private reach(row: number, col: number): void {
    if (row < this.rowCount && col < this.colCount) return;
    this.rowCount = Math.max(this.rowCount, row + 1);
    this.colCount = Math.max(this.colCount, col + 1);
    this.resized = ++this.clock.writes;
  }

  /** Room for the cells that a row is about to get, unless the sheet is unusually wide. */
  private newLine<T>(): T[] {
    return new Array(Math.min(this.colCount, usualCols));
  }

  maker(row: number, col: number): FormulaCell | undefined {
    const cell = this.passing(row, col);
    if (cell && this.makers[row]?.[col] !== cell) this.ownLine(row)[col] = cell;
    return cell;
  }

  /** The same for one look: a cell that was not asked for before is not kept. */
  passing(row: number, col: number): FormulaCell | undefined {
    const maker = this.makers[row]?.[col];
    if (maker === undefined || maker instanceof FormulaCell) return maker;
    return new FormulaCell(this, row, col, maker, null);
  }

  /** Copies of formulas stand in a column as one object, so that whole rows are alike. */
  private share(row: number): void {
    const [above, line] = [this.makers[row - 1], this.makers[row]];
    if (!above || above.length !== line?.length) return;
    for (let col = 0; col < line.length; col++) {
      const maker = line[col];
      if (above[col] !== maker || maker instanceof FormulaCell) return;
    }
    this.makers[row] = above;
    this.isSharing[row - 1] = true;
    this.isSharing[row] = true;
  }

  /** The line of makers of a row, to be changed. */
  private ownLine(row: number): Maker[] {
    let line = this.makers[row];
    if (line === undefined || this.isSharing[row]) {
      this.isSharing[row] = false;
      line = line?.slice() ?? this.newLine();
      this.makers[row] = line;
    }
    return line;
  }

  /** The formula cell that makes a value, where it was asked for before. */
  knownMaker(row: number, col: number): FormulaCell | undefined {
    const maker = this.makers[row]?.[col];
    return maker instanceof FormulaCell ? maker : undefined;
  }

  /** The formula of the cell itself, not one that spills over it. */
  formula(row: number, col: number): FormulaCell | undefined {
    const maker = this.maker(row, col);
    return maker !== undefined && maker.row === row && maker.col === col ? maker : undefined;
  }

  setMaker(row: number, col: number, cell: Maker | undefined): void {
    if (cell !== undefined) this.ownLine(row)[col] = cell;
    else if (this.makers[row]) delete this.ownLine(row)[col];
    else return;
    this.reach(row, col);
  }

  /** Notes an anchor as the maker of the free cells it spills over. */
  claim(anchor: FormulaCell): void {
    forEachCell(anchor.extent, (row, col) => {
      if (this.makers[row]?.[col] === undefined) this.setMaker(row, col, anchor);
    });
  }

  /** Every formula cell, row by row. */
  *formulas(): Iterable<FormulaCell> {
    for (const key in this.makers) {
      const line = this.makers[key]!;
      const row = Number(key);
      for (let col = 0; col < line.length; col++) {
        const cell = this.formula(row, col);
        if (cell !== undefined) yield cell;
      }
    }
  }
}

export function forEachCell(
  extent: Rectangle | null,
  visit: (row: number, col: number) => void,
): void {
  if (extent === null) return;
  for (let row = extent.top; row <= extent.bottom; row++)
    for (let col = extent.left; col <= extent.right; col++) visit(row, col);
}
