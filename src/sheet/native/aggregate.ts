import { AVEDEV, DEVSQ, GEOMEAN, HARMEAN, KURT, SKEW } from "@formulajs/formulajs";
import { type CellError, type CellValue, errors, isCellError } from "../../cells";
import { Area, type Value } from "../area";
import { finite, toBoolean, toNumber } from "../coerce";
import { type Matrix, Unsupported } from "../values";
import { fromLibrary } from "./library";
import type { Natives } from "./natives";
import { forEachValue, matrixOf, numbersIn, parts } from "./read";

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
  over("MODE MODE.SNGL", mode);
  const library = { GEOMEAN, HARMEAN, AVEDEV, DEVSQ, SKEW, KURT };
  for (const [name, apply] of Object.entries(library))
    over(name, (x) => (x.length === 0 ? errors.num : fromLibrary(apply([...x]))));
  to.add("COUNT", "r+", (...args) => count(args, isCounted))
    .add("COUNTA", "r+", (...args) => count(args, (value) => value !== null))
    .add("COUNTBLANK", "r", countBlank)
    .add("SUMPRODUCT", "a+", (...args) => sumProduct(args))
    .add("SUBTOTAL", "n r+", (which, ...args) => subtotal(to, which, args));
  logic(to);
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
  const counts = new Map<number, number>();
  for (const each of x) counts.set(each, (counts.get(each) ?? 0) + 1);
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
    if (isCellError(matrix)) return matrix;
    factors.push(matrix);
  }
  const { rows, cols } = factors[0]!;
  if (factors.some((each) => each.rows !== rows || each.cols !== cols)) return errors.value;
  let total = 0;
  for (let r = 0; r < rows; r++)
    for (let c = 0; c < cols; c++) {
      let product = 1;
      for (const each of factors) {
        const value = each.stretched(r, c);
        if (isCellError(value)) return value;
        // Anything but a number counts as zero here, TRUE included.
        product *= typeof value === "number" ? value : 0;
      }
      total += product;
    }
  return finite(total);
}

const subtotals = "AVERAGE COUNT COUNTA MAX MIN PRODUCT STDEV STDEVP SUM VAR VARP".split(" ");

/** Leaves out other subtotals; rows that a user hid and rows that a filter hid cannot be told apart. */
function subtotal(to: Natives, which: number, args: readonly Value[]): CellValue {
  const number = Math.trunc(which);
  const name = subtotals[(number > 100 ? number - 100 : number) - 1];
  const native = name === undefined ? undefined : to.get(name);
  if (!native) return errors.value;
  const kept: Value[] = [];
  for (const arg of args)
    for (const part of parts(arg)) {
      if (!(part instanceof Area)) return errors.value;
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

function logic(to: Natives): void {
  const over = (name: string, judge: (values: readonly boolean[]) => boolean) =>
    to.add(name, "r+", (...args) => {
      const values: boolean[] = [];
      let failed: CellError | undefined;
      forEachValue(args, (value, isArgument) => {
        // In a range only booleans and numbers count; an argument must read as one.
        if (!isArgument && (value === null || typeof value === "string")) return;
        const read = toBoolean(value);
        if (typeof read === "object") failed ??= read;
        else values.push(read);
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
