import {
  CHISQ,
  CORREL,
  F,
  FACT,
  FORECAST,
  INTERCEPT,
  PERMUT,
  RSQ,
  SLOPE,
  STEYX,
} from "@formulajs/formulajs";
import { type CellError, type CellValue, errors, isCellError } from "../../cells";
import {
  normalChance,
  normalQuantile,
  studentChance,
  studentDensity,
  studentQuantile,
} from "../../spread";
import { Area, type Value } from "../area";
import { finite, toNumber } from "../coerce";
import { Unsupported } from "../values";
import { spend } from "../work";
import { quantile, sorted, sum } from "./aggregate";
import { fromLibrary } from "./library";
import { rounded } from "./math";
import type { Natives } from "./natives";
import { forEachValue, matrixOf, numbersIn } from "./read";

/** The library takes a step for each degree of freedom; a spreadsheet ends at 10 to the 10th. */
const mostFreedom = 1e5;

function inSteps(freedom: number): number {
  if (freedom > mostFreedom) throw new Unsupported("CHISQ of so many degrees of freedom");
  return Math.trunc(freedom);
}

/** Order statistics, regression and distributions. */
export function addStatistics(to: Natives): void {
  to.add("SMALL", "r n", (range, k) => kth(range, k, false))
    .add("LARGE", "r n", (range, k) => kth(range, k, true))
    .add("RANK RANK.EQ", "n r n?", (x, range, order = 0) => rank(x, range, order !== 0))
    .add("RANK.AVG", "n r n?", (x, range, order = 0) => {
      const first = rank(x, range, order !== 0);
      const numbers = numbersIn([range]);
      if (typeof first !== "number" || isCellError(numbers)) return first;
      return first + (numbers.filter((each) => each === x).length - 1) / 2;
    })
    .add("PERCENTILE PERCENTILE.INC", "r n", (range, share) => inclusive(range, share))
    .add("QUARTILE QUARTILE.INC", "r n", (range, quarter) =>
      inclusive(range, quarter < 0 ? -1 : Math.trunc(quarter) / 4),
    )
    .add("PERCENTILE.EXC", "r n", (range, share) => exclusive(range, share))
    .add("QUARTILE.EXC", "r n", (range, quarter) => exclusive(range, Math.trunc(quarter) / 4))
    .add("PERCENTRANK.INC PERCENTRANK", "r n i?", (range, x, digits) =>
      percentRank(range, x, digits, 0),
    )
    .add("PERCENTRANK.EXC", "r n i?", (range, x, digits) => percentRank(range, x, digits, 1))
    .add("TRIMMEAN", "r n", trimmedMean);
  const sums = {
    SUMXMY2: (a: number, b: number) => (a - b) ** 2,
    SUMX2MY2: (a: number, b: number) => a * a - b * b,
    SUMX2PY2: (a: number, b: number) => a * a + b * b,
  };
  for (const [name, of] of Object.entries(sums))
    to.add(name, "r r", (x, y) =>
      paired(x, y, (a, b) =>
        a.length === 0 ? errors.div0 : sum(a.map((each, i) => of(each, b[i]!))),
      ),
    );
  const covariance = (lost: number) => (x: Value, y: Value) =>
    paired(x, y, (a, b) => {
      if (a.length <= lost) return errors.div0;
      const [p, q] = [sum(a) / a.length, sum(b) / b.length];
      return sum(a.map((each, i) => (each - p) * (b[i]! - q))) / (a.length - lost);
    });
  to.add("COVARIANCE.S", "r r", covariance(1)).add("COVARIANCE.P COVAR", "r r", covariance(0));
  regression(to);
  counting(to);
  distributions(to);
}

function kth(range: Value, k: number, fromTop: boolean): CellValue {
  const numbers = numbersIn([range]);
  if (isCellError(numbers)) return numbers;
  const place = Math.trunc(k);
  if (place < 1 || place > numbers.length) return errors.num;
  const ascending = sorted(numbers);
  return ascending[fromTop ? ascending.length - place : place - 1]!;
}

function rank(x: number, range: Value, ascending: boolean): CellValue {
  const numbers = numbersIn([range]);
  if (isCellError(numbers)) return numbers;
  if (!numbers.includes(x)) return errors.na;
  return 1 + numbers.filter((each) => (ascending ? each < x : each > x)).length;
}

function inclusive(range: Value, share: number): CellValue {
  const numbers = numbersIn([range]);
  return isCellError(numbers) ? numbers : quantile(sorted(numbers), share);
}

/** Value at a share of the way through, where both ends are left out. */
function exclusive(range: Value, share: number): CellValue {
  const numbers = numbersIn([range]);
  if (isCellError(numbers)) return numbers;
  const at = share * (numbers.length + 1);
  if (at < 1 || at > numbers.length) return errors.num;
  return quantile(sorted(numbers), numbers.length === 1 ? 0 : (at - 1) / (numbers.length - 1));
}

