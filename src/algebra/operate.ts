import type { Operator } from "./expression";

/** One loop an operator, written out: a shared loop over a callback costs several times more. */
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
      for (let i = 0; i < count; i++)
        out[i] = truth((a[i] as number) < (b[i] as number), a[i], b[i]);
      break;
    case "<=":
      for (let i = 0; i < count; i++)
        out[i] = truth((a[i] as number) <= (b[i] as number), a[i], b[i]);
      break;
    case ">":
      for (let i = 0; i < count; i++)
        out[i] = truth((a[i] as number) > (b[i] as number), a[i], b[i]);
      break;
    case ">=":
      for (let i = 0; i < count; i++)
        out[i] = truth((a[i] as number) >= (b[i] as number), a[i], b[i]);
  }
}

/** 1 or 0; NaN where a side is NaN, so that a choice over an unknown is itself unknown. */
function truth(holds: boolean, a: number | undefined, b: number | undefined): number {
  if (holds) return 1;
  return Number.isNaN(a) || Number.isNaN(b) ? Number.NaN : 0;
}
