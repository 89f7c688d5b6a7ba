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

/** What a manometer may be off: the larger of a percentage and a floor in Pa. */
export interface MeterLimits {
  readonly percent: number;
  readonly floor: number;
  readonly resolution: number;
  readonly zero: number;
}

export const judgings = ["simple", "guarded"] as const;
export type Judging = (typeof judgings)[number];

export const judgedFlows = ["measured", "actual", "standard", "without box"] as const;
export type JudgeBy = (typeof judgedFlows)[number];

/** Air of the job, in the job's units; undefined where the Job sheet says nothing. */
export interface AirSettings {
  readonly temperature: number | undefined;
  readonly humidity: number | undefined;
  readonly barometer: number | undefined;
  readonly elevation: number | undefined;
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
  readonly meter: MeterLimits;
  /** Standard spread of the constant, percent. */
  readonly constantSpread: number;
  readonly judging: Judging;
  /** Chance of truly meeting a rate that guarded judging wants. */
  readonly chance: number;
  readonly judgeBy: JudgeBy;
  readonly air: AirSettings;
  /** Written accuracy that a box must prove, percent. */
  readonly proofLimit: number;
  readonly work: string;
  readonly weather: number | undefined;
  readonly equipment: string;
  readonly ducts: string;
  readonly programme: string;
  readonly margin: number;
  readonly panLimit: number;
  readonly panSpan: number;
  readonly problems: readonly SettingProblem[];
}

const usualInterval = 365;
const usualChance = 0.95;
/** A field manometer after ANSI/RESNET/ICC 380, from memory; verify against your copy. */
const usualMeter: MeterLimits = { percent: 1, floor: 0.25, resolution: 0.1, zero: 0 };

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
  const number = (key: string, usual: number, zeroAllowed = false): number => {
    const cell = value(key);
    if (isBlankCell(cell)) return usual;
    if (typeof cell === "number" && (cell > 0 || (zeroAllowed && cell === 0))) return cell;
    const least = zeroAllowed ? "of 0 or more" : "above 0";
    complain(key, `"${text(key)}" is not a number ${least}`, `Type a number; ${usual} is usual.`);
    return usual;
  };
  const optional = (key: string): number | undefined => {
    const cell = value(key);
    if (isBlankCell(cell) || typeof cell === "number")
      return isBlankCell(cell) ? undefined : (cell as number);
    complain(key, `"${text(key)}" is not a number`, "Type a number, or leave the cell blank.");
    return undefined;
  };
  const word = <T extends string>(key: string, known: readonly T[], usual: T): T => {
    const typed = text(key).toLowerCase();
    const found = known.find((entry) => entry === typed);
    if (typed !== "" && found === undefined)
      complain(key, `unknown entry "${text(key)}"`, `Type ${known.join(" or ")}.`);
    return found ?? usual;
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
  let chance = number("chance", usualChance);
  if (chance < 0.5 || chance >= 1) {
    complain(
      "chance",
      `a chance of ${chance} cannot be required`,
      "Type 0.5 to 0.99, such as 0.95.",
    );
    chance = usualChance;
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
    meter: {
      percent: number("meterPercent", usualMeter.percent, true),
      floor: number("meterFloor", usualMeter.floor, true),
      resolution: number("resolution", usualMeter.resolution, true),
      zero: number("zero", usualMeter.zero, true),
    },
    constantSpread: number("constantSpread", 2, true),
    judging: word("judging", judgings, "simple"),
    chance,
    judgeBy: word("judgeBy", judgedFlows, "measured"),
    air: {
      temperature: optional("temperature"),
      humidity: optional("humidity"),
      barometer: optional("barometer"),
      elevation: optional("elevation"),
    },
    proofLimit: number("proofLimit", 10),
    work: word("work", ["new", "existing"], "new"),
    weather: optional("weather"),
    equipment: text("equipment"),
    ducts: text("ducts"),
    programme: text("programme"),
    margin: number("margin", 0, true),
    panLimit: number("panLimit", 1),
    panSpan: number("panSpan", 0.5),
    problems,
  };
}
