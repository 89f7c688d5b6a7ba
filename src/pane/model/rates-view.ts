import { isoDay, shown } from "../../cells";
import { factsOf, flowUnit, type Job, unitOf } from "../../job";
import { fanName } from "./rows-at";
import { type Outcome, outcomeOf } from "./said";

/** The required rate of a fan's room with the way to it. */
export interface RateView {
  readonly title: string;
  /** What went in: "Room kind" "bathroom". */
  readonly given: readonly { readonly name: string; readonly value: string }[];
  readonly outcome: Outcome;
  /** "Measured 46.2 cfm: short, by a capacity rate", or "" where nothing was measured. */
  readonly measured: string;
}

export function roomView(job: Job, i: number): RateView {
  const fans = job.fans as NonNullable<Job["fans"]>;
  const { table } = fans;
  const { system } = job.settings;
  const units: Readonly<Record<string, string>> = {
    volume: ` ${unitOf("volume", system)}`,
    capture: " %",
  };
  const further = ["volume", "enclosed", "cooking", "capture"];
  const given = ["roomKind", "duty", ...further].flatMap((key) => {
    const value = table.has(key) ? table.text(key, i) : "";
    if (further.includes(key) && value === "") return [];
    const unit = units[key] ?? "";
    return [{ name: table.field(key).title, value: value === "" ? "blank" : value + unit }];
  });
  return {
    title: fans.isAbsent(i) ? `${fanName(job, i)}: no fan` : `Fan ${fanName(job, i)}`,
    given: [...given, ...visitsOf(job, i)],
    outcome: outcomeOf(fans.required(i), job),
    measured: measuredWords(job, i),
  };
}

/** What each visit to a fan that was read again came to. */
function visitsOf(job: Job, i: number): RateView["given"] {
  const { fans } = factsOf(job);
  const rows = fans?.fans.histories.find((each) => each.includes(i)) ?? [];
  return rows.map((row) => {
    const flow = fans?.judged(row) ?? Number.NaN;
    const said = [
      Number.isNaN(flow) ? "" : `${shown(flow)} ${flowUnit(job.settings.system)}`,
      fans?.verdict(row) ?? "",
      isoDay(fans?.fans.table.number("date", row) ?? Number.NaN, job.file.dateOffset ?? 0),
    ];
    const name = `Visit ${fans?.fans.visit(row)}`;
    return { name, value: said.filter((part) => part !== "").join(", ") };
  });
}

/** The flow that is judged and the verdict on it, by the job's own way of judging. */
function measuredWords(job: Job, i: number): string {
  const { settings } = job;
  const { fans } = factsOf(job);
  const flow = fans?.judged(i) ?? Number.NaN;
  if (!fans || Number.isNaN(flow)) return "";
  const verdict = fans.verdict(i);
  const what = settings.judgeBy === "measured" ? "Measured" : `Judged, ${settings.judgeBy}:`;
  const isJudged = verdict !== undefined && !Number.isNaN(fans.required(i));
  const kind = fans.fans.kindOfRate(i);
  const judged = isJudged ? `: ${verdict}${kind ? `, by a ${kind} rate` : ""}` : "";
  return `${what} ${shown(flow)} ${flowUnit(settings.system)}${judged}`;
}
