import type { CellValue, Place } from "../../cells";
import type { StyleSpec } from "../../workbook";
import { followed, type RowMove } from "../text/followed";
import type { ListRule, SheetTab } from "./book";
import { contentOf, readContent } from "./cells/content";
import { shownText } from "./cells/read";
import { typedForm } from "./cells/typed-form";
import { typedText } from "./cells/typed-text";
import type { CellEdit } from "./cells/write";
import type { Origin } from "./change";
import type { LookStep, Step } from "./history";
import { HostRange } from "./host-range";
import type { Mark } from "./marks/marks";
import type { OpenBook } from "./open-book";
import { ruleOf } from "./validations";
import { HostError } from "./wire/errors";

/** A text for a cell. */
export interface TypedCell {
  readonly row: number;
  readonly col: number;
  readonly text: string;
}

/** The cells of the open workbook as the page reads and changes them. */
export abstract class PageSide {
  private entries = 0;

  protected abstract get book(): OpenBook;

  get activeSheet(): string {
    return this.book.active.name;
  }

  activate(sheet: string): void {
    this.book.activate(this.book.tab(sheet));
  }

  get selection(): Place {
    return this.book.selection.ref;
  }

  /** Selects cells by their address, "B2:C9", and shows their sheet. */
  select(sheet: string, address: string): void {
    this.book.select(this.book.range(this.book.tab(sheet), address));
  }

  value(sheet: string, row: number, col: number): CellValue {
    return this.book.model.value(sheet, row, col);
  }

  /** The value as its number format shows it, without the room that one leaves after a number. */
  text(sheet: string, row: number, col: number): string {
    const code = this.book.formats.code(this.book.tab(sheet), row, col);
    const value = this.value(sheet, row, col);
    const text = shownText(value, code, this.book.workbook.date1904);
    return typeof value === "number" ? text.trimEnd() : text;
  }

  /** What stands in the formula bar: entering it again gives the same content. */
  typedText(sheet: string, row: number, col: number): string {
    const tab = this.book.tab(sheet);
    const code = this.book.formats.code(tab, row, col);
    return typedText(contentOf(tab, row, col), code, this.book.workbook.date1904);
  }

  /** The cell's own format; conditional formats come on top of it. */
  styleAt(sheet: string, row: number, col: number): StyleSpec {
    return this.book.formats.at(this.book.tab(sheet), row, col);
  }

  /** The look that conditional formats give a cell; null for none. */
  marksAt(sheet: string, row: number, col: number): Mark | null {
    return this.book.marks.at(this.book.tab(sheet), row, col);
  }

  /** The list of entries a cell may take; null for any entry. */
  validationAt(sheet: string, row: number, col: number): ListRule | null {
    const cell = { top: row, left: col, bottom: row, right: col };
    return ruleOf(new HostRange(this.book.tab(sheet), cell)) ?? null;
  }

  /** The entries that a drop-down list offers for a cell, or null. */
  choices(sheet: string, row: number, col: number): readonly string[] | null {
    const list = this.validationAt(sheet, row, col)?.list;
    if (!list?.inCellDropDown) return null;
    if (list.source.startsWith("=")) return this.listedAt(sheet, list.source.slice(1));
    return list.source.split(",").map((entry) => entry.trim());
  }

  /** The entries of a drop-down list that stand in cells: each once, blanks left out. */
  private listedAt(sheet: string, address: string): readonly string[] | null {
    const tab = this.book.tab(sheet);
    try {
      const range = this.book.rangeAnywhere(tab, address.replaceAll("$", ""));
      const used = range.tab.used(range);
      const entries = new Set<string>();
      if (used !== null)
        range.with(used).forEach((row, col) => {
          const text = this.text(range.tab.name, row, col).trim();
          if (text !== "") entries.add(text);
        });
      return [...entries];
    } catch (thrown) {
      // A list that is worked out by a formula is no list of cells.
      if (thrown instanceof HostError) return null;
      throw thrown;
    }
  }

  /**
   * Takes what the person typed into a cell. Throws a HostError that says why it cannot be taken:
   * a formula that cannot be read, a protected sheet.
   */
  userEnters(sheet: string, row: number, col: number, text: string): void {
    this.userEntersCells(sheet, [{ row, col, text }]);
  }

