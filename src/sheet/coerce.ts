import { parseValue } from "numfmt";
import { type CellError, type CellValue, errors } from "../cells";

/** A value as a number: blank 0, TRUE 1, text that reads as a number or date; otherwise #VALUE!. */
export function toNumber(value: CellValue): number | CellError {
  if (typeof value === "number") return value;
  if (value === null) return 0;
  if (typeof value === "boolean") return value ? 1 : 0;
  if (typeof value === "string") return textNumber(value) ?? errors.value;
  return value;
}

/** The number a text stands for ("12", "5%", "2026-03-05"), or undefined. */
export function textNumber(text: string): number | undefined {
  const plain = text.trim();
  if (plain === "") return undefined;
  // Plain digits are the common case and need no format reader.
  if (/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain)) return Number(plain);
  if (isWord(plain)) return undefined;
  // Blanks around a date make it a text.
  const read = parseValue(text)?.value;
  return typeof read === "number" ? read : (dayFirst(text) ?? longTime(plain));
}

/** Hours, minutes and seconds of which the last one runs past its clock: 23:9999, 59:9999.5. */
function longTime(text: string): number | undefined {
  const [, first, second, third, part] =
    /^(\d\d?):(\d{1,4})(?::(\d{1,4}))?(\.\d*)?$/.exec(text) ?? [];
  const isShort = third === undefined && part !== undefined;
  const [hours = 0, minutes = 0, seconds = 0] = (
    isShort ? [0, first, second] : [first, second, third ?? 0]
  ).map(Number);
  if (first === undefined || hours > 23 || (minutes > 59 && (isShort || third))) return undefined;
  return hours / 24 + minutes / 1440 + (seconds + Number(part ?? 0)) / 86_400;
}

/** The serial number of a date such as 15/3/2024, whose first number can only be the day. */
function dayFirst(text: string): number | undefined {
  const [, day = "", month = "", year = ""] = /^(\d\d)\/(\d\d?)\/(\d{4})$/.exec(text) ?? [];
  // The calendar of 1900 has this day, which the format reader has not.
  if (day === "29" && year === "1900" && Number(month) === 2) return 60;
  const read = Number(day) > 12 ? parseValue(`${year}-${month}-${day}`)?.value : undefined;
  return typeof read === "number" ? read : undefined;
}

/** Whether a text begins with a letter as no number does: of words, only a month opens a date. */
function isWord(text: string): boolean {
  const letter = text.charCodeAt(0) | 32;
  return letter >= 97 && letter <= 122 && !months.has(text.slice(0, 3).toLowerCase());
}

const months = new Set("jan feb mar apr may jun jul aug sep oct nov dec".split(" "));

export function toText(value: CellValue): string | CellError {
  if (typeof value === "string") return value;
  if (value === null) return "";
  if (typeof value === "number") return numberText(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return value;
}

export function toBoolean(value: CellValue): boolean | CellError {
  if (typeof value === "boolean") return value;
  if (value === null) return false;
  if (typeof value === "number") return value !== 0;
  if (typeof value === "string") {
    const word = value.trim().toUpperCase();
    return word === "TRUE" ? true : word === "FALSE" ? false : errors.value;
  }
  return value;
}

/** A number as text joins show it: 15 significant digits, an exponent only for very long ones. */
export function numberText(value: number): string {
  const rounded = Number(value.toPrecision(15));
  if (rounded === 0) return "0";
  const [digits = "", power = "0"] = Math.abs(rounded).toExponential().split("e");
  const exponent = Number(power);
  const sign = rounded < 0 ? "-" : "";
  const figures = digits.replace(".", "");
  if (exponent >= 21 || (exponent < 0 && figures.length - exponent > 20))
    return `${sign}${digits}E${exponent < 0 ? "-" : "+"}${String(Math.abs(exponent)).padStart(2, "0")}`;
  if (exponent < 0) return `${sign}0.${"0".repeat(-exponent - 1)}${figures}`;
  if (figures.length <= exponent + 1) return sign + figures.padEnd(exponent + 1, "0");
  return `${sign}${figures.slice(0, exponent + 1)}.${figures.slice(exponent + 1)}`;
}

/** Numbers before text before booleans, text without regard to case; a blank takes the other's kind. */
export function compare(a: CellValue, b: CellValue): number {
  if (typeof a === "number" && typeof b === "number") return a < b ? -1 : a > b ? 1 : 0;
  const x = a === null ? blankLike(b) : a;
  const y = b === null ? blankLike(a) : b;
  const rank = rankOf(x) - rankOf(y);
  if (rank !== 0) return rank;
  if (typeof x === "string" && typeof y === "string") {
    if (x === y) return 0;
    const p = x.toLowerCase();
    const q = y.toLowerCase();
    return p < q ? -1 : p > q ? 1 : 0;
  }
  return Number(x) - Number(y);
}

function blankLike(other: CellValue): CellValue {
  if (typeof other === "string") return "";
  if (typeof other === "boolean") return false;
  return 0;
}

function rankOf(value: CellValue): number {
  if (typeof value === "number") return 0;
  if (typeof value === "string") return 1;
  return typeof value === "boolean" ? 2 : 3;
}

/** A number, or #NUM! where the arithmetic gave none. */
export function finite(value: number): number | CellError {
  return Number.isFinite(value) ? value : errors.num;
}