/** How far through the numbers a value stands, cut to so many digits; `beyond` 1 leaves both ends out. */
function percentRank(range: Value, x: number, digits = 3, beyond: number): CellValue {
  const numbers = numbersIn([range]);
  if (isCellError(numbers)) return numbers;
  if (digits < 1) return errors.num;
  const ascending = sorted(numbers);
  const above = ascending.findIndex((each) => each >= x);
  if (above < 0 || x < ascending[0]!) return errors.na;
  const high = ascending[above]!;
  const low = ascending[above - 1] ?? high;
  const place = high === x ? above : above - 1 + (x - low) / (high - low);
  if (ascending.length === 1 && beyond === 0) return 1;
  return rounded((place + beyond) / (ascending.length - 1 + 2 * beyond), digits, Math.trunc);
}

function trimmedMean(range: Value, share: number): CellValue {
  const numbers = numbersIn([range]);
  if (isCellError(numbers)) return numbers;
  if (share < 0 || share >= 1) return errors.num;
  const cut = Math.floor((numbers.length * share) / 2);
  const kept = sorted(numbers).slice(cut, numbers.length - cut);
  return kept.length === 0 ? errors.num : sum(kept) / kept.length;
}

type Numbers = readonly number[];

/** Applies a function to the pairs of which both are numbers. */
function paired(x: Value, y: Value, apply: (x: Numbers, y: Numbers) => CellValue): CellValue {
  const a = matrixOf(x);
  const b = matrixOf(y);
  if (isCellError(a)) return a;
  if (isCellError(b)) return b;
  if (a.data.length !== b.data.length) return errors.na;
  // The first error stands, but that a pair with #NULL! in front is passed over for another.
  let failed: CellError | undefined;
  const xs: number[] = [];
  const ys: number[] = [];
  for (let i = 0; i < a.data.length; i++) {
    const p = a.data[i] ?? null;
    const q = b.data[i] ?? null;
    if (isCellError(p) && p.error === errors.nul.error) {
      failed = p;
      continue;
    }
    if (isCellError(p)) return p;
    if (isCellError(q)) return q;
    if (typeof p !== "number" || typeof q !== "number") continue;
    xs.push(p);
    ys.push(q);
  }
  return failed ?? apply(xs, ys);
}

function regression(to: Natives): void {
  const library = { SLOPE, INTERCEPT, RSQ, STEYX, CORREL };
  for (const [name, apply] of Object.entries(library))
    to.add(name === "CORREL" ? "CORREL PEARSON" : name, "r r", (y, x) =>
      paired(y, x, (ys, xs) =>
        ys.length < (name === "STEYX" ? 3 : 2) || isFlat(xs)
          ? errors.div0
          : fromLibrary(apply([...ys], [...xs])),
      ),
    );
  to.add("FORECAST FORECAST.LINEAR", "n r r", (at, y, x) =>
    paired(y, x, (ys, xs) =>
      ys.length < 2 || isFlat(xs) ? errors.div0 : fromLibrary(FORECAST(at, [...ys], [...xs])),
    ),
  );
}

/** All the same: no line can lean on them. */
function isFlat(x: Numbers): boolean {
  return x.every((each) => each === x[0]);
}

function counting(to: Natives): void {
  to.add("FACT", "n", (n) => (n < 0 ? errors.num : fromLibrary(FACT(Math.trunc(n)))))
    .add("COMBIN", "i i", chosen)
    .add("COMBINA", "i i", (n, k) => (n === 0 && k === 0 ? 1 : chosen(n + k - 1, k)))
    .add("PERMUT", "i i", (n, k) =>
      n <= 0 || k < 0 || k > n ? errors.num : fromLibrary(PERMUT(n, k)),
    )
    .add("PERMUTATIONA", "i i", (n, k) => (n < 0 || k < 0 ? errors.num : finite(n ** k)));
  const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));
  const multiple = (a: number, b: number) => (a === 0 || b === 0 ? 0 : (a / common(a, b)) * b);
  for (const [name, join] of Object.entries({ GCD: common, LCM: multiple }))
    to.add(name, "r+", (...args) => {
      if (args[0] === null) return errors.na;
      const numbers = divisible(args);
      const found = isCellError(numbers) ? numbers : numbers.reduce(join);
      return typeof found === "number" && found >= 2 ** 53 ? errors.num : found;
    });
}

/** The library types leave this one out. */
const upperChiSquare = (CHISQ.DIST as unknown as { RT(x: number, freedom: number): unknown }).RT;

/** n over k, by multiplying so that nothing overflows on the way. */
function chosen(n: number, k: number): CellValue {
  if (n < 0 || k < 0 || k > n) return errors.num;
  const few = Math.min(k, n - k);
  let total = 1;
  spend(few);
  for (let i = 1; i <= few; i++) total = (total * (n - few + i)) / i;
  return finite(total < 2 ** 53 ? Math.round(total) : total);
}

