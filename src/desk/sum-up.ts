import { format } from "numfmt";
import type { Desk } from "./desk";

/** Cells beyond which a selection is not summed up: it is done at every step of the selection. */
const most = 200_000;

/** Count, mean and sum of the selected numbers; empty for a single cell. */
export function sumUp({ area, book, extent }: Desk): string {
  const { top, left, sheet } = area;
  const bottom = Math.min(area.bottom, extent.lastUsed.row);
  const right = Math.min(area.right, extent.lastUsed.col);
  const cells = (bottom - top + 1) * (right - left + 1);
  if (cells <= 1 || cells > most || bottom < top || right < left) return "";
  let filled = 0;
  let numbers = 0;
  let sum = 0;
  for (let row = top; row <= bottom; row++)
    for (let col = left; col <= right; col++) {
      if (!extent.isShown(row, col)) continue;
      const value = book.value(sheet, row, col);
      if (value !== null) filled++;
      if (typeof value !== "number") continue;
      numbers++;
      sum += value;
    }
  if (numbers < 2) return filled > 1 ? `Filled cells ${filled}` : "";
  const shown = (value: number) => format("General", Number(value.toPrecision(7)));
  return `Filled cells ${filled} · Mean ${shown(sum / numbers)} · Sum ${shown(sum)}`;
}