  /** Takes rows of texts, as pasted, from a first cell on; undone as one. */
  userEntersBlock(
    sheet: string,
    top: number,
    left: number,
    rows: readonly (readonly string[])[],
  ): void {
    const cells = rows.flatMap((line, r) =>
      line.map((text, c) => ({ row: top + r, col: left + c, text })),
    );
    this.userEntersCells(sheet, cells);
  }

  /**
   * Takes texts for cells here and there on a sheet; undone as one. A new row gets the formats of the
   * one above it, by which its texts are read too. Where a row was put into a list, or taken out,
   * what reads cells of the list, wherever it stands, follows them.
   */
  userEntersCells(
    sheet: string,
    cells: readonly TypedCell[],
    newRow?: number,
    move?: RowMove,
  ): void {
    const { book } = this;
    const tab = book.tab(sheet);
    const edits = cells.map(({ row, col, text }): CellEdit => {
      const isText = book.formats.isText(tab, row === newRow ? row - 1 : row, col);
      return { tab, row, col, content: readContent(text, isText, book.workbook.date1904) };
    });
    const follows = move ? this.followed(move, cells) : [];
    const looks = newRow === undefined ? [] : this.continued(tab, newRow);
    try {
      this.write("user", edits);
    } catch (thrown) {
      book.formats.revert(looks, "before");
      throw thrown;
    }
    book.cells.apply(follows);
    if (looks.length > 0) book.history.restyled(looks);
  }

  private followed(move: RowMove, written: readonly TypedCell[]): CellEdit[] {
    const own = new Set(written.map(({ row, col }) => `${row} ${col}`));
    return this.book.tabs.flatMap((tab) =>
      [...tab.sheet.cells()].flatMap(({ row, col, formula, arrayRef }) => {
        const isOpen = formula !== null && arrayRef === null && !tab.isProtected;
        if (!isOpen || (tab.name === move.sheet && own.has(`${row} ${col}`))) return [];
        const text = followed(formula, { sheet: tab.name, row }, move);
        if (!text) return [];
        return [
          { tab, row, col, content: { formula: `=${typedForm(text, this.book.functions)}` } },
        ];
      }),
    );
  }

  private continued(tab: SheetTab, row: number): LookStep[] {
    const right = Math.max(0, tab.sheet.colCount - 1);
    const cells = new HostRange(tab, { top: row, left: 0, bottom: row, right });
    return this.book.formats.copy(tab, cells, (_, col) => ({ row: row - 1, col }));
  }

  /** Sets the width of a column in characters. */
  userWidens(sheet: string, col: number, width: number): void {
    const tab = this.book.tab(sheet);
    tab.widths.set(col, width);
    this.book.touched({ kind: "layout", sheet: tab.name });
  }

  /** Empties cells, as the Delete key does. */
  userClears({ sheet, ...cells }: Place): void {
    const range = new HostRange(this.book.tab(sheet), cells);
    const { tab } = range;
    const used = tab.used(range);
    if (used === null) return;
    const edits: CellEdit[] = [];
    range.with(used).forEach((row, col) => {
      edits.push({ tab, row, col, content: { value: null } });
    });
    this.write("user", edits);
  }

  get canUndo(): boolean {
    return this.book.history.canUndo;
  }

  get canRedo(): boolean {
    return this.book.history.canRedo;
  }

  /** Takes back the last edit of cells: one entry of the person, or all that one run of the pane wrote. */
  undo(): void {
    const { history } = this.book;
    this.revert("undo", history.undo(), "before", () => history.redo());
  }

  redo(): void {
    const { history } = this.book;
    this.revert("redo", history.redo(), "after", () => history.undo());
  }

  private revert(
    origin: Origin,
    step: Step | undefined,
    side: "before" | "after",
    back: () => void,
  ): void {
    if (step === undefined) return;
    // Of a cell changed twice in a step, what came first is set back last.
    const cells = side === "before" ? [...step.cells].reverse() : step.cells;
    try {
      this.write(
        origin,
        cells.map((cell) => ({ ...cell, content: cell[side] })),
      );
      this.book.formats.revert(step.looks, side);
    } catch (thrown) {
      back();
      throw thrown;
    }
  }

  private write(origin: Origin, edits: readonly CellEdit[]): void {
    this.book.cells.origin = origin;
    this.book.cells.group = `user ${++this.entries}`;
    this.book.cells.apply(edits);
  }
}
