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
    default:
      throw new Error("a comparison stands in a choice only");
  }
}
