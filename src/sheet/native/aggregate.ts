import { AVEDEV, DEVSQ, GEOMEAN, HARMEAN } from "@formulajs/formulajs";
import { type CellError, type CellValue, counted, errors, isCellError } from "../../cells";
import { Area, type Value } from "../area";
import { finite, toBoolean, toNumber } from "../coerce";
import { Matrix, Unsupported } from "../values";
import { fromLibrary } from "./library";
import type { Natives } from "./natives";
import { forEachValue, matrixOf, numbersIn, oneOf, parts } from "./read";

type Numbers = readonly number[];

/** Sums, means, extremes, counts and logic over ranges. */
export function addAggregates(to: Natives): void {
  const over = (names: string, apply: (numbers: Numbers) => CellValue) =>
    to.add(names, "r+", (...args) => {
      const results = resultsOf(args);
      const known = results?.get(names);
      if (known !== undefined) return known;
      const numbers = numbersIn(args);
      const result = isCellError(numbers) ? numbers : apply(numbers);
      results?.set(names, result);
      return result;
    });
  over("SUM", sum);
  over("PRODUCT", (x) => (x.length === 0 ? 0 : finite(x.reduce((p, each) => p * each, 1))));
  over("SUMSQ", (x) => sum(x.map((each) => each * each)));
  over("AVERAGE", (x) => (x.length === 0 ? errors.div0 : sum(x) / x.length));
  over("MIN", (x) => x.reduce((least, each) => Math.min(least, each), x[0] ?? 0));
  over("MAX", (x) => x.reduce((most, each) => Math.max(most, each), x[0] ?? 0));
  over("MEDIAN", (x) => quantile(sorted(x), 0.5));
  over("STDEV STDEV.S", (x) => spreadOf(x, 1, Math.sqrt));
  over("STDEVP STDEV.P", (x) => spreadOf(x, 0, Math.sqrt));
  over("VAR VAR.S", (x) => spreadOf(x, 1, (variance) => variance));
  over("VARP VAR.P", (x) => spreadOf(x, 0, (variance) => variance));
  over("MODE.SNGL", mode);
  to.add("MODE", "r+", (...args) => {
    if (args.some((arg) => typeof arg === "string")) return errors.value;
    const numbers = numbersIn(args);
    return isCellError(numbers) ? numbers : mode(numbers);
  });
  over("SKEW", (x) => skew(x, (n) => Math.sqrt(n * (n - 1)) / (n - 2)));
  over("SKEW.P", (x) => skew(x, () => 1));
  over("KURT", kurtosis);
  overAll(to, "AVERAGEA", (x) => (x.length === 0 ? errors.div0 : sum(x) / x.length));
  overAll(to, "MINA", (x) => x.reduce((least, each) => Math.min(least, each), x[0] ?? 0));
  overAll(to, "MAXA", (x) => x.reduce((most, each) => Math.max(most, each), x[0] ?? 0));
  overAll(to, "STDEVA", (x) => spreadOf(x, 1, Math.sqrt));
  overAll(to, "STDEVPA", (x) => spreadOf(x, 0, Math.sqrt));
  overAll(to, "VARA", (x) => spreadOf(x, 1, (variance) => variance));
  overAll(to, "VARPA", (x) => spreadOf(x, 0, (variance) => variance));
  const library = { GEOMEAN, HARMEAN, AVEDEV, DEVSQ };
  for (const [name, apply] of Object.entries(library))
    over(name, (x) =>
      x.length === 0 || (name.endsWith("MEAN") && x.some((each) => each <= 0))
        ? errors.num
        : fromLibrary(apply([...x])),
    );
  to.add("COUNT", "r+", (...args) => count(args, isCounted))
    .add("COUNTA", "r+", (...args) => count(args, (value) => value !== null))
    .add("COUNTBLANK", "r", countBlank)
    .add("SUMPRODUCT", "a+", (...args) => sumProduct(args))
    .add("SUBTOTAL", "n r+", (which, ...args) => subtotal(to, which, args))
    .add(
      "AGGREGATE",
      "i i a+",
      (which, option, ...args) => aggregate(to, which, option, args) as CellValue,
    );
  logic(to);
}