/** Whole numbers from 0 up, of arguments that may be ranges; truth values are refused. */
function divisible(args: readonly Value[]): number[] | CellError {
  const out: number[] = [];
  let failed: CellError | undefined;
  for (const arg of args) {
    // A blank cell by itself is passed over; among others it is 0.
    const isLone = arg instanceof Area && arg.rows * arg.cols === 1;
    forEachValue([arg], (value) => {
      if (value === null && isLone) return;
      const x = typeof value === "boolean" ? errors.value : toNumber(value);
      if (typeof x === "number") out.push(x);
      else failed ??= x;
    });
  }
  if (failed || out.length === 0) return failed ?? errors.value;
  return out.some((x) => x < 0 || x >= 2 ** 53) ? errors.num : out.map(Math.trunc);
}

function normal(z: number, cumulative: boolean, sd = 1): number {
  return cumulative ? normalChance(z) : Math.exp((-z * z) / 2) / (sd * Math.sqrt(2 * Math.PI));
}

function distributions(to: Natives): void {
  to.add("NORM.DIST NORMDIST", "n n n b", (x, mean, sd, cumulative) =>
    sd <= 0 ? errors.num : normal((x - mean) / sd, cumulative, sd),
  )
    .add("NORM.INV NORMINV", "n n n", (p, mean, sd) =>
      p <= 0 || p >= 1 || sd <= 0 ? errors.num : mean + sd * normalQuantile(p),
    )
    .add("NORM.S.DIST", "n b", (z, cumulative) => normal(z, cumulative))
    .add("NORMSDIST", "n", (z) => normalChance(z))
    .add("NORM.S.INV NORMSINV", "n", (p) => (p <= 0 || p >= 1 ? errors.num : normalQuantile(p)))
    .add("T.DIST", "n n b", (x, freedom, cumulative) =>
      freedom < 1
        ? errors.num
        : (cumulative ? studentChance : studentDensity)(x, Math.trunc(freedom)),
    )
    .add("T.DIST.RT", "n n", (x, freedom) =>
      freedom < 1 ? errors.num : studentChance(-x, Math.trunc(freedom)),
    )
    .add("T.DIST.2T", "n n", (x, freedom) =>
      freedom < 1 || x < 0 ? errors.num : 2 * studentChance(-x, Math.trunc(freedom)),
    )
    .add("TDIST", "n n n", (x, freedom, tails) =>
      freedom < 1 || x < 0 || (tails !== 1 && tails !== 2)
        ? errors.num
        : tails * studentChance(-x, Math.trunc(freedom)),
    )
    .add("T.INV", "n n", (p, freedom) =>
      p <= 0 || p >= 1 || freedom < 1 ? errors.num : studentQuantile(p, Math.trunc(freedom)),
    )
    .add("T.INV.2T TINV", "n n", (p, freedom) =>
      p <= 0 || p > 1 || freedom < 1 ? errors.num : -studentQuantile(p / 2, Math.trunc(freedom)),
    )
    .add("CHISQ.DIST", "n n b", (x, freedom, cumulative) =>
      x < 0 || freedom < 1 ? errors.num : fromLibrary(CHISQ.DIST(x, inSteps(freedom), cumulative)),
    )
    .add("CHISQ.INV", "n n", (p, freedom) =>
      p < 0 || p >= 1 || freedom < 1 ? errors.num : fromLibrary(CHISQ.INV(p, inSteps(freedom))),
    )
    .add("CHISQ.DIST.RT CHIDIST", "n i", (x, freedom) =>
      x < 0 || freedom < 1
        ? errors.num
        : // The library takes the upper tail from 1 on only.
          x < 1
          ? 1 - Number(CHISQ.DIST(x, inSteps(freedom), true))
          : fromLibrary(upperChiSquare(x, inSteps(freedom))),
    )
    .add("F.DIST", "n n n b", (x, first, second, cumulative) =>
      x < 0 || first < 1 || second < 1
        ? errors.num
        : fromLibrary(F.DIST(x, Math.trunc(first), Math.trunc(second), cumulative)),
    )
    .add("CONFIDENCE.NORM CONFIDENCE", "n n n", (alpha, sd, size) =>
      alpha <= 0 || alpha >= 1 || sd <= 0 || size < 1
        ? errors.num
        : (-normalQuantile(alpha / 2) * sd) / Math.sqrt(Math.trunc(size)),
    )
    .add("Z.TEST ZTEST", "r n n?", (range, at, sd) => {
      const numbers = numbersIn([range]);
      if (isCellError(numbers)) return numbers;
      if (numbers.length === 0) return errors.na;
      if (numbers.length === 1) return errors.div0;
      if (sd !== undefined && sd <= 0) return errors.num;
      const mean = sum(numbers) / numbers.length;
      const own = sum(numbers.map((x) => (x - mean) ** 2)) / (numbers.length - 1);
      const error = (sd ?? Math.sqrt(own)) / Math.sqrt(numbers.length);
      return error > 0 ? normalChance((at - mean) / error) : errors.div0;
    })
    .add("CONFIDENCE.T", "n n n", (alpha, sd, size) =>
      alpha <= 0 || alpha >= 1 || sd <= 0 || size < 1
        ? errors.num
        : size < 2
          ? errors.div0
          : (-studentQuantile(alpha / 2, Math.trunc(size) - 1) * sd) / Math.sqrt(Math.trunc(size)),
    );
}
