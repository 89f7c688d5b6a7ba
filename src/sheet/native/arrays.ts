import { type CellError, type CellValue, errors, isCellError } from "../../cells";
import type { Value } from "../area";
import { compare, toBoolean, toNumber } from "../coerce";
import { Matrix } from "../values";
import type { Natives } from "./natives";
import { matrixOf, oneOf } from "./read";

/** Functions whose result is an array. */
export function addArrays(to: Natives): void {
  to.addSpreading("TRANSPOSE", "a", (array) =>
    over(array, (m) => Matrix.of(m.cols, m.rows, (r, c) => m.at(c, r))),
  );
  to.addSpreading("SEQUENCE", "n n? n? n?", (rows, cols, start, step) => {
    const height = Math.trunc(rows);
    const width = Math.trunc(cols ?? 1);
    if (height < 1 || width < 1) return errors.calc;
    if (height * width > 1_048_576) return errors.num;
    return Matrix.of(height, width, (r, c) => (start ?? 1) + (r * width + c) * (step ?? 1));
  });
  to.addSpreading("FILTER", "a a r?", filter);
  to.addSpreading("SORT", "a r? r? r?", sort);
  to.addSpreading("SORTBY", "a ar+", sortBy);
  to.addSpreading("UNIQUE", "a r? r?", unique);
}

function over(array: Value, apply: (matrix: Matrix) => Value): Value {
  const matrix = matrixOf(array);
  return isCellError(matrix) ? matrix : apply(matrix);
}

function rowsOf(matrix: Matrix, picked: readonly number[]): Matrix {
  return Matrix.of(picked.length, matrix.cols, (r, c) => matrix.at(picked[r]!, c));
}

function turned(matrix: Matrix): Matrix {
  return Matrix.of(matrix.cols, matrix.rows, (r, c) => matrix.at(c, r));
}

function filter(array: Value, keep: Value, otherwise?: Value): Value {
  const from = matrixOf(array);
  const marks = matrixOf(keep);
  if (isCellError(from)) return from;
  if (isCellError(marks)) return marks;
  const byRow = marks.cols === 1 && marks.rows === from.rows;
  if (!byRow && !(marks.rows === 1 && marks.cols === from.cols)) return errors.value;
  const picked: number[] = [];
  for (const [i, mark] of marks.data.entries()) {
    const kept = toBoolean(mark);
    if (typeof kept === "object") return kept;
    if (kept) picked.push(i);
  }
  if (picked.length === 0) return otherwise ?? errors.calc;
  return byRow ? rowsOf(from, picked) : turned(rowsOf(turned(from), picked));
}

/** Order of sorting: blanks last whichever way, errors after everything else. */
function inOrder(a: CellValue, b: CellValue, way: number): number {
  if (a === null || b === null) return (a === null ? 1 : 0) - (b === null ? 1 : 0);
  const rank = (isCellError(a) ? 1 : 0) - (isCellError(b) ? 1 : 0);
  return (rank !== 0 ? rank : isCellError(a) ? 0 : compare(a, b)) * way;
}

function number(value: Value | undefined, otherwise: number): number | CellError {
  const one = oneOf(value);
  return one === null ? otherwise : toNumber(one);
}

function sort(array: Value, by?: Value, order?: Value, byColumn?: Value): Value {
  const key = number(by, 1);
  const way = number(order, 1);
  const across = toBoolean(oneOf(byColumn));
  if (typeof key !== "number") return key;
  if (typeof way !== "number") return way;
  if (typeof across === "object") return across;
  if (way !== 1 && way !== -1) return errors.value;
  return over(array, (given) => {
    const matrix = across ? turned(given) : given;
    const col = Math.trunc(key) - 1;
    if (col < 0 || col >= matrix.cols) return errors.value;
    const rows = Array.from({ length: matrix.rows }, (_, i) => i);
    rows.sort((a, b) => inOrder(matrix.at(a, col), matrix.at(b, col), way));
    const sorted = rowsOf(matrix, rows);
    return across ? turned(sorted) : sorted;
  });
}

function sortBy(array: Value, ...keys: Value[]): Value {
  const from = matrixOf(array);
  if (isCellError(from)) return from;
  const levels: { key: Matrix; way: number }[] = [];
  for (let i = 0; i < keys.length; i += 2) {
    const key = matrixOf(keys[i] ?? null);
    const way = number(keys[i + 1], 1);
    if (isCellError(key)) return key;
    if (typeof way !== "number") return way;
    if (key.data.length !== from.rows || (way !== 1 && way !== -1)) return errors.value;
    levels.push({ key, way });
  }
  const rows = Array.from({ length: from.rows }, (_, i) => i);
  rows.sort((a, b) => {
    for (const { key, way } of levels) {
      const order = inOrder(key.data[a] ?? null, key.data[b] ?? null, way);
      if (order !== 0) return order;
    }
    return 0;
  });
  return rowsOf(from, rows);
}

function unique(array: Value, byColumn?: Value, once?: Value): Value {
  const across = toBoolean(oneOf(byColumn));
  const onlyOnce = toBoolean(oneOf(once));
  if (typeof across === "object") return across;
  if (typeof onlyOnce === "object") return onlyOnce;
  return over(array, (given) => {
    const matrix = across ? turned(given) : given;
    const seen = new Map<string, { row: number; times: number }>();
    for (let row = 0; row < matrix.rows; row++) {
      const cells = matrix.data.slice(row * matrix.cols, (row + 1) * matrix.cols);
      const key = JSON.stringify(
        cells.map((cell) => (typeof cell === "string" ? cell.toLowerCase() : cell)),
      );
      const known = seen.get(key);
      if (known) known.times++;
      else seen.set(key, { row, times: 1 });
    }
    const picked = [...seen.values()].filter(({ times }) => !onlyOnce || times === 1);
    if (picked.length === 0) return errors.calc;
    const result = rowsOf(
      matrix,
      picked.map(({ row }) => row),
    );
    return across ? turned(result) : result;
  });
}
