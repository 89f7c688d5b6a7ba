import { type CellValue, errors, isCellError } from "../../cells";
import { finite } from "../coerce";
import type { Natives } from "./natives";
import { matrixOf, numbersIn } from "./read";

const mostSteps = 100;

/** The rate at which payments at equal times come to nothing, by Newton's method from a guess. */
function rateOf(payments: readonly number[], guess: number): CellValue {
  if (!payments.some((x) => x > 0) || !payments.some((x) => x < 0)) return errors.num;
  let rate = guess;
  for (let i = 0; i < mostSteps; i++) {
    let value = 0;
    let slope = 0;
    for (const [time, payment] of payments.entries()) {
      value += payment / (1 + rate) ** time;
      slope -= (time * payment) / (1 + rate) ** (time + 1);
    }
    const step = value / slope;
    // Nothing is worth less than all of it: half the way there instead.
    rate = rate - step > -1 ? rate - step : (rate - 1) / 2;
    if (Math.abs(step) <= 1e-14 * Math.max(1, Math.abs(rate))) return finite(rate);
  }
  return errors.num;
}

export function addFinance(to: Natives): void {
  to.add("NPV", "n r+", (rate, ...args) => {
    const payments = numbersIn(args);
    if (isCellError(payments)) return payments;
    return finite(payments.reduce((total, each, i) => total + each / (1 + rate) ** (i + 1), 0));
  });
  to.add("IRR", "r n?", (range, guess = 0.1) => {
    const matrix = matrixOf(range);
    if (isCellError(matrix) || matrix.data.some(isCellError)) return errors.value;
    return rateOf(
      matrix.data.filter((value) => typeof value === "number"),
      guess,
    );
  });
}
