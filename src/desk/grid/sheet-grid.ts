import { createGrid, type GridApi } from "ag-grid-community";
import type { Desk, DeskTopic } from "../desk";
import type { ThemeName } from "../look/theme-name";
import { type GridContext, showSelection } from "./cell-view";
import { charactersOf, columnsOf } from "./columns";
import { type Line, Lines } from "./line";
import { lineHeight } from "./line-height";
import { registerModules } from "./modules";
import { gridTheme, rowHeight } from "./theme";

/** The active sheet as a grid that a screen reader reads too. */
export class SheetGrid {
  private readonly api: GridApi<Line>;
  private lines: Lines;
  /** The grid's own editing is being started or ended; its events then mean nothing new. */
  private isEditing = false;
  /** What is to be drawn once the changes in hand are all made. */
  private toDraw: "redraw" | "rebuild" | null = null;
  /** The sheet that was drawn last; another one is shown from its beginning. */
  private drawn = "";
  private readonly forget: () => void;

  constructor(
    private readonly element: HTMLElement,
    private readonly desk: Desk,
    theme: () => ThemeName,
  ) {
    registerModules();
    const context: GridContext = { desk, theme };
    this.lines = new Lines(desk.sheet, desk.extent);
    this.api = createGrid<Line>(element, {
      context,
      theme: gridTheme,
      columnDefs: columnsOf(desk, element.clientWidth),
      defaultColDef: { resizable: false, sortable: false, suppressMovable: true },
      rowData: [...this.lines.body],
      pinnedTopRowData: [...this.lines.frozen],
      getRowHeight: ({ data, node }) => lineHeight(desk, data, node.rowPinned === "top"),
      suppressHeaderFocus: true,
      suppressMovableColumns: true,
      suppressScrollOnNewData: true,
      suppressClickEdit: true,
      animateRows: false,
      ensureDomOrder: true,
      rowBuffer: 12,
      onColumnResized: ({ finished, column, source }) => {
        if (!finished || !column || source !== "uiColumnResized") return;
        const width = charactersOf(column.getActualWidth());
        desk.attempt(() => desk.book.userWidens(desk.sheet.name, Number(column.getColId()), width));
      },
      focusGridInnerElement: () => {
        this.focus();
        return true;
      },
    });
    this.api.setGridAriaProperty("label", labelOf(desk));
    this.forget = desk.subscribe((topic) => this.told(topic));
    this.reveal();
  }

  destroy(): void {
    this.forget();
    this.api.destroy();
  }

  /** Draws every cell in view again. */
  redraw(): void {
    this.api.refreshCells({ force: true, suppressFlash: true });
  }

  /** Puts the keyboard on the active cell. */
  focus(): void {
    this.reveal();
    const { row, col } = this.desk.cursor;
    const place = this.lines.placeOf(row);
    if (!place) return;
    this.api.setFocusedCell(place.index, String(col), place.pinned);
  }

  /** Rows that fit between the frozen ones and the foot of the grid, for stepping by screens. */
  get page(): number {
    const { frozen } = this.lines;
    const first = frozen[0];
    const head = first ? lineHeight(this.desk, first, true) + (frozen.length - 1) * rowHeight : 0;
    return Math.max(1, Math.floor((this.element.clientHeight - rowHeight - head) / rowHeight) - 1);
  }

  private told(topic: DeskTopic): void {
    if (topic === "book" || topic === "sheet") this.drawLater("rebuild");
    else if (topic === "cells") this.drawLater("redraw");
    else if (topic === "selection" || topic === "edit") {
      this.drawNow();
      if (topic === "selection") this.showSelected();
      else this.showEdit();
    }
  }

  /** Draws once after a series of changes: the pane sets hundreds of looks in one request. */
  private drawLater(what: "redraw" | "rebuild"): void {
    const isAsked = this.toDraw !== null;
    if (this.toDraw !== "rebuild") this.toDraw = what;
    if (!isAsked) queueMicrotask(() => this.drawNow());
  }

  private drawNow(): void {
    const { toDraw } = this;
    this.toDraw = null;
    if (toDraw === null || this.api.isDestroyed()) return;
    if (toDraw === "rebuild") this.rebuild();
    else this.redraw();
  }

  private rebuild(): void {
    const { desk, api } = this;
    this.endEditor();
    const hadFocus = this.element.contains(document.activeElement);
    this.lines = new Lines(desk.sheet, desk.extent);
    api.updateGridOptions({
      columnDefs: columnsOf(desk, this.element.clientWidth),
      rowData: [...this.lines.body],
      pinnedTopRowData: [...this.lines.frozen],
    });
    api.setGridAriaProperty("label", labelOf(desk));
    this.redraw();
    if (this.drawn !== desk.sheet.name) this.toBeginning();
    this.reveal();
    if (hadFocus) this.focus();
  }

  private toBeginning(): void {
    this.drawn = this.desk.sheet.name;
    if (this.api.getDisplayedRowAtIndex(0)) this.api.ensureIndexVisible(0, "top");
    const first = this.api.getAllDisplayedColumns().find((column) => !column.isPinned());
    if (first) this.api.ensureColumnVisible(first, "start");
  }

  private showSelected(): void {
    const { desk } = this;
    for (const cell of this.element.querySelectorAll<HTMLElement>("[data-row]"))
      showSelection(cell, desk, Number(cell.dataset.row), Number(cell.dataset.col));
    if (this.element.contains(document.activeElement)) this.focus();
    else this.reveal();
  }

  /** Scrolls the far corner of the selection into view. */
  private reveal(): void {
    const { row, col } = this.desk.head;
    const place = this.lines.placeOf(row);
    // The next row and column first: the scroll bars hide the edge of the last ones in view.
    if (place && place.pinned === null)
      for (const near of [place.index + 1, place.index])
        if (this.api.getDisplayedRowAtIndex(near)) this.api.ensureIndexVisible(near);
    for (const near of [col + 1, col])
      if (this.api.getColumn(String(near))) this.api.ensureColumnVisible(String(near));
  }

  private showEdit(): void {
    const { edit } = this.desk;
    const isHere = edit?.place === "cell" && edit.sheet === this.desk.sheet.name;
    if (!isHere) {
      this.endEditor();
      return;
    }
    if (this.isEditing) return;
    const place = this.lines.placeOf(edit.row);
    if (!place) return;
    this.isEditing = true;
    if (place.pinned === null) this.api.ensureIndexVisible(place.index);
    this.api.ensureColumnVisible(String(edit.col));
    this.api.startEditingCell({
      rowIndex: place.index,
      colKey: String(edit.col),
      ...(place.pinned ? { rowPinned: place.pinned } : {}),
    });
  }

  private endEditor(): void {
    if (!this.isEditing) return;
    this.isEditing = false;
    this.api.stopEditing(true);
  }
}

function labelOf({ sheet }: Desk): string {
  return `Sheet ${sheet.name}`;
}