/** A summary that takes texts in ranges for 0 and truth values for 0 and 1. */
function overAll(to: Natives, name: string, apply: (numbers: Numbers) => CellValue): void {
  to.add(name, "r+", (...args) => {
    const numbers: number[] = [];
    let failed: CellError | undefined;
    forEachValue(args, (value, isArgument) => {
      if (value === null && !isArgument) return;
      const x = typeof value === "string" && !isArgument ? 0 : toNumber(value);
      if (typeof x === "number") numbers.push(x);
      else failed ??= x;
    });
    return failed ?? apply(numbers);
  });
}

/** Sum of the standardised deviations to a power, with the deviation of the whole population. */
function moment(x: Numbers, power: number): number {
  const mean = sum(x) / x.length;
  const variance = sum(x.map((each) => (each - mean) ** 2)) / x.length;
  return sum(x.map((each) => (each - mean) ** power)) / x.length / variance ** (power / 2);
}

function skew(x: Numbers, correction: (n: number) => number): CellValue {
  const value = x.length < 3 ? Number.NaN : moment(x, 3) * correction(x.length);
  return Number.isFinite(value) ? value : errors.div0;
}

function kurtosis(x: Numbers): CellValue {
  const n = x.length;
  if (n < 4) return errors.div0;
  const scale = (n - 1) / ((n - 2) * (n - 3));
  const value = scale * ((n + 1) * moment(x, 4) - 3 * (n - 1));
  return Number.isFinite(value) ? value : errors.div0;
}

/** Where results over one shared range are kept: a column's mean is wanted in every row. */
function resultsOf(args: readonly Value[]): Map<string, CellValue> | undefined {
  const memo = args.length === 1 && args[0] instanceof Area ? args[0].fresh() : undefined;
  if (memo) memo.results ??= new Map();
  return memo?.results;
}

export function sum(numbers: Numbers): number {
  let total = 0;
  for (const x of numbers) total += x;
  return total;
}

export function sorted(numbers: Numbers): number[] {
  return [...numbers].sort((a, b) => a - b);
}

/** Value at a share of the way through sorted numbers, with linear interpolation. */
export function quantile(ascending: Numbers, share: number): CellValue {
  if (ascending.length === 0 || share < 0 || share > 1) return errors.num;
  const at = share * (ascending.length - 1);
  const low = Math.floor(at);
  const value = ascending[low]!;
  const next = ascending[low + 1] ?? value;
  return value + (at - low) * (next - value);
}

function spreadOf(x: Numbers, lost: number, finish: (variance: number) => number): CellValue {
  if (x.length <= lost) return errors.div0;
  const mean = sum(x) / x.length;
  return finish(x.reduce((total, each) => total + (each - mean) ** 2, 0) / (x.length - lost));
}

function mode(x: Numbers): CellValue {
  const counts = counted(x);
  let best: number | undefined;
  for (const [value, times] of counts)
    if (times > 1 && times > (best === undefined ? 1 : counts.get(best)!)) best = value;
  return best ?? errors.na;
}

/** Numbers; and, written as an argument, whatever reads as one. */
function isCounted(value: CellValue, isArgument: boolean): boolean {
  return typeof value === "number" || (isArgument && typeof toNumber(value) === "number");
}

function count(
  args: readonly Value[],
  counts: (value: CellValue, isArgument: boolean) => boolean,
): number {
  let total = 0;
  forEachValue(args, (value, isArgument) => {
    if (counts(value, isArgument)) total++;
  });
  return total;
}

function countBlank(range: Value): CellValue {
  if (!(range instanceof Area)) return errors.value;
  let filled = 0;
  forEachValue([range], (value) => {
    if (value !== null && value !== "") filled++;
  });
  return range.rows * range.cols - filled;
}

function sumProduct(args: readonly Value[]): CellValue {
  const factors: Matrix[] = [];
  for (const arg of args) {
    const matrix = matrixOf(arg);
    const error = isCellError(matrix) ? matrix : matrix.data.find(isCellError);
    if (error) return error;
    factors.push(matrix as Matrix);
  }
  const { rows, cols } = factors[0]!;
  if (factors.some((each) => each.rows !== rows || each.cols !== cols)) return errors.value;
  if (rows * cols === 1 && factors.some((each) => typeof each.at(0, 0) === "string"))
    return errors.value;
  let total = 0;
  for (let r = 0; r < rows; r++)
    for (let c = 0; c < cols; c++) {
      let product = 1;
      for (const each of factors) {
        const value = each.at(r, c);
        // Anything but a number counts as zero here, TRUE included.
        product *= typeof value === "number" ? value : 0;
      }
      total += product;
    }
  return finite(total);
}

