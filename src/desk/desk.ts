import { cellName, kept, maxCols, type Place, rectangleText, toldOf } from "../cells";
import type { PageMark } from "../pane";
import type { Clip } from "./clip";
import type { Edit } from "./edit";
import { Extent } from "./extent";
import type { Change, SheetInfo, WorkbookHost } from "./host";
import { HostError } from "./host/wire/errors";
import { Messages } from "./messages";
import { formulasFor } from "./rows/grow";
import { repeated } from "./rows/repeat";
import { headRow, nextAsAbove, nextTyped, typedColumns } from "./rows/typed-cells";

/** What a listener is told: which part of the page is another than before. */
export type DeskTopic = "book" | "sheet" | "cells" | "selection" | "edit" | "choices" | "messages";

interface Spot {
  readonly row: number;
  readonly col: number;
}

const corner: Spot = { row: 0, col: 0 };

/** The rows of a sheet that alone are shown. */
interface Filter {
  readonly sheet: string;
  /** Row of the headings, and the column of which the cells are wanted as they are shown. */
  readonly head: number;
  readonly col: number;
  readonly wanted: string;
  readonly hidden: ReadonlySet<number>;
  /** The message that says so. */
  readonly told: number;
}

/** What the person at the desk is doing: the open book, the cell they are at, the text they type. */
export class Desk {
  readonly messages = new Messages(() => this.tell("messages"));
  sheet: SheetInfo;
  extent: Extent;
  /** The active cell, and the opposite corner of what is selected. */
  cursor: Spot = corner;
  head: Spot = corner;
  edit: Edit | null = null;
  /** Counts what was told, as the snapshot of a store. */
  version = 0;
  /** Column in which a run of Tab began; Enter leads back to it. */
  private runFrom: number | null = null;
  /** The row that was begun like the one above it. */
  private likeRow: { readonly sheet: string; readonly row: number } | null = null;
  /** Rows out of view because another value stands in a column; null while all are shown. */
  filter: Filter | null = null;
  /** Counts the workbooks that were opened, for what belongs to one of them. */
  opened = 0;
  private marks: MarksBySheet = new Map();
  /** What was found last where something had just been typed. */
  latest: PageMark | null = null;
  private entered: { readonly sheet: string; readonly row: number } | null = null;
  /** What was last copied here. */
  clip: Clip | null = null;
  private readonly listeners = new Set<(topic: DeskTopic) => void>();
  private readonly spots = new Map<string, Spot>();

  constructor(readonly book: WorkbookHost) {
    this.sheet = activeSheet(book);
    this.extent = new Extent(this.sheet, corner);
    book.onChange((change) => this.changed(change));
    book.onSelect((area) => this.bookSelected(area));
  }

