import {
  type CellError,
  type CellValue,
  errors,
  isCellError,
  maxRows,
  numberedErrors,
} from "../../cells";
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
  to.addSpreading("SEQUENCE", "s s? s? s?", (...given) => {
    const read: number[] = [];
    for (const each of [0, 1, 2, 3].map((i) => toNumber(given[i] ?? 1))) {
      if (typeof each !== "number") return each;
      read.push(each);
    }
    const [height = 1, width = 1] = read.map(Math.trunc);
    const [, , start = 1, step = 1] = read;
    if (height < 0 || width < 0) return errors.value;
    if (height < 1 || width < 1) return errors.calc;
    if (height * width > maxRows) return errors.num;
    return Matrix.of(height, width, (r, c) => start + (r * width + c) * step);
  });
  const select =
    (isRow: boolean) =>
    (array: Value, ...which: Value[]) =>
      over(array, (m) => chosenLines(isRow ? m : turned(m), which, isRow));
  to.addSpreading("CHOOSEROWS", "a r+", select(true));
  to.addSpreading("CHOOSECOLS", "a r+", select(false));
  to.addSpreading("TOROW", "a n? b?", (array, skip, down) => inLine(array, skip, down, true));
  to.addSpreading("TOCOL", "a n? b?", (array, skip, down) => inLine(array, skip, down, false));
  to.addSpreading("FILTER", "a a r?", filter);
  to.addSpreading("SORT", "a r? r? r?", sort);
  to.addSpreading("SORTBY", "a a r? a? r? a? r? a? r?", sortBy);
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

/** The lines of these numbers, counted from the end where below zero. */
function chosenLines(matrix: Matrix, which: readonly Value[], isRow: boolean): Value {
  const picked: number[] = [];
  for (const each of which) {
    const list = matrixOf(each);
    if (isCellError(list)) return list;
    if (list.rows > 1 && list.cols > 1) return errors.value;
    for (const cell of list.data) {
      const x = toNumber(cell);
      if (typeof x !== "number") return x;
      const n = Math.trunc(x);
      if (n === 0 || Math.abs(n) > matrix.rows) return errors.value;
      picked.push(n > 0 ? n - 1 : matrix.rows + n);
    }
  }
  const found = rowsOf(matrix, picked);
  return isRow ? found : turned(found);
}

/** All cells in one row or column; `skip` 1 leaves out blanks, 2 errors, 3 both. */
function inLine(array: Value, skip = 0, down = false, isRow = false): Value {
  return over(array, (m) => {
    const kept = (down ? turned(m) : m).data.filter(
      (cell) => !((skip & 1 && cell === null) || (skip & 2 && isCellError(cell))),
    );
    if (skip < 0 || skip > 3) return errors.value;
    if (kept.length === 0) return errors.calc;
    return isRow ? new Matrix(1, kept.length, kept) : new Matrix(kept.length, 1, kept);
  });
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

/** Order of sorting: blanks last whichever way, errors after everything else by their numbers. */
function inOrder(a: CellValue, b: CellValue, way: number): number {
  if (a === null || b === null) return (a === null ? 1 : 0) - (b === null ? 1 : 0);
  // The newer errors have no number of their own here, and come last.
  const number = (cell: CellValue) =>
    isCellError(cell) ? [...numberedErrors, cell.error].indexOf(cell.error) + 1 : 0;
  return (number(a) - number(b) || (isCellError(a) ? 0 : compare(a, b))) * way;
}

/** Lines put in order by one key after the other; of equal ones the order stays. */
interface Level {
  readonly key: (line: number) => CellValue;
  readonly way: number;
}

function ordered(count: number, levels: readonly Level[]): number[] {
  return Array.from({ length: count }, (_, i) => i).sort((a, b) => {
    for (const { key, way } of levels) {
      const order = inOrder(key(a), key(b), way);
      if (order !== 0) return order;
    }
    return 0;
  });
}

/** One number or a row of them; 1 where the argument is left out. */
function numbersOf(value: Value | undefined): number[] | CellError {
  const list = matrixOf(value ?? 1);
  if (isCellError(list)) return list;
  if (list.rows > 1) return errors.value;
  const out: number[] = [];
  for (const cell of list.data) {
    const x = toNumber(cell);
    if (typeof x !== "number") return x;
    out.push(Math.trunc(x));
  }
  return out;
}

function sort(array: Value, by?: Value, order?: Value, byColumn?: Value): Value {
  const keys = numbersOf(by);
  const ways = numbersOf(order);
  const across = toBoolean(oneOf(byColumn));
  if (isCellError(keys)) return keys;
  if (isCellError(ways)) return ways;
  if (typeof across === "object") return across;
  if (ways.some((way) => Math.abs(way) !== 1) || ways.length > keys.length) return errors.value;
  return over(array, (given) => {
    const matrix = across ? turned(given) : given;
    if (keys.some((key) => key < 1 || key > matrix.cols)) return errors.value;
    const levels = keys.map((key, i) => ({
      key: (row: number) => matrix.at(row, key - 1),
      way: ways[i] ?? ways[0]!,
    }));
    const sorted = rowsOf(matrix, ordered(matrix.rows, levels));
    return across ? turned(sorted) : sorted;
  });
}

function sortBy(array: Value, ...keys: (Value | undefined)[]): Value {
  const given = matrixOf(array);
  if (isCellError(given)) return given;
  const levels: Level[] = [];
  let across: boolean | undefined;
  for (let i = 0; i < keys.length; i += 2) {
    const key = matrixOf(keys[i] ?? null);
    const ways = numbersOf(keys[i + 1]);
    if (isCellError(key)) return key;
    if (isCellError(ways)) return ways;
    const isDown = key.cols === 1 && key.rows === given.rows;
    const isAlong = key.rows === 1 && key.cols === given.cols;
    across ??= !isDown;
    if (!(across ? isAlong : isDown) || Math.abs(ways[0] ?? 0) !== 1) return errors.value;
    levels.push({ key: (line) => key.data[line] ?? null, way: ways[0]! });
  }
  if (!across) return rowsOf(given, ordered(given.rows, levels));
  return turned(rowsOf(turned(given), ordered(given.cols, levels)));
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
