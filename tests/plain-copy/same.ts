import type { CellValue } from "../../src/cells";

const isError = (value: unknown): value is { error: string } =>
  typeof value === "object" && value !== null;

/** Why two results are not the same for a reader of the sheet, or undefined. */
export function differs(own: CellValue | undefined, native: CellValue | undefined) {
  const [a, b] = [own ?? "", native ?? ""];
  if (isError(a) || isError(b))
    return isError(a) && isError(b) ? undefined : `${shown(a)} and ${shown(b)}`;
  // 1e-9: a spreadsheet has its own powers, normal and Student distributions.
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a)) ? undefined : `${a} and ${b}`;
  return a === b ? undefined : `${shown(a)} and ${shown(b)}`;
}

const shown = (value: CellValue) => (isError(value) ? value.error : JSON.stringify(value));
