import {
  dwellingRate,
  flowUnit,
  type Job,
  type RequiredRate,
  shown,
  unitOf,
  verdictColumn,
} from "../../job";

/** One required rate with the way to it. */
export interface RateView {
  readonly title: string;
  /** What went in: "Room kind" "bathroom". */
  readonly given: readonly { readonly name: string; readonly value: string }[];
  readonly outcome:
    | {
        /** "50 cfm" */
        readonly rate: string;
        readonly working: readonly string[];
        readonly work: string;
        readonly clause: string;
        readonly mark: string;
      }
    | { readonly problem: string };
  /** "Measured 46.2 cfm: short", or "" where nothing was measured. */
  readonly measured: string;
}

/** How far a number has been traced, as a reviewer should read it. */
export const markWords: Readonly<Record<RequiredRate["source"]["mark"], string>> = {
  read: "read in the named text",
  "two sources": "read in two independent texts",
  "from memory": "from memory, verify against your copy",
  "common practice": "common practice of the trade",
  "by definition": "by definition",
};

/** The rates that the selected row asks for: that of its fan, and that of its dwelling. */
export function ratesAt(job: Job, sheet: string, row: number): RateView[] {
  const { fans, tables } = job;
  if (fans && fans.table.name === sheet) {
    const i = fans.table.rows.indexOf(row);
    if (i < 0) return [];
    const name = fans.table.text("dwelling", i).toLowerCase();
    const names = tables.dwellings?.texts("dwelling") ?? [];
    const home = names.findIndex((entry) => entry !== "" && entry.toLowerCase() === name);
    return [roomView(job, i), ...(home >= 0 ? [dwellingView(job, home)] : [])];
  }
  if (tables.dwellings?.name === sheet) {
    const i = tables.dwellings.rows.indexOf(row);
    return i < 0 ? [] : [dwellingView(job, i)];
  }
  return [];
}

function roomView(job: Job, i: number): RateView {
  const fans = job.fans as NonNullable<Job["fans"]>;
  const { table } = fans;
  const { system } = job.settings;
  const given = ["roomKind", "duty", "volume"].flatMap((key) => {
    const value = table.has(key) ? table.text(key, i) : "";
    if (key === "volume" && value === "") return [];
    const unit = key === "volume" ? ` ${unitOf("volume", system)}` : "";
    return [{ name: table.field(key).title, value: value === "" ? "blank" : value + unit }];
  });
  const found = fans.required(i);
  const flow = fans.flow[i] as number;
  return {
    title: `Fan ${fans.label(i)}`,
    given,
    outcome: "value" in found ? outcomeOf(found.value, job) : { problem: words(found.problem) },
    measured: measuredWords(
      flow,
      fans.requiredNumber(i),
      flowUnit(system),
      verdictColumn(flow, fans.requiredNumber(i), 1, [fans.status[i]])[0] ?? "",
    ),
  };
}

function dwellingView(job: Job, i: number): RateView {
  const table = job.tables.dwellings as NonNullable<Job["tables"]["dwellings"]>;
  const { edition, system, method } = job.settings;
  const floor = table.number("floor", i);
  const bedrooms = table.has("bedrooms") ? table.number("bedrooms", i) : Number.NaN;
  const provided = table.has("provided") ? table.number("provided", i) : Number.NaN;
  const given = [
    { name: "Floor area", value: numberOr(floor, unitOf("floor", system)) },
    { name: "Bedrooms", value: numberOr(bedrooms, "") },
  ];
  let outcome: RateView["outcome"];
  let required = Number.NaN;
  try {
    if (!edition) throw new RangeError("name an edition on the Job sheet");
    const rate = dwellingRate(edition, floor, bedrooms, system, method || undefined);
    required = rate.rate;
    outcome = outcomeOf(rate, job);
  } catch (problem) {
    outcome = { problem: words(problem) };
  }
  const verdict = verdictColumn(provided, required, 1)[0] ?? "";
  return {
    title: `Dwelling ${table.text("dwelling", i)}`,
    given,
    outcome,
    measured: measuredWords(provided, required, flowUnit(system), verdict),
  };
}

function outcomeOf({ rate, source, working }: RequiredRate, job: Job): RateView["outcome"] {
  return {
    rate: `${shown(rate)} ${flowUnit(job.settings.system)}`,
    working: working.split("; "),
    work: source.work,
    clause: source.clause,
    mark: markWords[source.mark],
  };
}

function measuredWords(flow: number, required: number, unit: string, verdict: string): string {
  if (Number.isNaN(flow)) return "";
  const judged = Number.isNaN(required) ? "" : `: ${verdict}`;
  return `Measured ${shown(flow)} ${unit}${judged}`;
}

function numberOr(value: number, unit: string): string {
  return Number.isNaN(value) ? "blank" : `${shown(value)} ${unit}`.trim();
}

function words(problem: unknown): string {
  const text = problem instanceof Error ? problem.message : String(problem);
  if (text === "no edition") return "Name an edition on the Job sheet, such as IRC-2021.";
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`.replace(/\.\.$/, ".");
}
