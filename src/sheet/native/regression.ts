import { type CellError, type CellValue, errors, isCellError } from "../../cells";
import type { Value } from "../area";
import { toBoolean } from "../coerce";
import { Matrix } from "../values";
import type { Natives } from "./natives";
import { matrixOf, oneOf } from "./read";

type Numbers = readonly number[];

/** Least squares of y on one or more columns, by orthogonal columns; a column that adds nothing counts 0. */
interface Fit {
  /** One a column, the last the constant. */
  readonly slopes: number[];
  readonly errors: number[];
  readonly dof: number;
  readonly residual: number;
  readonly explained: number;
}

/** How small a column's own part may be before it is taken for a sum of the others. */
const nothing = 1e-12;

function leastSquares(y: Numbers, columns: readonly Numbers[], hasConstant: boolean): Fit {
  const all = hasConstant ? [y.map(() => 1), ...columns] : [...columns];
  const kept: { at: number; q: Numbers; size: number; r: number[] }[] = [];
  for (const [at, column] of all.entries()) {
    let q: Numbers = column;
    const r: number[] = all.map(() => 0);
    r[at] = 1;
    // Twice, as what rounding leaves of the others in the first pass goes in the second.
    for (let pass = 0; pass < 2; pass++)
      for (const other of kept) {
        const part = dot(q, other.q) / other.size;
        q = q.map((x, i) => x - part * other.q[i]!);
        for (const k of r.keys()) r[k] = r[k]! - part * other.r[k]!;
      }
    const size = dot(q, q);
    if (size > nothing * dot(column, column)) kept.push({ at, q, size, r });
  }
  const slopes = all.map(() => 0);
  const variances = all.map(() => 0);
  let rest: Numbers = y;
  for (const { q, size, r } of kept) {
    const part = dot(rest, q) / size;
    rest = rest.map((value, i) => value - part * q[i]!);
    for (const k of all.keys()) {
      slopes[k] = slopes[k]! + part * r[k]!;
      variances[k] = variances[k]! + r[k]! ** 2 / size;
    }
  }
  const dof = y.length - kept.length;
  const residual = dot(rest, rest);
  const mean = hasConstant ? y.reduce((a, b) => a + b, 0) / y.length : 0;
  const total = y.reduce((a, value) => a + (value - mean) ** 2, 0);
  const last = <T>(list: readonly T[], none: T): T[] =>
    hasConstant ? [...list.slice(1), list[0]!] : [...list, none];
  const sd = variances.map((each) => Math.sqrt((each * residual) / dof));
  return {
    slopes: last(slopes, 0),
    errors: last(sd, Number.NaN),
    dof,
    residual,
    explained: total - residual,
  };
}

function dot(a: Numbers, b: Numbers): number {
  return a.reduce((total, x, i) => total + x * b[i]!, 0);
}

/** The numbers of a range, row after row; anything else is #VALUE!. */
function numbersOf(value: Value): Matrix | CellError {
  const matrix = matrixOf(value);
  if (isCellError(matrix)) return errors.value;
  return matrix.data.every((each) => typeof each === "number") ? matrix : errors.value;
}

interface Given {
  readonly y: Numbers;
  readonly columns: Numbers[];
  /** Each column of x is a row of the range. */
  readonly isAcross: boolean;
  readonly rows: number;
  readonly cols: number;
}

/** y and the columns of x, which may stand in columns or in rows; 1, 2, 3 … where x is left out. */
function given(y: Value, x: Value | undefined, isLog: boolean): Given | CellError {
  const from = matrixOf(y);
  if (isCellError(from)) return errors.value;
  const { rows, cols } = from;
  const isAcross = rows === 1 && cols > 1;
  const hasOwn = x !== undefined && x !== null;
  const by = hasOwn ? matrixOf(x) : from;
  if (isCellError(by)) return errors.value;
  const isSame = by.rows === rows && by.cols === cols;
  const isLine = rows === 1 || cols === 1;
  if (!isSame && !(isLine && (isAcross ? by.cols === cols : by.rows === rows))) return errors.ref;
  const raw = numbersOf(y);
  const known = numbersOf(by);
  if (isCellError(raw)) return raw;
  if (isCellError(known)) return known;
  if (isLog && raw.data.some((each) => (each as number) <= 0)) return errors.num;
  const ys = (raw.data as number[]).map(isLog ? Math.log : (each) => each);
  const columns = !hasOwn
    ? [ys.map((_, i) => i + 1)]
    : isSame
      ? [known.data as number[]]
      : columnsOf(known, isAcross);
  return { y: ys, columns, isAcross, rows, cols };
}

