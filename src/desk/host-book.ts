import { type Place, rectangleText } from "../cells";
import type { StyleSpec } from "../workbook";
import type { Book, BookChange, CellMark, CellText, SheetFacts } from "./book";
import type { Change, Mark, SheetInfo, WorkbookHost } from "./host";
import { type CellLook, plainLook } from "./look/cell-look";

/** The workbook host as the grid and the bars use it. */
export class HostBook implements Book {
  private readonly looks = new WeakMap<StyleSpec, CellLook>();

  constructor(private readonly host: WorkbookHost) {}

  get fileName(): string {
    return this.host.fileName;
  }

  get isDirty(): boolean {
    return this.host.isDirty;
  }

  get canUndo(): boolean {
    return this.host.canUndo;
  }

  get canRedo(): boolean {
    return this.host.canRedo;
  }

  get selection(): Place {
    return this.host.selection;
  }

  sheets(): readonly SheetFacts[] {
    return this.host.sheets
      .filter(({ visibility }) => visibility === "visible")
      .map((info) => this.factsOf(info));
  }

  value(sheet: string, row: number, col: number) {
    return this.host.value(sheet, row, col);
  }

  shown(sheet: string, row: number, col: number): string {
    const text = this.host.text(sheet, row, col);
    // The room that a number format leaves after a number is none of the page's.
    return typeof this.value(sheet, row, col) === "number" ? text.trimEnd() : text;
  }

  content(sheet: string, row: number, col: number): string {
    return this.host.typedText(sheet, row, col);
  }

  look(sheet: string, row: number, col: number): CellLook {
    const style = this.host.styleAt(sheet, row, col);
    let look = this.looks.get(style);
    if (look === undefined) {
      look = lookOf(style);
      this.looks.set(style, look);
    }
    return look;
  }

  mark(sheet: string, row: number, col: number): CellMark | null {
    const mark = this.host.marksAt(sheet, row, col);
    return mark && markOf(mark);
  }

  choices(sheet: string, row: number, col: number): readonly string[] | null {
    const list = this.host.validationAt(sheet, row, col)?.list;
    if (!list?.inCellDropDown) return null;
    if (list.source.startsWith("=")) return this.host.listedAt(sheet, list.source.slice(1));
    return list.source.split(",").map((entry) => entry.trim());
  }

  enter(sheet: string, cells: readonly CellText[], newRow?: number, isInserted?: boolean): void {
    this.host.userEntersCells(sheet, cells, newRow, isInserted);
  }

  widen(sheet: string, col: number, width: number): void {
    this.host.userWidens(sheet, col, width);
  }

  clear(area: Place): void {
    this.host.userClears(area);
  }

  undo(): void {
    this.host.undo();
  }

  redo(): void {
    this.host.redo();
  }

  select(area: Place): void {
    this.host.select(area.sheet, rectangleText(area));
  }

  beginEdit(): void {
    this.host.beginEdit();
  }

  endEdit(): void {
    this.host.endEdit();
  }

  save(): Uint8Array {
    return this.host.save();
  }

  onChange(listener: (change: BookChange) => void): () => void {
    return this.host.onChange((change) => {
      const told = bookChange(change);
      if (told) listener(told);
    });
  }

  onSelect(listener: (area: Place) => void): () => void {
    return this.host.onSelect(listener);
  }

  private factsOf(info: SheetInfo): SheetFacts {
    const { host } = this;
    const stored = host.workbook.sheet(info.name);
    return {
      name: info.name,
      rowCount: info.rowCount,
      colCount: info.colCount,
      frozenRows: info.frozenRows,
      frozenCols: info.frozenCols,
      isProtected: info.isProtected,
      hiddenRows: stored?.hiddenRows ?? none,
      hiddenCols: stored?.hiddenCols ?? none,
      hasMerges: (stored?.merges.length ?? 0) > 0,
      width: (col) => host.columnWidth(info.name, col),
    };
  }
}

const none: ReadonlySet<number> = new Set();

function lookOf({ bold, italic, fill, color, align, wrap, numberFormat }: StyleSpec): CellLook {
  return {
    bold: bold ?? plainLook.bold,
    italic: italic ?? plainLook.italic,
    fill: colour(fill),
    color: colour(color),
    align: align ?? plainLook.align,
    wrap: wrap ?? plainLook.wrap,
    isGeneral: (numberFormat ?? "General") === "General",
  };
}

function markOf({ fill, color, bold }: Mark): CellMark {
  return { fill: colour(fill), color: colour(color), bold: bold ?? false };
}

/** "#rrggbb" from digits with or without the sign before them. */
function colour(digits: string | undefined): string | null {
  return digits === undefined ? null : `#${digits.replace("#", "").toLowerCase()}`;
}

function bookChange(change: Change): BookChange | null {
  switch (change.kind) {
    case "cells":
      return { kind: "cells", at: isReverted(change.origin) ? change.edited[0] : undefined };
    case "formats":
    case "marks":
    case "names":
      return { kind: "looks" };
    case "layout":
    case "sheets":
    case "opened":
      return { kind: change.kind };
  }
}

const isReverted = (origin: string) => origin === "undo" || origin === "redo";
