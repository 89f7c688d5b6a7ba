import { agrees, type CellValue, type Spot } from "../cells";
import type { JobFile } from "../job";
import { calculatorOf } from "./calculator";
import type { Agreement } from "./trace-data";

/** These give another value at every look. */
const volatile = /\b(TODAY|NOW|RAND|RANDBETWEEN|RANDARRAY)\s*\(/i;

/** Compares the stored value with what the formula (typed form, without "=") gives now. */
export function agreementOf(
  formula: string,
  at: Spot,
  stored: CellValue,
  file: JobFile,
): Agreement {
  const named = volatile.exec(formula)?.[1];
  if (named)
    return { state: "changes", why: `${named.toUpperCase()} gives another value at every look` };
  const found = calculatorOf(file).recompute(at.sheet, at.row, at.col);
  if ("unsupported" in found) return { state: "not evaluated", why: found.unsupported };
  return agrees(stored, found.value)
    ? { state: "agrees" }
    : { state: "differs", fresh: found.value };
}
