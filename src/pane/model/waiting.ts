import type { CellValue } from "../../cells";
import type { JobFile } from "../../job";

/** Whether a formula of the workbook has not been answered yet. */
export function isWaiting({ sheets }: JobFile): boolean {
  return sheets.some((grid) => {
    for (let row = 0; row < grid.rowCount; row++)
      for (let col = 0; col < grid.colCount; col++)
        if (isUnanswered(grid.value(row, col))) return true;
    return false;
  });
}

function isUnanswered(value: CellValue): boolean {
  if (typeof value !== "object" || value === null) return false;
  return value.error === "#BUSY!" || value.error === "#GETTING_DATA";
}
