import { type CellValue, cellName, InputError, isBlankCell } from "../../cells";
import { type Edition, findEdition, type Sampling, type System, samplings } from "../../editions";
import {
  type JudgeBy,
  type Judging,
  judgedFlows,
  judgings,
  type Manometer,
  requireMeant,
  usualConstant,
  usualConstantSpread,
  usualGuardChance,
  usualInterval,
  usualMeter,
  usualPan,
  usualRequirement,
  usualWindow,
  type Work,
  works,
} from "../../rules";
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
  /** The day from which the edition holds, as the workbook counts days. */
  readonly adopted: number | undefined;
  /** The rule by which only some dwellings are tested; undefined where all are. */
  readonly sampling: Sampling | undefined;
  readonly method: string;
  readonly low: number;
  readonly high: number;
  readonly constant: number;
  readonly interval: number;
  readonly meter: Required<Manometer>;
  /** Standard spread of the constant, percent. */
  readonly constantSpread: number;
  readonly judging: Judging;
  /** Chance of truly meeting a rate that guarded judging wants. */
  readonly chance: number;
  readonly judgeBy: JudgeBy;
  readonly air: AirSettings;
  /** Written accuracy that a box must prove, percent. */
  readonly proofLimit: number;
  readonly work: Work;
  readonly weather: number | undefined;
  readonly equipment: string;
  readonly ducts: string;
  readonly programme: string;
  readonly margin: number;
  /** Of an estimate, as typed; undefined where the Job sheet says nothing. */
  readonly hoursFan: number | undefined;
  readonly hoursDwelling: number | undefined;
  readonly hourRate: number | undefined;
  /** Share of the price that is not cost, percent. */
  readonly priceMargin: number | undefined;
  readonly panLimit: number;
  readonly panSpan: number;
  readonly problems: readonly SettingProblem[];
}

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
    if (at)
      problems.push({
        ...{ sheet: at.sheet, cell: cellName(at.row, at.col), what, mend },
        isBlank: isBlankCell(value(key)),
      });
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
    if (!(error instanceof InputError)) throw error;
    complain("edition", error.message, "Type one of the editions listed.");
  }
  if (named === "" && place("edition"))
    complain("edition", "no edition is named", "Type one, such as 62.2-2016 or IRC-2021.");

  const sampling = text("sampling");
  const bySample = samplings.find(({ id }) => id.toLowerCase() === sampling.toLowerCase());
  if (sampling !== "" && !bySample)
    complain(
      "sampling",
      `unknown entry "${sampling}"`,
      `Type ${samplings.map(({ id }) => id).join(" or ")}, or leave the cell blank.`,
    );

  const low = number("low", usualWindow.low);
  let high = number("high", usualWindow.high);
  if (high <= low) {
    complain("high", `${high} Pa is not above ${low} Pa`, "Type a pressure above the lowest.");
    high = Math.max(usualWindow.high, low * 8);
  }
  let chance = number("chance", usualGuardChance);
  if (chance < 0.5 || chance >= 1) {
    complain(
      "chance",
      `a chance of ${chance} cannot be required`,
      "Type 0.5 to 0.99, such as 0.95.",
    );
    chance = usualGuardChance;
  }
  const air: AirSettings = {
    temperature: optional("temperature"),
    humidity: optional("humidity"),
    barometer: optional("barometer"),
    elevation: optional("elevation"),
  };
  const meant = attempt(() => requireMeant(air, system));
  if ("problem" in meant) {
    const [what = "", mend = ""] = meant.problem.message.split(": ");
    complain(/^humidity/.test(what) ? "humidity" : "barometer", what, asSentence(mend));
  }
  return {
    name: text("name"),
    system,
    edition,
    adopted: optional("adopted"),
    sampling: bySample,
    method: text("method"),
    low,
    high,
    constant: number("constant", usualConstant[system]),
    interval: number("interval", usualInterval),
    meter: {
      meterPercent: number("meterPercent", usualMeter.percent, true),
      meterFloor: number("meterFloor", usualMeter.floor, true),
      resolution: number("resolution", usualMeter.resolution, true),
      zeroLimit: number("zero", 0, true),
    },
    constantSpread: number("constantSpread", usualConstantSpread, true),
    judging: word("judging", judgings, "simple"),
    chance,
    judgeBy: word("judgeBy", judgedFlows, "measured"),
    air,
    proofLimit: number("proofLimit", usualRequirement),
    work: word("work", works, "new"),
    weather: optional("weather"),
    equipment: text("equipment"),
    ducts: text("ducts"),
    programme: text("programme"),
    margin: number("margin", 0, true),
    hoursFan: optional("hoursFan"),
    hoursDwelling: optional("hoursDwelling"),
    hourRate: optional("hourRate"),
    priceMargin: optional("priceMargin"),
    panLimit: number("panLimit", usualPan.limit.value),
    panSpan: number("panSpan", usualPan.span.value),
    problems,
  };
}
