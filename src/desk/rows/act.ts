import type { Desk } from "../desk";
import type { TypedCell } from "../host";
import type { RowMove } from "../text/followed";
import { closedAt, openedAt, sortedBy } from "./arrange";
import { formulasFor } from "./grow";

/** Puts a blank row into the list at the active cell; one step to undo, as all of these. */
export function insertRow(desk: Desk): void {
  act(desk, () => {
    const { cells, move } = openedAt(desk, desk.cursor.row);
    const last = Math.max(move.row, move.bottom + 1);
    const isSet = (one: TypedCell) =>
      cells.some((cell) => cell.row === one.row && cell.col === one.col);
    const grown = formulasFor(desk, last).filter((one) => !isSet(one));
    return { cells: [...cells, ...grown], move, newRow: last };
  });
}

/** Takes the row at the active cell out of its list. */
export function takeRowOut(desk: Desk): void {
  act(desk, () => closedAt(desk, desk.cursor.row));
}

/** Sorts the list at the active cell by its column. */
export function sortRows(desk: Desk, sign: 1 | -1): void {
  act(desk, () => ({ cells: sortedBy(desk, desk.cursor.row, desk.cursor.col, sign) }));
}

interface Arranged {
  readonly cells: readonly TypedCell[];
  readonly newRow?: number;
  readonly move?: RowMove;
}

function act(desk: Desk, arrange: () => Arranged): void {
  desk.attempt(() => {
    const { cells, newRow, move } = arrange();
    if (cells.length > 0) desk.book.userEntersCells(desk.sheet.name, cells, newRow, move);
    desk.filterAgain();
  });
}
