import { type CellValue, errors, maxCols, maxRows, type Rectangle, rectangleText } from "../cells";
import type { Book } from "./book";
import { type FormulaCell, forEachCell } from "./grid";
import { type Ledger, plain } from "./ledger";
import type { Matrix } from "./values";

/** Lays arrays over the cells beside their formulas. */
export class Spiller {
  /** Anchors whose cells were taken; they spill when those are free. */
  readonly blocked = new Set<FormulaCell>();

  constructor(
    private readonly book: Book,
    private readonly ledger: Ledger,
  ) {}

  /** Lays the result of an array formula over its cells, or says why they cannot be had. */
  spill(cell: FormulaCell, result: Matrix): void {
    if (cell.isFixed) {
      this.fill(cell, cell.extent!, (r, c) => result.stretched(r, c));
      return;
    }
    const wanted = wantedBy(cell, result);
    const obstacle = obstacleTo(this.book, cell, wanted);
    cell.blocked = obstacle === undefined ? null : wanted;
    if (obstacle === undefined) this.blocked.delete(cell);
    else this.blocked.add(cell);
    const extent = obstacle === undefined ? wanted : ownExtent(cell);
    this.withdraw(cell, extent);
    cell.extent = extent;
    this.fill(cell, extent, (r, c) =>
      obstacle === undefined ? result.at(r, c) : { ...errors.spill, message: obstacle },
    );
  }

  /** Writes the anchor's value and those of the other cells it fills. */
  private fill(
    cell: FormulaCell,
    extent: Rectangle,
    at: (row: number, col: number) => CellValue,
  ): void {
    const { grid, row, col } = cell;
    const first = at(0, 0);
    this.ledger.write(grid, row, col, first);
    grid.sheet.setFormula(row, col, cell.formula, plain(first), rectangleText(extent));
    forEachCell(extent, (y, x) => {
      if (y === row && x === col) return;
      if (grid.maker(y, x) !== cell) {
        grid.setMaker(y, x, cell);
        this.ledger.stir(grid, y, x);
      }
      const value = at(y - row, x - col);
      if (this.ledger.write(grid, y, x, value)) grid.sheet.setValue(y, x, plain(value));
    });
  }

  /** Clears the cells that a formula filled and that lie outside its new extent. */
  withdraw(cell: FormulaCell, next: Rectangle | null): void {
    const { grid } = cell;
    forEachCell(cell.extent, (row, col) => {
      if ((row === cell.row && col === cell.col) || grid.maker(row, col) !== cell) return;
      if (next && row <= next.bottom && col <= next.right) return;
      grid.setMaker(row, col, undefined);
      this.ledger.write(grid, row, col, null);
      grid.sheet.clear(row, col);
      this.ledger.stir(grid, row, col);
    });
  }
}

/** The cells that a result would fill from its formula's cell. */
export function wantedBy({ row, col }: FormulaCell, { rows, cols }: Matrix): Rectangle {
  return { top: row, left: col, bottom: row + rows - 1, right: col + cols - 1 };
}

/** Why a formula cannot have the cells it would fill. */
export function obstacleTo(book: Book, cell: FormulaCell, wanted: Rectangle): string | undefined {
  const { grid } = cell;
  if (wanted.bottom >= maxRows || wanted.right >= maxCols)
    return "the result reaches past the edge of the sheet";
  let found: string | undefined;
  forEachCell(wanted, (row, col) => {
    if (found !== undefined || (row === cell.row && col === cell.col)) return;
    const maker = grid.maker(row, col);
    if (maker === cell) return;
    if (maker !== undefined || grid.get(row, col) !== null)
      found = "the cells it fills are not empty";
  });
  const isOne = wanted.top === wanted.bottom && wanted.left === wanted.right;
  if (!found && !isOne && book.tableAt(grid, cell.row, cell.col))
    found = "a table takes no spilled results: use a formula for one row";
  return found;
}

/** The formula's own cell alone. */
export function ownExtent({ row, col }: { row: number; col: number }): Rectangle {
  return { top: row, left: col, bottom: row, right: col };
}
