import type { Operator } from "./expression";

/**
 * One loop an operator, written out: a shared loop over a callback costs several times more. A
 * comparison gives 1 or 0, and NaN where a side is NaN, so that a choice over an unknown is itself
 * unknown.
 */
export function operate(
  operator: Operator,
  a: Float64Array,
  b: Float64Array,
  out: Float64Array,
  count: number,
): void {
  switch (operator) {
    case "+":
      for (let i = 0; i < count; i++) out[i] = (a[i] as number) + (b[i] as number);
      break;
    case "-":
      for (let i = 0; i < count; i++) out[i] = (a[i] as number) - (b[i] as number);
      break;
    case "*":
      for (let i = 0; i < count; i++) out[i] = (a[i] as number) * (b[i] as number);
      break;
    case "/":
      for (let i = 0; i < count; i++) out[i] = (a[i] as number) / (b[i] as number);
      break;
    case "^":
      for (let i = 0; i < count; i++) out[i] = (a[i] as number) ** (b[i] as number);
      break;
    case "<":
      for (let i = 0; i < count; i++) {
        const x = a[i] as number;
        const y = b[i] as number;
        out[i] = x < y ? 1 : x >= y ? 0 : Number.NaN;
      }
      break;
    case "<=":
      for (let i = 0; i < count; i++) {
        const x = a[i] as number;
        const y = b[i] as number;
        out[i] = x <= y ? 1 : x > y ? 0 : Number.NaN;
      }
      break;
    case ">":
      for (let i = 0; i < count; i++) {
        const x = a[i] as number;
        const y = b[i] as number;
        out[i] = x > y ? 1 : x <= y ? 0 : Number.NaN;
      }
      break;
    case ">=":
      for (let i = 0; i < count; i++) {
        const x = a[i] as number;
        const y = b[i] as number;
        out[i] = x >= y ? 1 : x < y ? 0 : Number.NaN;
      }
  }
}
