import type { Operator } from "./expression";

type Comparison = "<" | "<=" | ">" | ">=";

export function isComparison(operator: Operator): operator is Comparison {
  return operator === "<" || operator === "<=" || operator === ">" || operator === ">=";
}

/**
 * A choice by comparison in one loop: `yes` where it holds, `no` where it does not, NaN where a
 * side is NaN. `a > b` is `b < a`, so two loops serve for four.
 */
export function select(
  operator: Comparison,
  left: Float64Array,
  right: Float64Array,
  yes: Float64Array,
  no: Float64Array,
  out: Float64Array,
  count: number,
): void {
  const turned = operator === ">" || operator === ">=";
  const a = turned ? right : left;
  const b = turned ? left : right;
  if (operator === "<" || operator === ">")
    for (let i = 0; i < count; i++) {
      const x = a[i] as number;
      const y = b[i] as number;
      out[i] = x < y ? (yes[i] as number) : x >= y ? (no[i] as number) : Number.NaN;
    }
  else
    for (let i = 0; i < count; i++) {
      const x = a[i] as number;
      const y = b[i] as number;
      out[i] = x <= y ? (yes[i] as number) : x > y ? (no[i] as number) : Number.NaN;
    }
}
