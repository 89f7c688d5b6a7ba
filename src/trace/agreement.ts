import type { CellValue, JobFile } from "../job";
import { evaluateAt } from "./scratch";
import type { Agreement, Spot } from "./trace-data";

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
  const fresh = file.fresh?.(at.sheet, at.row, at.col);
  const found = fresh && "value" in fresh ? fresh : evaluateAt(formula, at, file);
  if ("why" in found) return { state: "not evaluated", why: found.why };
  return same(stored, found.value) ? { state: "agrees" } : { state: "differs", fresh: found.value };
}

/** The same for a reader; a blank and "" too, and a blank for the 0 of a formula that points at one. */
export function same(stored: CellValue, fresh: CellValue): boolean {
  if (typeof stored === "number" && typeof fresh === "number")
    return Math.abs(stored - fresh) <= 1e-9 * Math.max(Math.abs(stored), Math.abs(fresh)) + 1e-12;
  if (isError(stored) || isError(fresh))
    return isError(stored) && isError(fresh) && stored.error === fresh.error;
  if (isBlank(stored)) return isBlank(fresh) || fresh === 0;
  return stored === fresh;
}

function isError(value: CellValue): value is Exclude<CellValue, number | string | boolean | null> {
  return typeof value === "object" && value !== null;
}

const isBlank = (value: CellValue) => value === null || value === "";
