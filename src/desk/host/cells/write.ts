import {
  addressText,
  type CellValue,
  grouped,
  isIdentical,
  type Place,
  parseRectangle,
  type Rectangle,
} from "../../../cells";
import { type Change, FormulaSyntaxError } from "../../../sheet";
import type { Book, SheetTab } from "../book";
import type { Origin } from "../change";
import type { Formats } from "../formats";
import type { CellStep, History } from "../history";
import { HostRange } from "../host-range";
import { invalidArgument } from "../wire/errors";
import { type Content, contentOf, sameContent } from "./content";
import { valueType, wireValue } from "./read";
import { rectangles } from "./rectangles";

/** New content for one cell. */
export interface CellEdit {
  readonly tab: SheetTab;
  readonly row: number;
  readonly col: number;
  readonly content: Content;
}

/** Writes cells: through the model, so that dependents follow, into the undo steps and to listeners. */
export class CellWriter {
  /** Edits of the same group are undone together. */
  group = "";
  origin: Origin = "user";

  constructor(
    private readonly book: Book,
    private readonly history: History,
    private readonly formats: Formats,
  ) {}

  /**
   * Writes the cells and recalculates once. Cells under a merge take nothing. A refusal leaves all
   * cells as they were.
   */
  apply(edits: readonly CellEdit[]): void {
    for (const { tab, row, col } of edits)
      if (tab.isProtected && this.formats.at(tab, row, col).unlocked !== true) tab.checkWritable();
    const wanted = lastOfEach(edits).filter(isOutsideMerges());
    if (wanted.length === 0) return;
    const before = wanted.map(({ tab, row, col }) => contentOf(tab, row, col));
    const shown = wanted.length === 1 ? this.shownAt(wanted[0] as CellEdit) : undefined;
    const values = this.write(wanted, before);
    const steps = wanted.map(({ tab, row, col, content }, i): CellStep => {
      return { tab, row, col, before: before[i] as Content, after: content };
    });
    if (this.origin === "user" || this.origin === "pane")
      this.history.record(
        this.group,
        steps.filter((step) => !sameContent(step.before, step.after)),
      );
    this.format(wanted);
    this.tell(wanted, shown, values);
  }

  private write(edits: readonly CellEdit[], before: readonly Content[]): readonly Change[] {
    let done = 0;
    try {
      return this.book.model.together(() => {
        for (const edit of edits) {
          this.put(edit, edit.content);
          done++;
        }
      });
    } catch (thrown) {
      this.book.model.together(() => {
        for (let i = 0; i < done; i++) this.put(edits[i] as CellEdit, before[i] as Content);
      });
      if (thrown instanceof FormulaSyntaxError) throw invalidArgument(thrown.message);
      throw thrown;
    }
  }

  private put({ tab, row, col }: CellEdit, content: Content): void {
    const { model } = this.book;
    if ("formula" in content) model.enter(tab.name, row, col, content.formula);
    else model.set(tab.name, row, col, content.value);
  }

  /** Cells without a number format take the one that the way of typing suggests. */
  private format(edits: readonly CellEdit[]): void {
    for (const { tab, row, col, content } of edits) {
      if (!("value" in content) || content.format === undefined) continue;
      if (this.formats.code(tab, row, col) !== "General") continue;
      const cell = new HostRange(tab, { top: row, left: col, bottom: row, right: col });
      this.formats.change(cell, { numberFormat: content.format });
    }
  }

  private shownAt({ tab, row, col }: CellEdit) {
    return this.book.model.value(tab.name, row, col);
  }

  private tell(
    edits: readonly CellEdit[],
    before: CellValue | undefined,
    values: readonly Change[],
  ): void {
    const edited: Place[] = [];
    for (const [tab, cells] of grouped(edits, (edit) => edit.tab)) {
      const rects = rectangles(cells);
      edited.push(...rects.map((rect) => ({ sheet: tab.name, ...rect })));
      const address = rects.map(addressText).join(",");
      const isByPane = this.origin === "pane";
      const only = edits[0] as CellEdit;
      if (before === undefined) this.book.events.changed({ sheet: tab.id, address, isByPane });
      else {
        const after = this.shownAt(only);
        const detail = {
          valueBefore: wireValue(before),
          valueAfter: wireValue(after),
          valueTypeBefore: valueType(before),
          valueTypeAfter: valueType(after),
        };
        this.book.events.changed({ sheet: tab.id, address, isByPane, detail });
      }
    }
    tellCalculated(this.book, values);
    this.book.touched({ kind: "cells", origin: this.origin, edited, values });
  }
}

/** Tells the client of all cells whose values are others now. */
export function tellCalculated({ tabs, events }: Book, values: readonly Change[]): void {
  for (const { id, name } of tabs) {
    // The message of an error, which a file does not hold, is none that the client is told.
    const isOther = ({ before, value }: Change) => !isIdentical(before, value);
    const own = values.filter((value) => value.sheet === name && isOther(value));
    if (own.length > 0) events.calculated(id, rectangles(own).map(addressText).join(","));
  }
}

/** Tells whether a cell can hold something of its own: under a merge only the first cell can. */
function isOutsideMerges(): (edit: CellEdit) => boolean {
  const known = new Map<SheetTab, Rectangle[]>();
  return ({ tab, row, col }) => {
    let merges = known.get(tab);
    if (merges === undefined) {
      merges = tab.sheet.merges.map(parseRectangle);
      known.set(tab, merges);
    }
    return !merges.some(
      ({ top, left, bottom, right }) =>
        row >= top &&
        row <= bottom &&
        col >= left &&
        col <= right &&
        !(row === top && col === left),
    );
  };
}

/** Where a cell is written several times the last content counts. */
function lastOfEach(edits: readonly CellEdit[]): CellEdit[] {
  const byCell = new Map(edits.map((edit) => [`${edit.row} ${edit.col} ${edit.tab.id}`, edit]));
  return byCell.size === edits.length ? [...edits] : [...byCell.values()];
}
