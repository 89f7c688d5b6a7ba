import type { Spot } from "../../cells";
import { type Cells, Kind } from "../cells/cells";

/** A label and what stands beside it: "Box factor | 1.08", or in one cell "Start: 10/02/2025". */
export interface Label {
  readonly text: string;
  readonly value: number | string;
  readonly place: Spot;
  /** Where the value stands in the cells as they run. */
  readonly row: number;
  readonly col: number;
}

/** Labels outside the tables of a sheet. */
export function labelsOf(cells: Cells, isTable: (row: number) => boolean): Label[] {
  const labels: Label[] = [];
  for (let row = 0; row < cells.rows && labels.length < 2000; row++) {
    if (isTable(row)) continue;
    for (let col = 0; col < cells.cols; col++) {
      if (cells.kind(row, col) !== Kind.text) continue;
      const text = cells.text(row, col).trim();
      const parted = /^([^:=]{2,40})\s*[:=]\s*(\S.*)$/.exec(text);
      if (parted) {
        labels.push({
          text: parted[1]!.trim(),
          value: parted[2]!.trim(),
          place: cells.place(row, col),
          row,
          col,
        });
        continue;
      }
      const at = valueBeside(cells, row, col);
      if (at === undefined || text.length > 60) continue;
      const number = cells.number(row, at);
      const value = Number.isNaN(number) ? cells.text(row, at).trim() : number;
      labels.push({
        text: text.replace(/[:=]\s*$/, ""),
        value,
        place: cells.place(row, at),
        row,
        col: at,
      });
    }
  }
  return labels;
}

function valueBeside(cells: Cells, row: number, col: number): number | undefined {
  for (let at = col + 1; at <= Math.min(col + 3, cells.cols - 1); at++) {
    const kind = cells.kind(row, at);
    if (kind !== Kind.blank)
      return kind === Kind.number || kind === Kind.textNumber || kind === Kind.text
        ? at
        : undefined;
  }
  return undefined;
}
