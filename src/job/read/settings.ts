import { type Edition, findEdition, type System } from "../../editions";
import type { JobFit } from "../fit";
import { type CellValue, cellName, isBlankCell, type JobFile } from "../grid";
import { usualConstant, usualWindow } from "../rules";

/** A setting that cannot be used; the usual value stands in for it. */
export interface SettingProblem {
  readonly sheet: string;
  readonly cell: string;
  readonly what: string;
  readonly mend: string;
}

/** The job's settings, with the trade's usual values where the Job sheet says nothing. */
export interface Settings {
  readonly name: string;
  readonly system: System;
  readonly edition: Edition | undefined;
  readonly method: string;
  readonly low: number;
  readonly high: number;
  readonly constant: number;
  readonly interval: number;
  readonly problems: readonly SettingProblem[];
}

const usualInterval = 365;

export function readSettings(file: JobFile, fit: JobFit): Settings {
  const problems: SettingProblem[] = [];
  const place = (key: string) => fit.settings.get(key);
  const value = (key: string): CellValue => {
    const at = place(key);
    const grid = at && file.sheets.find((sheet) => sheet.name === at.sheet);
    return at && grid ? grid.value(at.row, at.col) : null;
  };
  const complain = (key: string, what: string, mend: string) => {
    const at = place(key);
    if (at) problems.push({ sheet: at.sheet, cell: cellName(at.row, at.col), what, mend });
  };
  const text = (key: string) => {
    const cell = value(key);
    return isBlankCell(cell) || typeof cell === "object" ? "" : String(cell).trim();
  };
  const number = (key: string, usual: number): number => {
    const cell = value(key);
    if (isBlankCell(cell)) return usual;
    if (typeof cell === "number" && cell > 0) return cell;
    complain(key, `"${text(key)}" is not a number above 0`, `Type a number; ${usual} is usual.`);
    return usual;
  };

  const units = text("units").toLowerCase();
  if (units !== "" && units !== "ip" && units !== "si")
    complain("units", `unknown units "${units}"`, 'Type "ip" or "si".');
  const system: System = units === "si" ? "si" : "ip";

  let edition: Edition | undefined;
  const named = text("edition");
  try {
    if (named !== "") edition = findEdition(named);
  } catch (error) {
    complain("edition", (error as Error).message, "Type one of the editions listed.");
  }
  if (named === "" && place("edition"))
    complain("edition", "no edition is named", "Type one, such as 62.2-2016 or IRC-2021.");

  const low = number("low", usualWindow.low);
  let high = number("high", usualWindow.high);
  if (high <= low) {
    complain("high", `${high} Pa is not above ${low} Pa`, "Type a pressure above the lowest.");
    high = Math.max(usualWindow.high, low * 8);
  }
  return {
    name: text("name"),
    system,
    edition,
    method: text("method"),
    low,
    high,
    constant: number("constant", usualConstant[system]),
    interval: number("interval", usualInterval),
    problems,
  };
}
