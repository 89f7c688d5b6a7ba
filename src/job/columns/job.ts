import { InputError } from "../../cells";
import {
  type Edition,
  editions,
  findEdition,
  type Sampling,
  type System,
  samplings,
} from "../../editions";
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
import {
  above0,
  entry,
  from0,
  ifGiven,
  inSystem,
  type Setting,
  type Typed,
  text,
  word,
} from "./setting";

export const jobTitle = "Job";

const unitsNamed = {
  usual: "ip",
  read: ({ text, complain }: Typed): System => {
    const word = text.toLowerCase();
    if (word !== "" && word !== "ip" && word !== "si")
      complain(`unknown units "${word}"`, 'Type "ip" or "si".');
    return word === "si" ? "si" : "ip";
  },
};

/** The edition is never taken for granted: rates that nobody chose would be judged by. */
const editionNamed = {
  read({ text, complain }: Typed): Edition | undefined {
    if (text === "") complain("no edition is named", "Type one, such as 62.2-2016 or IRC-2021.");
    else
      try {
        return findEdition(text);
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        complain(error.message, "Type one of the editions listed.");
      }
    return undefined;
  },
};

const samplingNamed = {
  read({ text, complain }: Typed): Sampling | undefined {
    const found = samplings.find(({ id }) => id.toLowerCase() === text.toLowerCase());
    if (text !== "" && !found)
      complain(
        `unknown entry "${text}"`,
        `Type ${samplings.map(({ id }) => id).join(" or ")}, or leave the cell blank.`,
      );
    return found;
  },
};

/** Only formulas read it. */
const unread = { read: () => null };

