import { columnLetters } from "../cells";
import { type Sheet, WorkbookError } from "../workbook";

/** The part of a sheet that is looked at, from A1, and the first cell far beyond it. */
interface SheetBody {
  readonly rowCount: number;
  readonly colCount: number;
  readonly beyond: { readonly row: number; readonly col: number } | null;
}

/** Places of a used range that are looked at one by one: a job of 100,000 rows has fewer. */
const mostPlaces = 5_000_000;
/** More blank rows or columns than this part a stray cell from the rest. */
const widestGap = { rows: 2_000, cols: 256 };

/**
 * What is looked at of a sheet. A cell typed by accident at the end of a sheet makes its used range
 * thousands of times as large as what it holds; such a cell is told of, and left out. Throws a
 * WorkbookError where the rest is too large all the same.
 */
export function bodyOf(sheet: Sheet): SheetBody {
  const { name, rowCount, colCount } = sheet;
  if (rowCount * colCount <= mostPlaces) return { rowCount, colCount, beyond: null };
  const rows = new Set<number>();
  const cols = new Set<number>();
  sheet.visit((row) => void rows.add(row));
  const rowEnd = endOf(rows, widestGap.rows);
  sheet.visit((row, col) => void (row < rowEnd && cols.add(col)));
  const colEnd = endOf(cols, widestGap.cols);
  if (rowEnd * colEnd > mostPlaces)
    throw new WorkbookError(
      "too-large",
      `The sheet "${name}" is used down to row ${rowEnd} and across to column ${columnLetters(colEnd - 1)}, which is larger than any job: delete the rows and columns that are not needed, and save.`,
    );
  let beyond: SheetBody["beyond"] = null;
  sheet.visit((row, col) => {
    if (beyond === null && (row >= rowEnd || col >= colEnd)) beyond = { row, col };
  });
  return { rowCount: rowEnd, colCount: colEnd, beyond };
}

/** The line after the last before a gap. */
function endOf(lines: ReadonlySet<number>, gap: number): number {
  let end = 0;
  for (const line of [...lines].sort((a, b) => a - b)) {
    if (end > 0 && line - end > gap) break;
    end = line + 1;
  }
  return end;
}
