import { formulaNumber } from "../../cells";
/** Small pieces of native formula text. */

/** An error of the kind of a value that cannot be used; the words are for whoever reads the formula. */
export function wrong(say: string): string {
  return `VALUE(${quoted(say)})`;
}

function quoted(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

/** A number in at most fifteen digits, as a spreadsheet keeps it. */
export function digits(value: number): string {
  const text = formulaNumber(value);
  return value < 0 ? `(${text})` : text;
}

/** Stands for a limit that is not there. */
export const endless = 1e300;

/** The sum of a column over the rows that meet every condition, such as `Table!$A$2:$A$9=B2`. */
export function sumOver(column: string, conditions: readonly string[]): string {
  const factors = conditions.map((condition) => `(${condition})`);
  return `SUMPRODUCT(${[...factors, column].join("*")})`;
}

/**
 * The number of the first row that meets every condition, 0 for none; of columns that start at the
 * same row, and with fewer rows than `most`.
 */
export function firstOver(numbers: string, conditions: readonly string[]): string {
  const factors = conditions.map((condition) => `(${condition})`);
  return `MOD(${most}-SUMPRODUCT(MAX(${[...factors, `(${most}-${numbers})`].join("*")})),${most})`;
}

const most = 100000;
