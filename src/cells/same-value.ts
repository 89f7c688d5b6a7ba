import { type CellValue, isBlankCell, isCellError } from "./value";

/** Programs differ in the last digits of what they compute; 1e-12 is for sums that come to 0. */
export function isSameNumber(a: number, b: number): boolean {
  return a === b || Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b)) + 1e-12;
}

/**
 * Whether a typed number is another one, rounded to the decimals that it is written with: 41 stands
 * for anything that rounds to 41.
 */
export function isRoundingOf(value: number, exact: number): boolean {
  if (isSameNumber(value, exact)) return true;
  const decimals = /\.(\d+)$/.exec(String(value))?.[1]?.length ?? 0;
  return decimals <= 6 && Math.abs(value - exact) <= 0.5 * 10 ** -decimals * (1 + 1e-9);
}

/** The same to a reader: numbers but for their last digits, blanks of either kind, errors by code. */
export function isSameValue(a: CellValue, b: CellValue): boolean {
  if (typeof a === "number" && typeof b === "number") return isSameNumber(a, b);
  return isIdentical(a, b) || (isBlankCell(a) && isBlankCell(b));
}

/**
 * Whether a stored value is what its formula gives. A formula that points at a blank gives 0; some
 * programs store nothing for it, and some store TRUE as 1.
 */
export function agrees(stored: CellValue, fresh: CellValue): boolean {
  return (
    isSameValue(stored, fresh) ||
    (isBlankCell(stored) && fresh === 0) ||
    (typeof fresh === "boolean" && stored === Number(fresh))
  );
}

/** The same to the last digit; errors by code. */
export function isIdentical(a: CellValue, b: CellValue): boolean {
  return a === b || (isCellError(a) && isCellError(b) && a.error === b.error);
}
