import {
  type CellValue,
  longestFormula,
  longestText,
  numberedErrors,
  parseRectangle,
} from "../cells";
import { encodeXString, escapeText, isWritable, needsSpacePreserve } from "./text";

/** Refuses what a cell cannot hold, before anything is changed. Throws a RangeError. */
export function checkContent(where: string, formula: string | null, value: CellValue): void {
  if (typeof value === "number" && !Number.isFinite(value)) {
    throw new RangeError(
      `${where}: ${value} is not a number a cell can hold; store an error such as #NUM!.`,
    );
  }
  if (typeof value === "string" && value.length > longestText) {
    throw new RangeError(
      `${where}: the text has ${value.length} characters; a cell holds ${longestText}.`,
    );
  }
  if (typeof value === "object" && value !== null && !value.error.startsWith("#")) {
    throw new RangeError(`${where}: "${value.error}" is not an error value such as #N/A.`);
  }
  if (formula === null) return;
  if (formula.trim() === "" || formula.startsWith("=")) {
    throw new RangeError(`${where}: give the formula without "=" and not blank.`);
  }
  if (formula.length > longestFormula) {
    throw new RangeError(
      `${where}: the formula has ${formula.length} characters; a cell holds ${longestFormula}.`,
    );
  }
  if (!isWritable(formula)) {
    throw new RangeError(`${where}: the formula holds a control character, which a file cannot.`);
  }
}

/** Refuses a range that does not start at its formula's cell. Throws a RangeError. */
export function checkAnchor(
  where: string,
  row: number,
  col: number,
  formula: string | null,
  arrayRef: string,
): void {
  const { top, left } = parseRectangle(arrayRef);
  if (formula === null || top !== row || left !== col)
    throw new RangeError(`${where}: the range ${arrayRef} must start at a formula's own cell.`);
}

/** The t attribute (null for none) and the elements that store a value. */
export function valueXml(prefix: string, value: CellValue, hasFormula: boolean) {
  const v = (text: string) => `<${prefix}v>${text}</${prefix}v>`;
  if (value === null) return { type: null, xml: "" };
  if (typeof value === "number") return { type: null, xml: v(String(value)) };
  if (typeof value === "boolean") return { type: "b", xml: v(value ? "1" : "0") };
  if (typeof value === "object") {
    const { error } = value;
    // Newer ones (#SPILL!, #CALC!…) are stored as #VALUE! beside metadata that says more.
    return { type: "e", xml: v(numberedErrors.includes(error) ? error : "#VALUE!") };
  }
  const text = escapeText(encodeXString(value));
  if (hasFormula) return { type: "str", xml: v(text) };
  // An inline string touches this part alone; a shared one would rewrite the strings part as well.
  const space = needsSpacePreserve(value) ? ' xml:space="preserve"' : "";
  return {
    type: "inlineStr",
    xml: `<${prefix}is><${prefix}t${space}>${text}</${prefix}t></${prefix}is>`,
  };
}

export function formulaXml(prefix: string, formula: string, arrayRef: string | null): string {
  const array = arrayRef === null ? "" : ` t="array" ref="${arrayRef}"`;
  return `<${prefix}f${array}>${escapeText(formula)}</${prefix}f>`;
}