  subscribe = (listener: (topic: DeskTopic) => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  get area(): Place {
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
    this.runFrom = null;
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
    this.book.select(name, cellName(row, col));
  }

  /** Shows what the check found at its cells; what is new in the row typed into last is told. */
  setMarks(marks: readonly PageMark[]): void {
    const { entered, marks: before } = this;
    this.marks = marksBySheet(marks);
    this.latest =
      marks.find(
        ({ sheet, row, col, words }) =>
          entered?.sheet === sheet &&
          entered.row === row &&
          before.get(sheet)?.get(numberOf({ row, col }))?.words !== words,
      ) ?? null;
    this.tell("cells");
  }

  /** What the check found at a cell of the sheet in view. */
  markAt(row: number, col: number): PageMark | null {
    return this.marks.get(this.sheet.name)?.get(numberOf({ row, col })) ?? null;
  }

  /** Begins to edit the active cell, with its own content or with `text` in its place. */
  beginEdit(place: Edit["place"], text?: string): void {
    if (this.edit) {
      this.edit = { ...this.edit, place };
      this.tell("edit");
      return;
    }
    const { row, col } = this.cursor;
    const content = text ?? this.book.typedText(this.sheet.name, row, col);
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

  /**
   * Goes on to the next typed cell of the list, as Tab does, or down a row, as Enter does: after a
   * run of Tab to the column where it began. With −1 the other way.
   */
  goOn(key: "Tab" | "Enter", sign: 1 | -1): void {
    const from = this.cursor;
    const start = this.runFrom;
    if (key === "Tab") {
      const { likeRow, sheet } = this;
      const isLike = sign > 0 && likeRow?.sheet === sheet.name && likeRow.row === from.row;
      const next = (isLike && nextAsAbove(this, from)) || nextTyped(this, from, sign);
      this.moveTo(next.row, next.col);
      this.runFrom = start === null || next.row !== from.row ? next.col : start;
      if (start === null && next.row === from.row) this.runFrom = from.col;
    } else if (start !== null && sign > 0) {
      this.moveTo(this.extent.rowFrom(from.row, 1), start);
      this.runFrom = start;
    } else this.step(sign, 0);
  }

  /**
   * Stores the text being typed; false, with the problem noted, where the book refuses it. A formula
   * that cannot be read is kept as text and told of, so that what is typed next goes to its own cell.
   */
  commit(): boolean {
    const { edit } = this;
    if (!edit) return true;
    const before = this.book.typedText(edit.sheet, edit.row, edit.col);
    this.book.endEdit();
    try {
      if (edit.text !== before) this.enter(edit);
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

  /** Enters a text, and with the first of a new row the formulas of the row above. */
  private enter({ sheet, row, col, text }: Pick<Edit, "sheet" | "row" | "col" | "text">): void {
    this.entered = { sheet, row };
    this.latest = null;
    const further = text === "" ? [] : formulasFor(this, row).filter((cell) => cell.col !== col);
    const enter = (own: string) =>
      this.book.userEntersCells(
        sheet,
        [{ row, col, text: own }, ...further],
        further.length > 0 ? row : undefined,
      );
    try {
      enter(text);
    } catch (thrown) {
      if (!text.startsWith("=") || this.sheet.isProtected) throw thrown;
      enter(`'${text}`);
      this.messages.add(
        "error",
        `${cellName(row, col)}: kept as text, since it cannot be read as a formula. ${messageOf(thrown)}`,
      );
    }
  }

  cancel(): void {
    if (!this.edit) return;
    this.edit = null;
    this.book.endEdit();
    this.tell("edit");
  }

  /** Enters a text into the active cell; nothing where there is none. */
  enterHere(text: string): void {
    const { row, col } = this.cursor;
    if (text !== "") this.attempt(() => this.enter({ sheet: this.sheet.name, row, col, text }));
  }

  /**
   * Goes to the next row of the list, or stays in a blank one, repeats there what rows share, and
   * begins at the first cell left to type. Tab then leads over the cells that were typed in the
   * row above, as long as there are any.
   */
  nextLike(): void {
    const isBlankAt = (row: number) => (col: number) =>
      this.book.value(this.sheet.name, row, col) === null;
    const at = this.cursor.row;
    // Enter may have gone to the next row already.
    const isBegun = !typedColumns(this, at).every(isBlankAt(at));
    const next = isBegun ? this.extent.rowFrom(at, 1) : at;
    const cells = repeated(this, next);
    const further = formulasFor(this, next);
    const newRow = further.length > 0 ? next : undefined;
    if (cells.length > 0)
      this.attempt(() =>
        this.book.userEntersCells(this.sheet.name, [...cells, ...further], newRow),
      );
    const typed = typedColumns(this, next);
    const first = typed[0] ?? this.cursor.col;
    this.moveTo(next, typed.find(isBlankAt(next)) ?? first);
    this.likeRow = { sheet: this.sheet.name, row: next };
    this.runFrom = first;
  }

  /** Opens the drop-down list of the active cell; false where it has none. */
  offerChoices(): boolean {
    const { row, col } = this.cursor;
    if (!this.book.choices(this.sheet.name, row, col)) return false;
    this.beginEdit("cell");
    this.tell("choices");
    return true;
  }

  /** Shows of the list at the active cell only the rows that show the same in its column. */
  filterHere(): void {
    const { row, col } = this.cursor;
    const head = headRow(this, row);
    this.showAllRows();
    const wanted = this.book.text(this.sheet.name, row, col);
    const told = this.messages.add("info", `Only rows with "${wanted}" in this column are shown.`);
    this.filter = { sheet: this.sheet.name, head, col, wanted, told, hidden: new Set() };
    this.filterAgain();
  }

  /** Looks anew for the rows of the filter, once rows have moved. */
  filterAgain(): void {
    const { filter, book } = this;
    if (filter?.sheet !== this.sheet.name) return;
    const { sheet, head, col, wanted } = filter;
    const hidden = new Set<number>();
    for (let each = head + 1; each < this.extent.usedRows; each++)
      if (book.text(sheet, each, col) !== wanted) hidden.add(each);
    this.filter = { ...filter, hidden };
    this.layOut();
    const { cursor, extent } = this;
    if (hidden.has(cursor.row)) this.moveTo(extent.rowFrom(head, 1), cursor.col);
  }

  showAllRows(): void {
    if (!this.filter) return;
    this.messages.dismiss(this.filter.told);
    this.filter = null;
    this.layOut();
  }

  private layOut(): void {
    const { cursor } = this;
    this.sheet = this.readFacts();
    this.extent = new Extent(this.sheet, { row: this.extent.rows - 1, col: this.extent.cols - 1 });
    this.tell("sheet");
    this.moveTo(cursor.row, cursor.col);
  }

  /** The active sheet, with the rows that a filter leaves out. */
  private readFacts(): SheetInfo {
    const facts = activeSheet(this.book);
    if (this.filter?.sheet !== facts.name) return facts;
    const hiddenRows = new Set([...facts.hiddenRows, ...this.filter.hidden]);
    return { ...facts, hiddenRows };
  }

  /** Shows the sheet so many tabs further on. */
  turnSheet(by: 1 | -1): void {
    const names = this.book.shownSheets.map(({ name }) => name);
    const next = names[names.indexOf(this.sheet.name) + by];
    if (next !== undefined) this.showSheet(next);
  }

  clear(): void {
    this.attempt(() => this.book.userClears(this.area));
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
    this.book.select(this.sheet.name, rectangleText(this.area));
  }

  /** A selection made elsewhere: by the pane, a tab, or an address. */
  private bookSelected(area: Place): void {
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

  private changed({ kind }: Change): void {
    if (kind === "cells") {
      this.growWithUse();
      this.tell("cells");
      return;
    }
    if (kind === "formats" || kind === "marks" || kind === "names") {
      this.tell("cells");
      return;
    }
    if (kind === "opened") {
      this.edit = null;
      this.clip = null;
      this.spots.clear();
      this.filter = null;
      this.marks = new Map();
      this.latest = null;
      this.opened++;
    }
    this.readSheet();
    this.tell(kind === "layout" ? "sheet" : "book");
  }

  /** Lays out more blank rows where the used ones come near the end. */
  private growWithUse(): void {
    const facts = this.readFacts();
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
    this.sheet = this.readFacts();
    const { top: row, left: col } = this.book.selection;
    this.cursor = this.head = { row, col };
    this.extent = new Extent(this.sheet, this.cursor);
  }

  private tell(topic: DeskTopic): void {
    this.version++;
    for (const listener of this.listeners) listener(topic);
  }
}

function activeSheet(book: WorkbookHost): SheetInfo {
  const sheets = book.shownSheets;
  const active = sheets.find((sheet) => sheet.name === book.selection.sheet) ?? sheets[0];
  if (!active) throw new RangeError("The workbook has no sheet to show.");
  return active;
}

/** By sheet, and there by the number of the cell. */
type MarksBySheet = ReadonlyMap<string, ReadonlyMap<number, PageMark>>;

function marksBySheet(marks: readonly PageMark[]): MarksBySheet {
  const bySheet = new Map<string, Map<number, PageMark>>();
  for (const mark of marks) kept(bySheet, mark.sheet, () => new Map()).set(numberOf(mark), mark);
  return bySheet;
}

const numberOf = ({ row, col }: Spot) => row * maxCols + col;

/** What to tell of an error; a RangeError is the model's or the workbook's refusal. */
export function messageOf(thrown: unknown): string {
  return thrown instanceof HostError || thrown instanceof RangeError
    ? thrown.message
    : toldOf(thrown);
}
