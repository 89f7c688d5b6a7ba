import { type CellValue, isCellError, isIdentical } from "../cells";
import type { Place } from "./graph/graph";
import type { Grid } from "./grid";

/** A cell whose value changed. */
export interface Change {
  readonly sheet: string;
  readonly row: number;
  readonly col: number;
  readonly before: CellValue;
  readonly value: CellValue;
}

/** What one edit changed, and what of it the readers have yet to see. */
export class Ledger {
  private changes = new Map<string, Change>();
  private stirred: Place[] = [];
  /** How often a value was changed. */
  writes = 0;

  /** Puts a value on the grid and notes the change; false where it was there already. */
  write(grid: Grid, row: number, col: number, value: CellValue): boolean {
    const before = grid.get(row, col);
    if (isUnchanged(before, value)) return false;
    grid.put(row, col, value);
    this.writes++;
    const { name } = grid;
    const key = `${row},${col},${name}`;
    const first = this.changes.get(key);
    this.changes.set(key, { sheet: name, row, col, before: first ? first.before : before, value });
    return true;
  }

  /** Notes a cell that its readers may have read too early. */
  stir(grid: Grid, row: number, col: number): void {
    this.stirred.push({ grid, row, col });
  }

  takeStirred(): Place[] {
    const taken = this.stirred;
    this.stirred = [];
    return taken;
  }

  /** The changes of the edit, without those that came back to where they were. */
  close(): Change[] {
    const all = [...this.changes.values()];
    this.changes = new Map();
    this.stirred = [];
    return all.filter(({ before, value }) => !isUnchanged(before, value));
  }
}

/** The value as a file holds it: an error without its message. */
export function plain(value: CellValue): CellValue {
  return isCellError(value) ? { error: value.error } : value;
}

/** Nothing that a reader of the sheet can see is new: an error's message is seen too. */
function isUnchanged(before: CellValue, value: CellValue): boolean {
  if (!isCellError(before) || !isCellError(value)) return isIdentical(before, value);
  return before.error === value.error && before.message === value.message;
}
