import { format } from "numfmt";
import { type CellError, type CellValue, errors, isCellError, longestText } from "../../cells";
import type { Value } from "../area";
import { numberText, toNumber, toText } from "../coerce";
import { Unsupported } from "../values";
import type { Calendar } from "./dates";
import { formattedNumber } from "./format";
import { rounded } from "./math";
import type { Natives } from "./natives";
import { forEachValue, oneOf } from "./read";
import { Wildcard } from "./wildcard";

export function addText(to: Natives, { date1904 }: Calendar): void {
  to.add("LEFT LEFTB", "t n?", (text, count = 1) =>
    count < 0 ? errors.value : text.slice(0, count),
  )
    .add("RIGHT RIGHTB", "t n?", (text, count = 1) =>
      count < 0 ? errors.value : text.slice(Math.max(0, text.length - Math.trunc(count))),
    )
    .add("MID MIDB", "t n n", (text, start, count) =>
      start < 1 || count < 0
        ? errors.value
        : text.slice(Math.trunc(start) - 1, Math.trunc(start) - 1 + Math.trunc(count)),
    )
    .add("LEN LENB", "t", (text) => text.length)
    .add("TRIM", "t", (text) => text.replace(/^ +| +$/g, "").replace(/ {2,}/g, " "))
    .add("UPPER", "t", upperCase)
    .add("LOWER", "t", (text) => text.toLowerCase())
    .add("PROPER", "t", (text) =>
      text
        .toLowerCase()
        .replace(/\p{L}+/gu, (word) => word.charAt(0).toUpperCase() + word.slice(1)),
    )
    .add("EXACT", "t t", (a, b) => a === b)
    .add("REPT", "t n", (text, times) =>
      times < 0 || text.length * Math.trunc(times) > longestText
        ? errors.value
        : text.repeat(Math.trunc(times)),
    )
    .add("REPLACE REPLACEB", "t n n t", (text, start, count, by) =>
      start < 1 || count < 0
        ? errors.value
        : text.slice(0, Math.trunc(start) - 1) +
          by +
          text.slice(Math.trunc(start) - 1 + Math.trunc(count)),
    )
    .add("SUBSTITUTE", "t t t n?", substitute)
    .add("FIND FINDB", "t t n?", (part, text, start = 1) =>
      position(text.indexOf(part, Math.trunc(start) - 1), text, start),
    )
    .add("SEARCH SEARCHB", "t t n?", search)
    .add("CLEAN", "t", (text) => [...text].filter((sign) => sign >= " ").join(""))
    .add("CHAR", "n", character)
    .add("CODE", "t", (text) => (text === "" ? errors.value : code(text)))
    .add("UNICHAR", "n", (n) =>
      n < 1 || n > 0x10ffff ? errors.value : String.fromCodePoint(Math.trunc(n)),
    )
    .add("UNICODE", "t", (text) => text.codePointAt(0) ?? errors.value)
    .add("T", "r", (value) => {
      const one = oneOf(value);
      return typeof one === "string" || isCellError(one) ? one : "";
    })
    .add("N", "r", (value) => {
      const one = oneOf(value);
      if (typeof one === "number" || isCellError(one)) return one;
      return one === true ? 1 : 0;
    })
    .add("VALUE", "s", (value) => (typeof value === "boolean" ? errors.value : toNumber(value)))
    .add("TEXT", "s t", (value, pattern) => formatted(value, pattern, date1904))
    .add("FIXED", "n n? b?", fixed)
    .add("VALUETOTEXT", "s i?", (value, form = 0) =>
      form !== 0 && form !== 1
        ? errors.value
        : isCellError(value)
          ? value.error
          : form === 1 && typeof value === "string"
            ? `"${value.replace(/"/g, '""')}"`
            : toText(value),
    )
    .add("CONCATENATE", "t+", (...texts) => limited(texts.join("")))
    .add("CONCAT", "r+", (...args) => joined("", false, ...args))
    .add("TEXTJOIN", "t b r+", joined)
    .add("HYPERLINK", "t s?", (address, shown) => (shown === undefined ? address : (shown ?? 0)));
}

/** Letter by letter: a letter whose capital is two letters (ß) stays as it is. */
function upperCase(text: string): string {
  const upper = text.toUpperCase();
  if (upper.length === text.length) return upper;
  return [...text]
    .map((sign) => (sign.toUpperCase().length === sign.length ? sign.toUpperCase() : sign))
    .join("");
}

function limited(text: string): CellValue {
  return text.length > longestText ? errors.value : text;
}

function joined(separator: string, skipsEmpty: boolean, ...args: Value[]): CellValue {
  const texts: string[] = [];
  let failed: CellError | undefined;
  forEachValue(args, (value) => {
    const text = toText(value);
    if (typeof text !== "string") failed ??= text;
    else if (text !== "" || !skipsEmpty) texts.push(text);
  });
  return failed ?? limited(texts.join(separator));
}

function substitute(text: string, old: string, by: string, which?: number): CellValue {
  if (which !== undefined && which < 1) return errors.value;
  if (old === "") return text;
  if (which === undefined) return limited(text.split(old).join(by));
  let at = -1;
  for (let i = 0; i < Math.trunc(which); i++) {
    at = text.indexOf(old, at < 0 ? 0 : at + old.length);
    if (at < 0) return text;
  }
  return limited(text.slice(0, at) + by + text.slice(at + old.length));
}

function position(index: number, text: string, start: number): CellValue {
  return index < 0 || start < 1 || start > text.length + 1 ? errors.value : index + 1;
}

function search(part: string, text: string, start = 1): CellValue {
  if (start < 1) return errors.value;
  const from = Math.trunc(start) - 1;
  return position(new Wildcard(part).search(text, from), text, start);
}

const otherSet = "CHAR or CODE past 127, which differs between Windows and Mac: use UNICHAR";

function character(n: number): CellValue {
  const number = Math.trunc(n);
  if (number < 1 || number > 255) return errors.value;
  if (number > 127) throw new Unsupported(otherSet);
  return String.fromCharCode(number);
}

function code(text: string): number {
  const unit = text.charCodeAt(0);
  if (unit > 127) throw new Unsupported(otherSet);
  return unit;
}

function formatted(value: CellValue, pattern: string, date1904: boolean): CellValue {
  if (isCellError(value)) return value;
  // Text that reads as a number or date is formatted as one.
  const number = typeof value === "boolean" ? errors.value : toNumber(value);
  if (typeof number !== "number")
    return pattern === "" ? toText(value) : format(pattern, toText(value));
  if (pattern === "") return number < 0 ? "-" : "";
  return formattedNumber(number, pattern, date1904);
}

function fixed(x: number, places = 2, plain = false): CellValue {
  const value = rounded(x, places, (each) => Math.sign(each) * Math.round(Math.abs(each)));
  if (typeof value !== "number" || places >= 128) return isCellError(value) ? value : errors.value;
  const decimals = Math.max(0, Math.trunc(places));
  // Past 15 digits a sheet knows zeros only.
  const text =
    decimals === 0
      ? numberText(value)
      : Math.abs(value) < 1e15
        ? value.toFixed(Math.min(decimals, 100)) + "0".repeat(Math.max(0, decimals - 100))
        : `${numberText(value)}.${"0".repeat(decimals)}`;
  if (plain) return text;
  const [whole = "", fraction] = text.split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  return fraction === undefined ? grouped : `${grouped}.${fraction}`;
}
