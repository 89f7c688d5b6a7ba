import { type CellValue, cellName, isBlankCell } from "../../cells";
import type { System } from "../../editions";
import { requireMeant, usualGuardChance, usualWindow } from "../../rules";
import { type Setting, type SettingValues, settings } from "../columns";
import type { JobFit } from "../fit";
import type { JobFile } from "../grid";
import { asSentence } from "../words";
import { attempt } from "./maybe";

/** A setting that cannot be used; the usual value stands in for it. */
export interface SettingProblem {
  readonly sheet: string;
  readonly cell: string;
  readonly what: string;
  readonly mend: string;
  /** The cell is blank where something is asked for. */
  readonly isBlank: boolean;
}

/**
 * The job's settings by key, with the trade's usual values where the Job sheet says nothing. What the
 * air is like, an estimate and the weather have no usual value: undefined.
 */
export interface Settings extends Omit<SettingValues, "units"> {
  readonly system: System;
  readonly problems: readonly SettingProblem[];
}

export function readSettings(file: JobFile, fit: JobFit): Settings {
  const problems: SettingProblem[] = [];
  const cellOf = (key: string): CellValue => {
    const at = fit.settings.get(key);
    const grid = at && file.sheets.find((sheet) => sheet.name === at.sheet);
    return at && grid ? grid.value(at.row, at.col) : null;
  };
  const complain = (key: string) => (what: string, mend: string) => {
    const at = fit.settings.get(key);
    if (!at) return;
    const cell = cellName(at.row, at.col);
    problems.push({ sheet: at.sheet, cell, what, mend, isBlank: isBlankCell(cellOf(key)) });
  };
  const read = <T>(key: string, setting: Setting<T>, system: System): T => {
    const cell = cellOf(key);
    const text = isBlankCell(cell) || typeof cell === "object" ? "" : String(cell).trim();
    return setting.read({ cell, text, system, complain: complain(key) });
  };
  const system = read("units", settings.units, "ip");
  const values = Object.fromEntries(
    Object.entries<Setting>(settings)
      .filter(([key]) => key !== "units")
      .map(([key, setting]) => [key, read(key, setting, system)]),
  ) as unknown as Omit<SettingValues, "units">;
  let { high, chance } = values;
  if (high <= values.low) {
    const what = `${high} Pa is not above ${values.low} Pa`;
    complain("high")(what, "Type a pressure above the lowest.");
    high = Math.max(usualWindow.high, values.low * 8);
  }
  if (chance < 0.5 || chance >= 1) {
    const what = `a chance of ${chance} cannot be required`;
    complain("chance")(what, "Type 0.5 to 0.99, such as 0.95.");
    chance = usualGuardChance;
  }
  const meant = attempt(() => requireMeant(values, system));
  if ("problem" in meant) {
    const [what = "", mend = ""] = meant.problem.message.split(": ");
    complain(/^humidity/.test(what) ? "humidity" : "barometer")(what, asSentence(mend));
  }
  return { ...values, system, high, chance, problems };
}
