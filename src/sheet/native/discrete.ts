import { BINOM } from "@formulajs/formulajs";
import { type CellValue, errors } from "../../cells";
import { finite } from "../coerce";
import { spend } from "../work";
import { betaWeight, incompleteBeta, inverseBeta } from "./beta";
import { fromLibrary } from "./library";
import type { Natives } from "./natives";

/** The chance of k of n, or of k at most by the incomplete beta function (NIST DLMF 8.17.5). */
function binomial(k: number, n: number, p: number, cumulative: boolean): CellValue {
  if (k < 0 || k > n || p < 0 || p > 1) return errors.num;
  if (!cumulative) return fromLibrary(BINOM.DIST(k, n, p, false));
  if (k === n || p === 0) return 1;
  return incompleteBeta(1 - p, n - k, k + 1);
}

function between(n: number, p: number, low: number, high = low): CellValue {
  if (n < 0 || p < 0 || p > 1 || low < 0 || low > n || high < low || high > n) return errors.num;
  let total = 0;
  spend(high - low);
  for (let k = low; k <= high; k++) total += Number(binomial(k, n, p, false));
  return total;
}

/** The least k of which the chance of k at most reaches a share. */
function binomialInverse(n: number, p: number, share: number): CellValue {
  if (n < 0 || p <= 0 || p >= 1 || share <= 0 || share >= 1) return errors.num;
  let k = 0;
  while (k < n && Number(binomial(k, n, p, true)) < share) {
    spend(50);
    k++;
  }
  return k;
}

/** The F distribution through the incomplete beta function (Abramowitz and Stegun, 26.6.2). */
function upperF(x: number, first: number, second: number): CellValue {
  if (x < 0 || first < 1 || second < 1) return errors.num;
  return incompleteBeta(second / (second + first * x), second / 2, first / 2);
}

function inverseF(share: number, first: number, second: number): CellValue {
  if (share < 0 || share > 1 || first < 1 || second < 1) return errors.num;
  if (share === 0) return 0;
  const y = inverseBeta(share, first / 2, second / 2);
  return finite((second * y) / (first * (1 - y)));
}

const complement = (chance: CellValue): CellValue =>
  typeof chance === "number" ? 1 - chance : chance;

/** Chances of counts, and of ratios of variances. */
export function addDiscrete(to: Natives): void {
  to.add("BETA.DIST", "n n n b n? n?", (x, a, b, cumulative, low = 0, high = 1) => {
    if (a <= 0 || b <= 0 || x < low || x > high || low === high) return errors.num;
    const y = (x - low) / (high - low);
    if (cumulative) return incompleteBeta(y, a, b);
    return finite(betaWeight(y, a, b) / (y * (1 - y) * (high - low)));
  });
  to.add("BETADIST", "n n n n? n?", (x, a, b, low = 0, high = 1) =>
    a <= 0 || b <= 0 || x < low || x > high || low === high
      ? errors.num
      : incompleteBeta((x - low) / (high - low), a, b),
  );
  to.add("BETA.INV BETAINV", "n n n n? n?", (share, a, b, low = 0, high = 1) =>
    share <= 0 || share > 1 || a <= 0 || b <= 0
      ? errors.num
      : low + (high - low) * inverseBeta(share, a, b),
  );
  to.add("BINOM.DIST BINOMDIST", "i i n b", binomial)
    .add("BINOM.DIST.RANGE", "i n i i?", between)
    .add("BINOM.INV CRITBINOM", "i n n", binomialInverse)
    .add("NEGBINOM.DIST", "i i n b", (failures, successes, p, cumulative) => {
      if (failures < 0 || successes < 1 || p <= 0 || p >= 1) return errors.num;
      if (cumulative) return incompleteBeta(p, successes, failures + 1);
      const share = successes / (successes + failures);
      return finite(share * Number(binomial(successes, successes + failures, p, false)));
    })
    .add("F.DIST.RT FDIST", "n i i", upperF)
    .add("F.INV", "n i i", inverseF)
    .add("F.INV.RT FINV", "n i i", (share, first, second) => inverseF(1 - share, first, second));
  const density = to.get("F.DIST")?.call as
    | ((x: number, first: number, second: number, cumulative: boolean) => CellValue)
    | undefined;
  to.add("F.DIST", "n i i b", (x, first, second, cumulative) =>
    cumulative || !density
      ? complement(upperF(x, first, second))
      : density(x, first, second, false),
  );
}
