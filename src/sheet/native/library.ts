import { type CellError, type CellValue, errors } from "../../cells";

const known = new Set(["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NULL!", "#REF!", "#NAME?"]);

/** A result of the formula library as a value: its errors are Error objects with the code as text. */
export function fromLibrary(result: unknown): CellValue {
  if (typeof result === "number") return Number.isFinite(result) ? result : errors.num;
  if (typeof result === "string" || typeof result === "boolean") return result;
  const code = result instanceof Error ? result.message : "";
  return known.has(code) ? ({ error: code } satisfies CellError) : errors.value;
}
