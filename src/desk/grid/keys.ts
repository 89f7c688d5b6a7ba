import { fill } from "../blocks";
import type { Desk } from "../desk";
import { insertRow, takeRowOut } from "../rows/act";
import { shifted } from "../text/shift";

/** What the keyboard needs of the grid besides the desk. */
interface KeyTarget {
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
  if (event.ctrlKey || event.metaKey) return commandInEditor(event, desk);
  if (event.key === "F2") {
    desk.setOver(!edit.isOver);
    return true;
  }
  if (event.key === "Escape") {
    desk.cancel();
    return true;
  }
  if (event.key === "Enter" || event.key === "Tab") {
    if (desk.commit()) goOn(event, desk);
    return true;
  }
  const step = edit.isOver && !event.ctrlKey && !event.metaKey ? arrows[event.key] : undefined;
  if (step && desk.commit()) desk.step(...step);
  return step !== undefined;
}

/** Keys that finish the entry and go on. Those of the text field itself are left to it. */
function commandInEditor({ key }: Key, desk: Desk): boolean {
  if (key === ";") desk.retype(today());
  else if (key === "." && desk.commit()) desk.nextLike();
  else if (key === "Enter") desk.commit();
  else return false;
  return true;
}

function today(): string {
  const now = new Date();
  const [month, day] = [now.getMonth() + 1, now.getDate()].map((n) => String(n).padStart(2, "0"));
  return `${now.getFullYear()}-${month}-${day}`;
}

function contentAbove({ book, sheet, cursor: { row, col } }: Desk): string {
  if (row === 0) return "";
  return shifted(book.typedText(sheet.name, row - 1, col), { row: row - 1, col }, { row, col });
}

/** Finishing an entry: Enter leads down, Tab to the next typed cell, with Shift the other way. */
export function goOn({ key, shiftKey }: Pick<Key, "key" | "shiftKey">, desk: Desk): void {
  desk.goOn(key === "Tab" ? "Tab" : "Enter", shiftKey ? -1 : 1);
}

function keyOnCell(event: Key, { desk, page }: KeyTarget): boolean {
  const { key, shiftKey } = event;
  const isCommand = event.ctrlKey || event.metaKey;
  if (event.altKey) return key === "ArrowDown" && desk.offerChoices();
  if (isCommand) return commandOnCell(event, desk);
  const arrow = arrows[key];
  const { cursor, head, extent } = desk;
  const from = shiftKey ? head : cursor;
  if (arrow) desk.step(...arrow, shiftKey);
  else if (key === "PageDown") desk.step(page(), 0, shiftKey);
  else if (key === "PageUp") desk.step(-page(), 0, shiftKey);
  else if (key === "Home") desk.moveTo(from.row, extent.colFrom(-1, 1), shiftKey);
  else if (key === "End") desk.moveTo(from.row, lastInRow(desk, from.row), shiftKey);
  else if (key === "Enter" || key === "Tab") goOn(event, desk);
  else if (key === " " && shiftKey) desk.selectArea(cursor.row, 0, cursor.row, extent.lastUsed.col);
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
  else if (key === "d") fill(desk, "down");
  else if (key === "r") fill(desk, "right");
  else if (key === "+" || key === "=") insertRow(desk);
  else if (key === "-") takeRowOut(desk);
  else if (key === "PageDown" || key === "PageUp") desk.turnSheet(key === "PageDown" ? 1 : -1);
  else if (key === "'") desk.enterHere(contentAbove(desk));
  else if (key === ";") desk.enterHere(today());
  else if (key === ".") desk.nextLike();
  else if (key === " ") desk.selectArea(0, cursor.col, extent.lastUsed.row, cursor.col);
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
