import { cellName } from "../../cells";

/** The last row and column that are read of a sheet, from 0; -1 where it is empty. */
interface Extent {
  readonly bottom: number;
  readonly right: number;
  /** Where the used range ends, where that is too far to be read; else null. */
  readonly tooFar: string | null;
}

/** Places of a used range that are read; one stray cell far off would make it take hours. */
const mostPlaces = 5_000_000;
/** What is read of a sheet that is used further than that. */
export const farRows = 1_000;
export const farCols = 64;

export function extentOf(used: Excel.Range): Extent {
  if (used.isNullObject) return { bottom: -1, right: -1, tooFar: null };
  const bottom = used.rowIndex + used.rowCount - 1;
  const right = used.columnIndex + used.columnCount - 1;
  if ((bottom + 1) * (right + 1) <= mostPlaces) return { bottom, right, tooFar: null };
  return {
    bottom: Math.min(bottom, farRows - 1),
    right: Math.min(right, farCols - 1),
    tooFar: cellName(bottom, right),
  };
}
