import { version } from "../../package.json";
import { counted, isoDay, isSameNumber, once, shown, significant } from "../cells";
import type { Mark, Source } from "../formulas";
import { usualConstant, usualWindow } from "../rules";
import { conversionFactor } from "../units";
import { codeKinds, codesOf, type JobCodes } from "./codes";
import { unitOf } from "./columns";
import type { FirmSheets, Job } from "./read";
import { listed } from "./words";

/** "stated" is a number that the job itself gives; a constant may be known by the flows alone. */
export type Standing = Mark | "stated" | "as the sheet's flows give it";

/** What the results of a job rest on, to be kept with them. */
export interface Provenance {
  /** Version of the functions and checks. */
  readonly version: string;
  readonly edition: { readonly id: string; readonly title: string } | undefined;
  /** The day from which the edition is in force, as the job says; "" where it does not. */
  readonly inForce: string;
  /** The clauses that the job's rooms and dwellings were judged by. */
  readonly clauses: readonly Source[];
  /** The flow constants in use, with the number of fans each. */
  readonly constants: readonly {
    /** In the job's units. */
    readonly value: number;
    /** In the units of its own sheet, which are named where they are not the job's. */
    readonly text: string;
    readonly fans: number;
    readonly mark: Standing;
  }[];
  /** Pressures between which a reading is used, Pa; undefined where none is read. */
  readonly window:
    | { readonly low: number; readonly high: number; readonly mark: Standing }
    | undefined;
  readonly judging: string;
  /** Filled rows of all sheets of the job. */
  readonly rows: number;
  readonly codes: JobCodes;
}

export const provenanceOf = once(gather);

/** The provenance in one line. */
export function provenanceLine(provenance: Provenance): string {
  const { edition, inForce, clauses, constants, window, judging, rows, codes } = provenance;
  const sources = [...new Set(clauses.map(({ clause, mark }) => `${clause} ${mark}`))];
  const rule = `${edition?.id ?? "no edition"}${inForce && ` in force from ${inForce}`}`;
  const factors = constants.map(({ text, mark }) =>
    mark.startsWith("as ") ? `${text}, ${mark}` : `${text} ${mark}`,
  );
  return [
    `Fanrow ${provenance.version}`,
    sources.length > 0 ? `${rule} (${sources.join("; ")})` : rule,
    factors.length > 0 ? `constant ${listed(factors)}` : "",
    window ? `window ${shown(window.low)} to ${shown(window.high)} Pa, ${window.mark}` : "",
    judging,
    `${rows} rows`,
    `codes, of which the one that differs tells what was changed: ${codeKinds.map((kind) => `${kind} ${codes[kind]}`).join(", ")}`,
  ]
    .filter((part) => part !== "")
    .join("; ");
}

function gather(job: Job): Provenance {
  const { edition, adopted, low, high } = job.settings;
  const isUsual = low === usualWindow.low && high === usualWindow.high;
  return {
    version,
    edition: edition && { id: edition.id, title: edition.title },
    inForce: isoDay(adopted ?? Number.NaN, job.file.dateOffset ?? 0),
    clauses: clausesOf(job),
    constants: job.firm ? firmConstants(job, job.firm) : constantsOf(job),
    window:
      job.firm?.readsPressure === false
        ? undefined
        : { low, high, mark: isUsual ? "common practice" : "stated" },
    judging: judgingOf(job),
    rows: Object.values(job.tables).reduce((sum, table) => sum + table.length, 0),
    codes: codesOf(job),
  };
}

function judgingOf({ settings: { judging, chance, judgeBy } }: Job): string {
  const rule =
    judging === "guarded"
      ? `guarded acceptance at a chance of ${shown(chance)}`
      : "simple acceptance";
  return judgeBy === "measured" ? rule : `${rule} of the flow ${judgeBy}`;
}

function clausesOf({ fans, settings, tables }: Job): Source[] {
  const sources = new Map<string, Source>();
  const add = (source: Source) => sources.set(`${source.work} ${source.clause}`, source);
  for (let i = 0; i < (fans?.length ?? 0); i++) {
    const required = fans?.required(i);
    if (required && "value" in required) add(required.value.source);
  }
  const { edition, system, method } = settings;
  if (edition && tables.dwellings?.length) {
    const wanted = method.trim().toLowerCase();
    const rule = edition.dwelling
      .filter((entry) => !("system" in entry) || entry.system === system)
      .find((entry) => wanted === "" || entry.method === wanted);
    if (rule) add(rule.source);
  }
  return [...sources.values()];
}

function constantsOf({ fans, settings }: Job): Provenance["constants"] {
  const counts = counted([...(fans?.constant ?? [])].filter((value) => value > 0));
  if (counts.size === 0) counts.set(settings.constant, 0);
  const usual = usualConstant[settings.system];
  return [...counts]
    .sort(([, a], [, b]) => b - a)
    .map(([value, count]) => ({
      value,
      text: significant(value),
      fans: count,
      mark: isSameNumber(value, usual) ? "common practice" : "stated",
    }));
}

/** The constants by which a firm's own flows follow from its readings, block by block. */
function firmConstants({ fans }: Job, firm: FirmSheets): Provenance["constants"] {
  const { system } = firm;
  const found = new Map<string, Provenance["constants"][number]>();
  for (let i = 0; i < (fans?.length ?? 0); i++) {
    const { block } = firm.at(i);
    const { constant, units } = block.habits;
    if (!constant || !firm.hasPressure(i)) continue;
    const { flow, area = "", pressure = "Pa" } = units;
    const isOurs =
      [flow, area].join() === [unitOf("flow", system), unitOf("opening", system)].join();
    const unit = isOurs || !flow ? "" : ` ${flow} per ${area}·√Pa`;
    const perPa = constant.value / Math.sqrt(conversionFactor(pressure, "Pa"));
    const text = `${significant(perPa, 5)}${unit}`;
    const mark = constant.stated ? "stated" : "as the sheet's flows give it";
    const fansSoFar = found.get(text)?.fans ?? 0;
    found.set(text, { value: firm.constant(block), text, fans: fansSoFar + 1, mark });
  }
  return [...found.values()].sort((a, b) => b.fans - a.fans);
}
