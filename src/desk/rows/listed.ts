import { headRow, type RowsAt } from "./typed-cells";

/**
 * The names that another sheet lists in its first column under the heading of a column, such as the
 * boxes of a job; none where no sheet does.
 */
export function listedFor(at: RowsAt, row: number, col: number): readonly string[] {
  const { book, sheet } = at;
  const heading = book.value(sheet.name, headRow(at, row), col);
  for (const other of book.shownSheets) {
    const head = Math.max(0, other.frozenRows - 1);
    if (other.name === sheet.name || book.value(other.name, head, 0) !== heading) continue;
    const names = new Set<string>();
    for (let each = head + 1; each < other.rowCount; each++) {
      const name = book.value(other.name, each, 0);
      if (typeof name === "string") names.add(name);
    }
    if (names.size > 0) return [...names];
  }
  return [];
}
