import { fillDown } from "../blocks";
import type { Desk } from "../desk";

/** What the keyboard needs of the grid besides the desk. */
export interface KeyTarget {
  readonly desk: Desk;
  /** Rows of a screen. */
  readonly page: () => number;
}

type Key = Pick<KeyboardEvent, "key" | "shiftKey" | "ctrlKey" | "metaKey" | "altKey">;

const arrows: Readonly<Record<string, readonly [rows: number, cols: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

/** Acts on a key pressed in the grid; true when it meant something. */
export function pressKey(event: Key, target: KeyTarget): boolean {
  return target.desk.edit ? keyInEditor(event, target.desk) : keyOnCell(event, target);
}

function keyInEditor(event: Key, desk: Desk): boolean {
  const { edit } = desk;
  if (!edit || event.altKey) return false;
  if (event.key === "F2") {
    desk.setOver(!edit.isOver);
    return true;
  }
  if (event.key === "Escape") {
    desk.cancel();
    return true;
  }
  const step = stepOfCommit(event) ?? (edit.isOver ? arrows[event.key] : undefined);
  if (!step) return false;
  if (desk.commit()) desk.step(...step);
  return true;
}

/** Where finishing an entry leads: Enter down, Tab to the right, with Shift the other way. */
export function stepOfCommit({ key, shiftKey }: Key): readonly [number, number] | undefined {
  const sign = shiftKey ? -1 : 1;
  if (key === "Enter") return [sign, 0];
  if (key === "Tab") return [0, sign];
  return undefined;
}

function keyOnCell(event: Key, { desk, page }: KeyTarget): boolean {
  const { key, shiftKey } = event;
  const isCommand = event.ctrlKey || event.metaKey;
  if (event.altKey) return false;
  if (isCommand) return commandOnCell(event, desk);
  const arrow = arrows[key];
  const { cursor, head, extent } = desk;
  const from = shiftKey ? head : cursor;
  if (arrow) desk.step(...arrow, shiftKey);
  else if (key === "PageDown") desk.step(page(), 0, shiftKey);
  else if (key === "PageUp") desk.step(-page(), 0, shiftKey);
  else if (key === "Home") desk.moveTo(from.row, extent.colFrom(-1, 1), shiftKey);
  else if (key === "End") desk.moveTo(from.row, lastInRow(desk, from.row), shiftKey);
  else if (key === "Enter" || key === "Tab") desk.step(...(stepOfCommit(event) ?? [0, 0]));
  else if (key === "F2") desk.beginEdit("cell");
  else if (key === "Delete" || key === "Backspace") desk.clear();
  else if (key === "Escape") desk.moveTo(cursor.row, cursor.col);
  else if (key.length === 1) desk.beginEdit("cell", key);
  else return false;
  return true;
}

function commandOnCell({ key, shiftKey }: Key, desk: Desk): boolean {
  const { extent, cursor, head } = desk;
  const from = shiftKey ? head : cursor;
  const arrow = arrows[key];
  if (arrow) desk.moveTo(...edge(desk, from, arrow), shiftKey);
  else if (key === "Home") desk.moveTo(extent.rowFrom(-1, 1), extent.colFrom(-1, 1), shiftKey);
  else if (key === "End") desk.moveTo(extent.lastUsed.row, extent.lastUsed.col, shiftKey);
  else if (key === "a") desk.selectArea(0, 0, extent.lastUsed.row, extent.lastUsed.col);
  else if (key === "d") fillDown(desk);
  else return false;
  return true;
}

/** The last cell of a row that holds something. */
function lastInRow(desk: Desk, row: number): number {
  const { book, sheet, extent } = desk;
  for (let col = extent.usedCols - 1; col > 0; col--)
    if (extent.isShown(row, col) && book.value(sheet.name, row, col) !== null) return col;
  return extent.colFrom(-1, 1);
}

/** The next cell in a direction where filled cells begin or end. */
function edge(
  desk: Desk,
  from: { readonly row: number; readonly col: number },
  [rows, cols]: readonly [number, number],
): [row: number, col: number] {
  const { book, sheet, extent } = desk;
  const isFilled = (row: number, col: number) => book.value(sheet.name, row, col) !== null;
  const next = (row: number, col: number): [number, number] => [
    extent.rowFrom(row, rows),
    extent.colFrom(col, cols),
  ];
  let [row, col] = next(from.row, from.col);
  const stays = isFilled(from.row, from.col) && isFilled(row, col);
  for (;;) {
    const [r, c] = next(row, col);
    if (r === row && c === col) return [row, col];
    if (stays ? !isFilled(r, c) : isFilled(row, col)) return [row, col];
    [row, col] = [r, c];
  }
}