export const settings = {
  name: entry("Job name", "job, project", "", text),
  edition: entry(
    "Edition",
    "standard, code, rule",
    "The edition whose rates apply, such as 62.2-2016 or IRC-2021",
    editionNamed,
    { choices: fitting(editions.map(({ id }) => id)) },
  ),
  method: entry(
    "Dwelling rate by",
    "method",
    "equation or table, where the edition has both; blank for its usual one",
    text,
    { choices: ["equation", "table"] },
  ),
  units: entry("Units", "unit system", "ip: in², Pa, cfm, ft². si: cm², Pa, L/s, m²", unitsNamed, {
    choices: ["ip", "si"],
  }),
  low: entry(
    "Lowest pressure (Pa)",
    "lowest pressure, min pressure",
    "Below this the manometer's limit spoils the reading",
    above0(usualWindow.low),
  ),
  high: entry(
    "Highest pressure (Pa)",
    "highest pressure, max pressure",
    "Above this the box holds the fan back",
    above0(usualWindow.high),
  ),
  constant: entry(
    "Flow constant",
    "constant",
    "For boxes that state none of their own",
    above0(usualConstant),
  ),
  interval: entry(
    "Days between box checks",
    "box check interval, check interval",
    "A box not checked within so many days before a reading is flagged",
    above0(usualInterval),
  ),
  meterPercent: entry(
    "Manometer limit (%)",
    "manometer percent, gauge limit percent",
    "Limit of the manometer in percent of the reading; the larger of this and the next counts",
    from0(usualMeter.percent),
  ),
  meterFloor: entry(
    "Manometer limit, least (Pa)",
    "manometer limit least, manometer floor",
    "Limit of the manometer in Pa, however small the reading: 0.25 from memory of ANSI/RESNET/ICC 380, 0.2 in California RA3.7.2.1",
    from0(usualMeter.floor),
  ),
  resolution: entry(
    "Manometer resolution (Pa)",
    "manometer resolution, resolution",
    "Smallest step that the manometer shows",
    from0(usualMeter.resolution),
  ),
  zero: entry(
    "Zero offset, at most (Pa)",
    "zero offset at most, zero offset",
    "What the manometer may show with open hoses after it was set to zero",
    from0(0),
    { starts: 0.1 },
  ),
  constantSpread: entry(
    "Spread of the constant (%)",
    "spread of the constant, constant spread",
    "Standard spread; from the proof of the box where there is one",
    from0(usualConstantSpread),
  ),
  judging: entry(
    "Judging",
    "decision rule, acceptance",
    "simple: at or above the rate meets it. guarded: the chance of truly meeting it must be large enough",
    word(judgings, "simple"),
    { choices: judgings },
  ),
  chance: entry(
    "Chance required",
    "chance, confidence",
    "For guarded judging, between 0.5 and 1; 0.95 is usual",
    above0(usualGuardChance),
  ),
  judgeBy: entry(
    "Flow judged",
    "judge by, judged flow is",
    "measured, actual, standard or without box: which flow the verdict takes. Standards disagree on correcting for air",
    word(judgedFlows, "measured"),
    { choices: judgedFlows },
  ),
  temperature: entry(
    "Air temperature",
    "temperature, room temperature",
    "°F (°C where the units are si); a fan's own temperature wins",
    ifGiven,
  ),
  humidity: entry("Relative humidity (%)", "humidity, rh", "", ifGiven),
  barometer: entry(
    "Barometer",
    "station pressure, barometric pressure",
    "Station pressure, inHg (hPa where the units are si); left blank, the elevation counts",
    ifGiven,
  ),
  elevation: entry(
    "Elevation",
    "altitude, height above sea level",
    "ft (m where the units are si)",
    ifGiven,
  ),
  proofLimit: entry(
    "Proof requirement (%)",
    "proof requirement, accuracy requirement",
    "Written accuracy that a box must prove: 10 in California RA3.7.2.2",
    above0(usualRequirement),
  ),
  work: entry(
    "Work",
    "new or existing, kind of work",
    "new or existing: bounds the infiltration credit",
    word(works, "new"),
    { choices: works },
  ),
  weather: entry(
    "Weather and shielding factor",
    "weather factor, wsf",
    "From the standard's table for the nearest station",
    ifGiven,
  ),
  equipment: entry(
    "Equipment rules",
    "efficacy by, equipment code",
    "Edition whose fan efficacy applies, such as IECC-2021",
    text,
  ),
  ducts: entry(
    "Duct table",
    "duct rules, ducts by",
    "Edition whose duct lengths apply, such as IRC-2021",
    text,
  ),
  programme: entry(
    "Programme",
    "program",
    "Programme whose tolerance to the design flow applies; blank where none does",
    text,
  ),
  margin: entry(
    "Margin when buying (%)",
    "margin when buying, margin",
    "A fan is bought so much above its required rate",
    from0(0),
    { starts: 10 },
  ),
  hoursFan: entry(
    "Hours for a fan",
    "hours a fan, hours per fan",
    "Of an estimate: working hours for each planned fan",
    ifGiven,
  ),
  hoursDwelling: entry(
    "Hours for a dwelling",
    "hours a dwelling, hours per dwelling",
    "Of an estimate: further hours for each dwelling; 0 where there are none",
    ifGiven,
  ),
  hourRate: entry(
    "Cost of an hour",
    "hourly rate, rate an hour, labour rate, labor rate",
    "Of an estimate: in the same currency as the costs of the catalogue",
    ifGiven,
  ),
  priceMargin: entry(
    "Margin on the price (%)",
    "margin on the price, profit margin",
    "Of an estimate: the share of the price that is not cost; price = cost / (1 − margin)",
    ifGiven,
  ),
  panLimit: entry(
    "Pan limit (Pa)",
    "pan limit, pressure pan limit",
    "A register reading above this leaks; common practice, set by the job",
    above0(usualPan.limit.value),
  ),
  panSpan: entry(
    "Pan repeatability (Pa)",
    "pan repeatability, pan span",
    "Readings further apart than this are taken again; common practice, set by the job",
    above0(usualPan.span.value),
  ),
  tolerance: entry(
    "Size tolerance",
    "cutting tolerance",
    "± of the sizes of an opening, in (cm where the units are si), for those that state none of their own; 1/32 in and 0.1 cm are common practice",
    unread,
    { starts: { ip: 1 / 32, si: 0.1 } },
  ),
  adopted: entry(
    "Edition in force from",
    "adoption date, edition adopted on, in force from",
    "The day from which the edition holds at this place: a job goes by the edition of its permit's day",
    ifGiven,
    { format: "yyyy-mm-dd" },
  ),
  sampling: entry(
    "Sampling",
    "sampling rule",
    "Where only some dwellings of a group are tested: by which rule; blank where all are",
    samplingNamed,
    { choices: samplings.map(({ id }) => id) },
  ),
};

/** What each setting comes to, by its key. */
export type SettingValues = {
  readonly [K in keyof typeof settings]: ReturnType<(typeof settings)[K]["read"]>;
};

export const jobSettings: readonly (Setting & { readonly key: string })[] = Object.entries(
  settings,
).map(([key, setting]) => ({ key, ...setting }));

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

/** What a new job's Job sheet says before anyone has typed; other settings are left blank. */
export function usualSettings(system: System): Readonly<Record<string, number | string>> {
  const said = jobSettings.flatMap(({ key, usual, starts = usual }) =>
    starts === undefined ? [] : [[key, inSystem(starts, system)] as const],
  );
  return { ...Object.fromEntries(said), units: system };
}
