import {
  CHISQ,
  COMBIN,
  CONFIDENCE,
  CORREL,
  F,
  FACT,
  FORECAST,
  GCD,
  INTERCEPT,
  LCM,
  NORM,
  PERMUT,
  RSQ,
  SLOPE,
  STEYX,
} from "@formulajs/formulajs";
import { type CellValue, errors, isCellError } from "../../cells";
import type { Value } from "../area";
import { quantile, sorted, sum } from "./aggregate";
import { fromLibrary } from "./library";
import type { Natives } from "./natives";
import { matrixOf, numbersIn } from "./read";
import { studentCdf, studentDensity, studentInverse } from "./student";

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
      inclusive(range, Math.trunc(quarter) / 4),
    )
    .add("SUMXMY2", "r r", (x, y) =>
      paired(x, y, (a, b) => sum(a.map((each, i) => (each - b[i]!) ** 2))),
    );
  regression(to);
  counting(to);
  distributions(to);
}

function kth(range: Value, k: number, fromTop: boolean): CellValue {
  const numbers = numbersIn([range]);
  if (isCellError(numbers)) return numbers;
  const place = Math.ceil(k);
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

type Numbers = readonly number[];

/** Applies a function to the pairs of which both are numbers. */
function paired(x: Value, y: Value, apply: (x: Numbers, y: Numbers) => CellValue): CellValue {
  const a = matrixOf(x);
  const b = matrixOf(y);
  if (isCellError(a)) return a;
  if (isCellError(b)) return b;
  if (a.data.length !== b.data.length) return errors.na;
  const xs: number[] = [];
  const ys: number[] = [];
  for (let i = 0; i < a.data.length; i++) {
    const p = a.data[i] ?? null;
    const q = b.data[i] ?? null;
    if (isCellError(p)) return p;
    if (isCellError(q)) return q;
    if (typeof p !== "number" || typeof q !== "number") continue;
    xs.push(p);
    ys.push(q);
  }
  return apply(xs, ys);
}

function regression(to: Natives): void {
  const library = { SLOPE, INTERCEPT, RSQ, STEYX, CORREL };
  for (const [name, apply] of Object.entries(library))
    to.add(name === "CORREL" ? "CORREL PEARSON" : name, "r r", (y, x) =>
      paired(y, x, (ys, xs) =>
        ys.length < (name === "STEYX" ? 3 : 2) ? errors.div0 : fromLibrary(apply([...ys], [...xs])),
      ),
    );
  to.add("FORECAST FORECAST.LINEAR", "n r r", (at, y, x) =>
    paired(y, x, (ys, xs) =>
      ys.length < 2 ? errors.div0 : fromLibrary(FORECAST(at, [...ys], [...xs])),
    ),
  );
}

function counting(to: Natives): void {
  to.add("FACT", "n", (n) => (n < 0 ? errors.num : fromLibrary(FACT(Math.trunc(n)))))
    .add("COMBIN", "n n", (n, k) => fromLibrary(COMBIN(Math.trunc(n), Math.trunc(k))))
    .add("PERMUT", "n n", (n, k) => fromLibrary(PERMUT(Math.trunc(n), Math.trunc(k))));
  const over = { GCD, LCM };
  for (const [name, apply] of Object.entries(over))
    to.add(name, "r+", (...args) => {
      const numbers = numbersIn(args);
      return isCellError(numbers) ? numbers : fromLibrary(apply(...numbers.map(Math.trunc)));
    });
}

function distributions(to: Natives): void {
  to.add("NORM.DIST NORMDIST", "n n n b", (x, mean, sd, cumulative) =>
    sd <= 0 ? errors.num : fromLibrary(NORM.DIST(x, mean, sd, cumulative)),
  )
    .add("NORM.INV NORMINV", "n n n", (p, mean, sd) =>
      p <= 0 || p >= 1 || sd <= 0 ? errors.num : fromLibrary(NORM.INV(p, mean, sd)),
    )
    .add("NORM.S.DIST", "n b", (z, cumulative) => fromLibrary(NORM.S.DIST(z, cumulative)))
    .add("NORMSDIST", "n", (z) => fromLibrary(NORM.S.DIST(z, true)))
    .add("NORM.S.INV NORMSINV", "n", (p) =>
      p <= 0 || p >= 1 ? errors.num : fromLibrary(NORM.S.INV(p)),
    )
    .add("T.DIST", "n n b", (x, freedom, cumulative) =>
      freedom < 1 ? errors.num : (cumulative ? studentCdf : studentDensity)(x, Math.trunc(freedom)),
    )
    .add("T.DIST.RT", "n n", (x, freedom) =>
      freedom < 1 ? errors.num : studentCdf(-x, Math.trunc(freedom)),
    )
    .add("T.DIST.2T", "n n", (x, freedom) =>
      freedom < 1 || x < 0 ? errors.num : 2 * studentCdf(-x, Math.trunc(freedom)),
    )
    .add("T.INV", "n n", (p, freedom) =>
      p <= 0 || p >= 1 || freedom < 1 ? errors.num : studentInverse(p, Math.trunc(freedom)),
    )
    .add("T.INV.2T TINV", "n n", (p, freedom) =>
      p <= 0 || p > 1 || freedom < 1 ? errors.num : -studentInverse(p / 2, Math.trunc(freedom)),
    )
    .add("CHISQ.DIST", "n n b", (x, freedom, cumulative) =>
      x < 0 || freedom < 1
        ? errors.num
        : fromLibrary(CHISQ.DIST(x, Math.trunc(freedom), cumulative)),
    )
    .add("CHISQ.INV", "n n", (p, freedom) =>
      p < 0 || p >= 1 || freedom < 1 ? errors.num : fromLibrary(CHISQ.INV(p, Math.trunc(freedom))),
    )
    .add("F.DIST", "n n n b", (x, first, second, cumulative) =>
      x < 0 || first < 1 || second < 1
        ? errors.num
        : fromLibrary(F.DIST(x, Math.trunc(first), Math.trunc(second), cumulative)),
    )
    .add("CONFIDENCE.NORM CONFIDENCE", "n n n", (alpha, sd, size) =>
      alpha <= 0 || alpha >= 1 || sd <= 0 || size < 1
        ? errors.num
        : fromLibrary(CONFIDENCE.NORM(alpha, sd, Math.trunc(size))),
    )
    .add("CONFIDENCE.T", "n n n", (alpha, sd, size) =>
      alpha <= 0 || alpha >= 1 || sd <= 0 || size < 2
        ? errors.num
        : fromLibrary(CONFIDENCE.T(alpha, sd, Math.trunc(size))),
    );
}