const subtotals =
  "AVERAGE COUNT COUNTA MAX MIN PRODUCT STDEV STDEVP SUM VAR VARP MEDIAN MODE.SNGL LARGE SMALL PERCENTILE.INC QUARTILE.INC PERCENTILE.EXC QUARTILE.EXC".split(
    " ",
  );

/** Leaves out other subtotals; rows that a user hid and rows that a filter hid cannot be told apart. */
function subtotal(to: Natives, which: number, args: readonly Value[]): CellValue {
  const number = Math.trunc(which);
  const name = subtotals[(number > 100 ? number - 100 : number) - 1];
  const native = name === undefined ? undefined : to.get(name);
  if (!native) return errors.value;
  if (number > 100 ? number > 111 : number > 11) return errors.value;
  const kept: Value[] = [];
  for (const arg of args)
    for (const part of parts(arg)) {
      if (!(part instanceof Area)) return isCellError(part) ? part : errors.value;
      const { grid } = part;
      for (let r = 0; r < part.usedRows; r++) {
        if (grid.hiddenRows.has(part.top + r)) {
          if (number > 100) continue;
          throw new Unsupported("SUBTOTAL over hidden rows");
        }
        for (let c = 0; c < part.usedCols; c++) {
          const [row, col] = [part.top + r, part.left + c];
          const formula = grid.formulaText(row, col);
          if (formula && /\bSUBTOTAL\(/i.test(formula)) continue;
          kept.push(new Area(grid, row, col, row, col));
        }
      }
    }
  return native.call(...kept) as CellValue;
}

/** AGGREGATE: a summary that leaves out errors, hidden rows or other such summaries, as its option says. */
function aggregate(to: Natives, which: number, option: number, args: readonly Value[]): Value {
  const native = to.get(subtotals[which - 1] ?? "");
  if (!native || option < 0 || option > 7) return errors.value;
  const skipsNested = option < 4;
  const skipsHidden = option % 2 === 1;
  const skipsErrors = option % 4 > 1;
  const kept: CellValue[] = [];
  const lists = which > 13 ? args.slice(0, 1) : args;
  for (const part of lists.flatMap(parts)) {
    if (isCellError(part) && !skipsErrors) return part;
    const area = part instanceof Area ? part : undefined;
    const matrix = matrixOf(part);
    if (isCellError(matrix)) return matrix;
    for (let r = 0; r < matrix.rows; r++) {
      if (area && skipsHidden && area.grid.hiddenRows.has(area.top + r)) continue;
      for (let c = 0; c < matrix.cols; c++) {
        const value = matrix.at(r, c);
        const formula = area?.grid.formulaText(area.top + r, area.left + c) ?? "";
        if (skipsErrors && isCellError(value)) continue;
        if (skipsNested && /\b(SUBTOTAL|AGGREGATE)\(/i.test(formula)) continue;
        kept.push(value);
      }
    }
  }
  const k = which > 13 ? toNumber(oneOf(args[1])) : 0;
  if (typeof k !== "number") return k;
  const list = new Matrix(kept.length, 1, kept);
  return which > 13 ? native.call(list, k) : native.call(list);
}

function logic(to: Natives): void {
  const over = (name: string, judge: (values: readonly boolean[]) => boolean) =>
    to.add(name, "r+", (...args) => {
      const values: boolean[] = [];
      let failed: CellError | undefined;
      forEachValue(args, (value, isArgument) => {
        // In a range only booleans and numbers count; an argument must read as one.
        if (!isArgument && (value === null || typeof value === "string")) return;
        const read = toBoolean(value);
        if (typeof read !== "object") values.push(read);
        else if (isCellError(value)) failed ??= value;
      });
      return failed ?? (values.length === 0 ? errors.value : judge(values));
    });
  over("AND", (values) => values.every((value) => value));
  over("OR", (values) => values.some((value) => value));
  over("XOR", (values) => values.filter((value) => value).length % 2 === 1);
  to.add("NOT", "b", (value) => !value)
    .add("TRUE", "", () => true)
    .add("FALSE", "", () => false);
}
