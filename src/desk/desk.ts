import type { Area, Book, BookChange, SheetFacts } from "./book";
import type { Clip } from "./clip";
import type { Edit } from "./edit";
import { Extent } from "./extent";
import { Messages } from "./messages";

/** What a listener is told: which part of the page is another than before. */
export type DeskTopic = "book" | "sheet" | "cells" | "selection" | "edit" | "messages";

interface Spot {
  readonly row: number;
  readonly col: number;
}

const corner: Spot = { row: 0, col: 0 };

/** What the person at the desk is doing: the open book, the cell they are at, the text they type. */
export class Desk {
  readonly messages = new Messages(() => this.tell("messages"));
  sheet: SheetFacts;
  extent: Extent;
  /** The active cell, and the opposite corner of what is selected. */
  cursor: Spot = corner;
  head: Spot = corner;
  edit: Edit | null = null;
  /** Counts what was told, as the snapshot of a store. */
  version = 0;
  /** What was last copied here. */
  clip: Clip | null = null;
  private readonly listeners = new Set<(topic: DeskTopic) => void>();
  private readonly spots = new Map<string, Spot>();

  constructor(readonly book: Book) {
    this.sheet = activeSheet(book);
    this.extent = new Extent(this.sheet, corner);
    book.onChange((change) => this.changed(change));
    book.onSelect((area) => this.bookSelected(area));
  }

  subscribe = (listener: (topic: DeskTopic) => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  get area(): Area {
    const { cursor, head, sheet } = this;
    return {
      sheet: sheet.name,
      top: Math.min(cursor.row, head.row),
      left: Math.min(cursor.col, head.col),
      bottom: Math.max(cursor.row, head.row),
      right: Math.max(cursor.col, head.col),
    };
  }

  /** Makes a cell the active one; with `extend` it becomes the far corner of the selection. */
  moveTo(row: number, col: number, extend = false): void {
    if (!this.extent.holds(row, col)) return;
    this.head = { row, col };
    if (!extend) this.cursor = this.head;
    this.selected();
  }

  selectArea(top: number, left: number, bottom: number, right: number): void {
    this.cursor = { row: top, col: left };
    this.head = { row: bottom, col: right };
    this.selected();
  }

  /** Steps from the active cell, or from the far corner, over shown cells only. */
  step(rows: number, cols: number, extend = false): void {
    const from = extend ? this.head : this.cursor;
    this.moveTo(this.extent.rowFrom(from.row, rows), this.extent.colFrom(from.col, cols), extend);
  }

  showSheet(name: string): void {
    if (name === this.sheet.name) return;
    if (this.edit && !this.commit()) return;
    const { row, col } = this.spots.get(name) ?? corner;
    this.book.select({ sheet: name, top: row, left: col, bottom: row, right: col });
  }

  /** Begins to edit the active cell, with its own content or with `text` in its place. */
  beginEdit(place: Edit["place"], text?: string): void {
    if (this.edit) {
      this.edit = { ...this.edit, place };
      this.tell("edit");
      return;
    }
    const { row, col } = this.cursor;
    const content = text ?? this.book.content(this.sheet.name, row, col);
    const isOver = text !== undefined;
    this.edit = { sheet: this.sheet.name, row, col, text: content, place, isOver, problem: null };
    this.book.beginEdit();
    this.tell("edit");
  }

  retype(text: string): void {
    if (!this.edit) return;
    this.edit = { ...this.edit, text, problem: null };
    this.tell("edit");
  }

  /** From typing over to moving the caret, and back. */
  setOver(isOver: boolean): void {
    if (this.edit) this.edit = { ...this.edit, isOver };
  }

  /** Stores the text being typed; false, with the problem noted, where the book refuses it. */
  commit(): boolean {
    const { edit } = this;
    if (!edit) return true;
    const before = this.book.content(edit.sheet, edit.row, edit.col);
    this.book.endEdit();
    try {
      if (edit.text !== before) this.book.enter(edit.sheet, edit.row, edit.col, [[edit.text]]);
    } catch (thrown) {
      this.book.beginEdit();
      this.edit = { ...edit, problem: messageOf(thrown) };
      this.tell("edit");
      return false;
    }
    this.edit = null;
    this.tell("edit");
    return true;
  }

  cancel(): void {
    if (!this.edit) return;
    this.edit = null;
    this.book.endEdit();
    this.tell("edit");
  }

  clear(): void {
    this.attempt(() => this.book.clear(this.area));
  }

  undo(): void {
    if (this.commit()) this.attempt(() => this.book.undo());
  }

  redo(): void {
    if (this.commit()) this.attempt(() => this.book.redo());
  }

  /** Does something the book may refuse; the refusal becomes a line on the page. */
  attempt(action: () => void): void {
    try {
      action();
    } catch (thrown) {
      this.messages.add("error", messageOf(thrown));
    }
  }

  private selected(): void {
    this.spots.set(this.sheet.name, this.cursor);
    this.tell("selection");
    this.book.select(this.area);
  }

  /** A selection made elsewhere: by the pane, a tab, or an address. */
  private bookSelected(area: Area): void {
    const own = this.area;
    const isOwn =
      area.sheet === own.sheet &&
      area.top === own.top &&
      area.left === own.left &&
      area.bottom === own.bottom &&
      area.right === own.right;
    if (isOwn) return;
    const changesSheet = area.sheet !== this.sheet.name;
    if (changesSheet) this.readSheet();
    this.cursor = { row: area.top, col: area.left };
    this.head = {
      row: Math.min(area.bottom, this.extent.rows - 1),
      col: Math.min(area.right, this.extent.cols - 1),
    };
    this.spots.set(this.sheet.name, this.cursor);
    if (changesSheet) this.tell("sheet");
    else this.reach(area.top, area.left);
    this.tell("selection");
  }

  private changed(change: BookChange): void {
    if (change.kind === "cells") {
      this.growWithUse();
      this.tell("cells");
      return;
    }
    if (change.kind === "looks") {
      this.tell("cells");
      return;
    }
    if (change.kind === "opened") {
      this.edit = null;
      this.clip = null;
      this.spots.clear();
    }
    this.readSheet();
    this.tell(change.kind === "layout" ? "sheet" : "book");
  }

  /** Lays out more blank rows where the used ones come near the end. */
  private growWithUse(): void {
    const facts = activeSheet(this.book);
    this.sheet = facts;
    const { rows, cols } = this.extent;
    this.extent = new Extent(facts, { row: rows - 1, col: cols - 1 });
    if (this.extent.rows !== rows || this.extent.cols !== cols) this.tell("sheet");
  }

  /** Lays out rows and columns as far as a cell. */
  reach(row: number, col: number): void {
    if (this.extent.holds(row, col)) return;
    this.extent = new Extent(this.sheet, { row, col });
    this.tell("sheet");
  }

  private readSheet(): void {
    this.sheet = activeSheet(this.book);
    const { top: row, left: col } = this.book.selection;
    this.cursor = this.head = { row, col };
    this.extent = new Extent(this.sheet, this.cursor);
  }

  private tell(topic: DeskTopic): void {
    this.version++;
    for (const listener of this.listeners) listener(topic);
  }
}

function activeSheet(book: Book): SheetFacts {
  const sheets = book.sheets();
  const active = sheets.find((sheet) => sheet.name === book.selection.sheet) ?? sheets[0];
  if (!active) throw new RangeError("The workbook has no sheet to show.");
  return active;
}

export function messageOf(thrown: unknown): string {
  return thrown instanceof Error ? thrown.message : String(thrown);
}
