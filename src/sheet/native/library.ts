import { type ErrorValue, errors, type Scalar } from "../values";

const known = new Set(["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NULL!", "#REF!", "#NAME?"]);

/** A result of the formula library as a value: its errors are Error objects with the code as text. */
export function fromLibrary(result: unknown): Scalar {
  if (typeof result === "number") return Number.isFinite(result) ? result : errors.num;
  if (typeof result === "string" || typeof result === "boolean") return result;
  const code = result instanceof Error ? result.message : "";
  return known.has(code) ? ({ error: code } satisfies ErrorValue) : errors.value;
}
