import { editions, type System, samplings } from "../../editions";
import {
  judgedFlows,
  judgings,
  usualConstant,
  usualConstantSpread,
  usualGuardChance,
  usualInterval,
  usualMeter,
  usualPan,
  usualRequirement,
  usualWindow,
  works,
} from "../../rules";
import type { FeatureKey } from "./features";

/** One setting of the Job sheet: its label in column A, its value in column B. */
interface Setting {
  readonly key: string;
  readonly label: string;
  readonly words: readonly string[];
  readonly help: string;
  /** Entries that a drop-down list offers. */
  readonly choices?: readonly string[];
  /** Of a day: how its cell shows it. */
  readonly format?: string;
}

export const jobTitle = "Job";

export const jobSettings: readonly Setting[] = [
  { key: "name", label: "Job name", words: ["job", "project"], help: "" },
  {
    key: "edition",
    label: "Edition",
    words: ["standard", "code", "rule"],
    help: "The edition whose rates apply, such as 62.2-2016 or IRC-2021",
    choices: fitting(editions.map(({ id }) => id)),
  },
  {
    key: "method",
    label: "Dwelling rate by",
    words: ["method"],
    help: "equation or table, where the edition has both; blank for its usual one",
    choices: ["equation", "table"],
  },
  {
    key: "units",
    label: "Units",
    words: ["unit system"],
    help: "ip: in², Pa, cfm, ft². si: cm², Pa, L/s, m²",
    choices: ["ip", "si"],
  },
  {
    key: "low",
    label: "Lowest pressure (Pa)",
    words: ["lowest pressure", "min pressure"],
    help: "Below this the manometer's limit spoils the reading",
  },
  {
    key: "high",
    label: "Highest pressure (Pa)",
    words: ["highest pressure", "max pressure"],
    help: "Above this the box holds the fan back",
  },
  {
    key: "constant",
    label: "Flow constant",
    words: ["constant"],
    help: "For boxes that state none of their own",
  },
  {
    key: "interval",
    label: "Days between box checks",
    words: ["box check interval", "check interval"],
    help: "A box not checked within so many days before a reading is flagged",
  },
  {
    key: "meterPercent",
    label: "Manometer limit (%)",
    words: ["manometer percent", "gauge limit percent"],
    help: "Limit of the manometer in percent of the reading; the larger of this and the next counts",
  },
  {
    key: "meterFloor",
    label: "Manometer limit, least (Pa)",
    words: ["manometer limit least", "manometer floor"],
    help: "Limit of the manometer in Pa, however small the reading: 0.25 from memory of ANSI/RESNET/ICC 380, 0.2 in California RA3.7.2.1",
  },
  {
    key: "resolution",
    label: "Manometer resolution (Pa)",
    words: ["manometer resolution", "resolution"],
    help: "Smallest step that the manometer shows",
  },
  {
    key: "zero",
    label: "Zero offset, at most (Pa)",
    words: ["zero offset at most", "zero offset"],
    help: "What the manometer may show with open hoses after it was set to zero",
  },
  {
    key: "constantSpread",
    label: "Spread of the constant (%)",
    words: ["spread of the constant", "constant spread"],
    help: "Standard spread; from the proof of the box where there is one",
  },
  {
    key: "judging",
    label: "Judging",
    words: ["decision rule", "acceptance"],
    help: "simple: at or above the rate meets it. guarded: the chance of truly meeting it must be large enough",
    choices: judgings,
  },
  {
    key: "chance",
    label: "Chance required",
    words: ["chance", "confidence"],
    help: "For guarded judging, between 0.5 and 1; 0.95 is usual",
  },
  {
    key: "judgeBy",
    label: "Flow judged",
    words: ["judge by", "judged flow is"],
    help: "measured, actual, standard or without box: which flow the verdict takes. Standards disagree on correcting for air",
    choices: judgedFlows,
  },
  {
    key: "temperature",
    label: "Air temperature",
    words: ["temperature", "room temperature"],
    help: "°F (°C where the units are si); a fan's own temperature wins",
  },
  { key: "humidity", label: "Relative humidity (%)", words: ["humidity", "rh"], help: "" },
  {
    key: "barometer",
    label: "Barometer",
    words: ["station pressure", "barometric pressure"],
    help: "Station pressure, inHg (hPa where the units are si); left blank, the elevation counts",
  },
  {
    key: "elevation",
    label: "Elevation",
    words: ["altitude", "height above sea level"],
    help: "ft (m where the units are si)",
  },
  {
    key: "proofLimit",
    label: "Proof requirement (%)",
    words: ["proof requirement", "accuracy requirement"],
    help: "Written accuracy that a box must prove: 10 in California RA3.7.2.2",
  },
  {
    key: "work",
    label: "Work",
    words: ["new or existing", "kind of work"],
    help: "new or existing: bounds the infiltration credit",
    choices: works,
  },
  {
    key: "weather",
    label: "Weather and shielding factor",
    words: ["weather factor", "wsf"],
    help: "From the standard's table for the nearest station",
  },
  {
    key: "equipment",
    label: "Equipment rules",
    words: ["efficacy by", "equipment code"],
    help: "Edition whose fan efficacy applies, such as IECC-2021",
  },
  {
    key: "ducts",
    label: "Duct table",
    words: ["duct rules", "ducts by"],
    help: "Edition whose duct lengths apply, such as IRC-2021",
  },
  {
    key: "programme",
    label: "Programme",
    words: ["program"],
    help: "Programme whose tolerance to the design flow applies; blank where none does",
  },
  {
    key: "margin",
    label: "Margin when buying (%)",
    words: ["margin when buying", "margin"],
    help: "A fan is bought so much above its required rate",
  },
  {
    key: "hoursFan",
    label: "Hours for a fan",
    words: ["hours a fan", "hours per fan"],
    help: "Of an estimate: working hours for each planned fan",
  },
  {
    key: "hoursDwelling",
    label: "Hours for a dwelling",
    words: ["hours a dwelling", "hours per dwelling"],
    help: "Of an estimate: further hours for each dwelling; 0 where there are none",
  },
  {
    key: "hourRate",
    label: "Cost of an hour",
    words: ["hourly rate", "rate an hour", "labour rate", "labor rate"],
    help: "Of an estimate: in the same currency as the costs of the catalogue",
  },
  {
    key: "priceMargin",
    label: "Margin on the price (%)",
    words: ["margin on the price", "profit margin"],
    help: "Of an estimate: the share of the price that is not cost; price = cost / (1 − margin)",
  },
  {
    key: "panLimit",
    label: "Pan limit (Pa)",
    words: ["pan limit", "pressure pan limit"],
    help: "A register reading above this leaks; common practice, set by the job",
  },
  {
    key: "panSpan",
    label: "Pan repeatability (Pa)",
    words: ["pan repeatability", "pan span"],
    help: "Readings further apart than this are taken again; common practice, set by the job",
  },
  {
    key: "tolerance",
    label: "Size tolerance",
    words: ["cutting tolerance"],
    help: "± of the sizes of an opening, in (cm where the units are si), for those that state none of their own; 1/32 in and 0.1 cm are common practice",
  },
  {
    key: "adopted",
    label: "Edition in force from",
    format: "yyyy-mm-dd",
    words: ["adoption date", "edition adopted on", "in force from"],
    help: "The day from which the edition holds at this place: a job goes by the edition of its permit's day",
  },
  {
    key: "sampling",
    label: "Sampling",
    words: ["sampling rule"],
    help: "Where only some dwellings of a group are tested: by which rule; blank where all are",
    choices: samplings.map(({ id }) => id),
  },
];

