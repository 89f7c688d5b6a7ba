import type { ColDef, ICellRendererParams } from "ag-grid-community";
import { columnLetters } from "../../cells";
import type { Desk } from "../desk";
import type { SheetInfo } from "../host";
import { CellEditor } from "./cell-editor";
import { CellView } from "./cell-view";
import type { Line } from "./line";
import { cellPadding } from "./theme";

/** Column of the row numbers. */
const numbersId = "row";

/** Width of a digit in the widest usual letters, px. */
const digit = 8;
/** The space around the text of a cell, with its line, px. */
export const padding = 2 * cellPadding + 1;
const narrowest = 24;
const widest = 480;

/**
 * The columns of a sheet by their letters, after the row numbers; frozen ones stay in view as far
 * as they leave half of the grid's width, px, to the others.
 */
export function columnsOf({ sheet: facts, extent }: Desk, gridWidth: number): ColDef<Line>[] {
  const letters: ColDef<Line>[] = [];
  let pinned = 0;
  for (let col = 0; col < extent.cols; col++) {
    if (facts.hiddenCols.has(col)) continue;
    const width = columnWidth(facts, col);
    if (col < facts.frozenCols) pinned += width;
    letters.push({
      colId: String(col),
      headerName: columnLetters(col),
      width,
      pinned: col < facts.frozenCols && (col === 0 || pinned <= gridWidth / 2) ? "left" : null,
      // Cells draw themselves from the book; the grid need not know their values.
      valueGetter: () => "",
      cellRenderer: CellView,
      cellEditor: CellEditor,
      resizable: true,
      editable: true,
    });
  }
  return [numbers(extent.rows), ...letters];
}

/** The width in characters that shows as so many pixels. */
export function charactersOf(pixels: number): number {
  return Math.max(1, Math.round(((pixels - padding) / digit) * 100) / 100);
}

export function columnWidth(facts: SheetInfo, col: number): number {
  const wanted = Math.round(facts.width(col) * digit) + padding;
  return Math.min(widest, Math.max(narrowest, wanted));
}

function numbers(rows: number): ColDef<Line> {
  return {
    colId: numbersId,
    headerName: "",
    headerComponentParams: { menuIcon: false },
    width: 20 + String(rows).length * 8,
    pinned: "left",
    cellAriaRole: "rowheader",
    valueGetter: ({ data }) => (data ? data.row + 1 : ""),
    cellRenderer: ({ value, eGridCell, data }: ICellRendererParams<Line>) => {
      eGridCell.dataset.header = String(data?.row);
      eGridCell.classList.add("desk-row-number");
      return String(value);
    },
  };
}
