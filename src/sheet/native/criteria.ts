import { type CellValue, isCellError, onceForText } from "../../cells";
import { textNumber } from "../coerce";
import { wildcard } from "./wildcard";

/** Whether a cell meets a criterion such as ">=5", "a*", "<>" or 12. */
export interface Criterion {
  readonly test: (value: CellValue) => boolean;
  /** The one number or lower-case text that is looked for, where the criterion is that simple. */
  readonly exact?: number | string;
}

export function criterionOf(given: CellValue): Criterion {
  return typeof given === "string" ? ofText(given) : read(given);
}

/** A column of look-ups asks for the same texts again after every edit. */
const ofText = onceForText(50_000, (text) => read(text));

function read(given: CellValue): Criterion {
  if (given === null) return equalTo(0);
  if (typeof given === "number") return equalTo(given);
  if (typeof given === "boolean") return { test: (value) => value === given };
  if (isCellError(given))
    return { test: (value) => isCellError(value) && value.error === given.error };
  const sign = /^(<>|<=|>=|=|<|>)/.exec(given)?.[0] ?? "";
  const operand = given.slice(sign.length);
  switch (sign) {
    case "":
      // "" finds blanks and empty texts alike; "=" finds only true blanks.
      return operand === "" ? { test: (value) => value === null || value === "" } : equals(operand);
    case "=":
      return operand === "" ? { test: (value) => value === null } : equals(operand);
    case "<>": {
      if (operand === "") return { test: (value) => value !== null };
      const x = textNumber(operand);
      if (x !== undefined) return { test: (value) => value !== x };
      const { test } = equals(operand);
      return { test: (value) => !test(value) };
    }
    default:
      return ordered(sign, operand);
  }
}

function equals(operand: string): Criterion {
  const x = textNumber(operand);
  if (x !== undefined) return equalTo(x);
  const upper = operand.toUpperCase();
  if (upper === "TRUE" || upper === "FALSE")
    return { test: (value) => value === (upper === "TRUE") };
  if (/^#(N\/A|[A-Z0-9/]+[!?])$/.test(upper))
    return { test: (value) => isCellError(value) && value.error === upper };
  const pattern = wildcard(operand);
  if (pattern) return { test: (value) => typeof value === "string" && pattern.test(value) };
  const wanted = operand.toLowerCase();
  return {
    exact: wanted,
    test: (value) => typeof value === "string" && value.toLowerCase() === wanted,
  };
}

/** A number matches numbers and the texts that read as it. */
function equalTo(wanted: number): Criterion {
  return {
    exact: wanted,
    test: (value) =>
      value === wanted || (typeof value === "string" && textNumber(value) === wanted),
  };
}

function ordered(sign: string, operand: string): Criterion {
  if (operand === "") return { test: () => false };
  const x = textNumber(operand);
  const judge = (order: number) =>
    sign === "<" ? order < 0 : sign === "<=" ? order <= 0 : sign === ">" ? order > 0 : order >= 0;
  if (x !== undefined) return { test: (value) => typeof value === "number" && judge(value - x) };
  const text = operand.toLowerCase();
  if (text === "true" || text === "false")
    return {
      test: (value) => typeof value === "boolean" && judge(Number(value) - Number(text === "true")),
    };
  return {
    test: (value) => {
      if (typeof value !== "string") return false;
      const own = value.toLowerCase();
      return judge(own < text ? -1 : own > text ? 1 : 0);
    },
  };
}