function columnsOf(matrix: Matrix, isAcross: boolean): number[][] {
  const [count, length] = isAcross ? [matrix.rows, matrix.cols] : [matrix.cols, matrix.rows];
  return Array.from({ length: count }, (_, k) =>
    Array.from({ length }, (_, i) => (isAcross ? matrix.at(k, i) : matrix.at(i, k)) as number),
  );
}

function flag(value: Value | undefined, otherwise: boolean): boolean | CellError {
  if (value === undefined || value === null) return otherwise;
  const read = toBoolean(oneOf(value));
  return typeof read === "object" ? errors.value : read;
}

function coefficients(isLog: boolean) {
  return (y: Value, x?: Value, constant?: Value, statistics?: Value): Value => {
    const data = given(y, x, isLog);
    const hasConstant = flag(constant, true);
    const isFull = flag(statistics, false);
    if (isCellError(data)) return data;
    if (typeof hasConstant !== "boolean") return hasConstant;
    if (typeof isFull !== "boolean") return isFull;
    const found = leastSquares(data.y, data.columns, hasConstant);
    const count = data.columns.length;
    // The slopes stand in the reverse order of their columns.
    const order = [...Array.from({ length: count }, (_, i) => count - 1 - i), count];
    const slopes = order.map((k) => found.slopes[k]!);
    const first = isLog ? slopes.map(Math.exp) : slopes;
    if (!isFull) return new Matrix(1, count + 1, first.map(numeric));
    const { dof, residual, explained } = found;
    const used = data.y.length - dof - (hasConstant ? 1 : 0);
    const lines: number[][] = [
      first,
      order.map((k) => found.errors[k]!),
      [explained / (explained + residual), Math.sqrt(residual / dof)],
      [explained / used / (residual / dof), dof],
      [explained, residual],
    ];
    return Matrix.of(5, count + 1, (r, c) => {
      const value = lines[r]![c];
      return value === undefined || Number.isNaN(value) ? errors.na : numeric(value);
    });
  };
}

function numeric(value: number): CellValue {
  return Number.isFinite(value) ? value : errors.num;
}

function fitted(isLog: boolean) {
  return (y: Value, x?: Value, at?: Value, constant?: Value): Value => {
    const data = given(y, x, isLog);
    const hasConstant = flag(constant, true);
    if (isCellError(data)) return data;
    if (typeof hasConstant !== "boolean") return hasConstant;
    const found = leastSquares(data.y, data.columns, hasConstant);
    const finish = (value: number) => numeric(isLog ? Math.exp(value) : value);
    const of = (values: Numbers) =>
      finish(found.slopes.reduce((sum, slope, k) => sum + slope * (values[k] ?? 1), 0));
    const isSingle = data.columns.length === 1;
    const asked = at === undefined || at === null ? x : at;
    if (asked === undefined || asked === null)
      return Matrix.of(data.rows, data.cols, (r, c) => of([r * data.cols + c + 1]));
    const by = numbersOf(asked);
    if (isCellError(by)) return by;
    if (isSingle) return Matrix.of(by.rows, by.cols, (r, c) => of([by.at(r, c) as number]));
    const columns = columnsOf(by, data.isAcross);
    if (columns.length !== data.columns.length) return errors.ref;
    const results = columns[0]!.map((_, i) => of(columns.map((column) => column[i]!)));
    return data.isAcross
      ? new Matrix(1, results.length, results)
      : new Matrix(results.length, 1, results);
  };
}

/** Lines and planes through data, and the same through logarithms. */
export function addRegression(to: Natives): void {
  to.addSpreading("LINEST", "r r? r? r?", coefficients(false))
    .addSpreading("LOGEST", "r r? r? r?", coefficients(true))
    .addSpreading("TREND", "r r? r? r?", fitted(false))
    .addSpreading("GROWTH", "r r? r? r?", fitted(true));
}