/** As many entries as a drop-down list may spell out: Excel takes 255 characters. */
function fitting(entries: readonly string[]): readonly string[] {
  return entries.filter((_, i) => entries.slice(0, i + 1).join().length <= 255);
}

/** Entries that a drop-down list offers, by setting. */
export const settingChoices: Readonly<Record<string, readonly string[]>> = Object.fromEntries(
  jobSettings.flatMap(({ key, choices }) => (choices ? [[key, choices]] : [])),
);

/** What is asked before the sheets of a new job are added. */
export interface JobStart {
  readonly system: System;
  readonly features?: readonly FeatureKey[];
  readonly name?: string;
  /** Left out where it is not known yet. */
  readonly edition?: string;
  /** Rows that get formulas. */
  readonly dwellings?: number;
  readonly fans?: number;
}

/**
 * What a new job's Job sheet says before anyone has typed; other settings are left blank. The
 * edition is never taken for granted: rates that nobody chose would be judged by.
 */
export function usualSettings(system: System): Readonly<Record<string, number | string>> {
  return {
    units: system,
    low: usualWindow.low,
    high: usualWindow.high,
    constant: usualConstant[system],
    interval: usualInterval,
    meterPercent: usualMeter.percent,
    meterFloor: usualMeter.floor,
    resolution: usualMeter.resolution,
    zero: 0.1,
    constantSpread: usualConstantSpread,
    judging: "simple",
    chance: usualGuardChance,
    judgeBy: "measured",
    proofLimit: usualRequirement,
    work: "new",
    margin: 10,
    panLimit: usualPan.limit.value,
    panSpan: usualPan.span.value,
    tolerance: system === "ip" ? 1 / 32 : 0.1,
  };
}
