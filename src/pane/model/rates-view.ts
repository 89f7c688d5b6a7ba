import { isoDay, shown } from "../../cells";
import { factsOf, flowUnit, type Job } from "../../job";
import { fanName } from "./rows-at";
import { type Outcome, outcomeOf, statedIn } from "./said";

/** The required rate of a fan's room with the way to it. */
export interface RateView {
  readonly title: string;
  /** What went in: "Room kind" "bathroom". */
  readonly given: readonly { readonly name: string; readonly value: string }[];
  readonly outcome: Outcome;
  /** "Measured 46.2 cfm: short, by a capacity rate", or "" where nothing was measured. */
  readonly measured: string;
}

/** What a row may say beside its room: what its rate goes by, and how the fan runs and was read. */
const further = "volume enclosed cooking capture runShare seal grille shared".split(" ");

export function roomView(job: Job, i: number): RateView {
  const fans = job.fans as NonNullable<Job["fans"]>;
  const { table } = fans;
  const asked = ["roomKind", "duty"].map((key) => ({
    name: table.field(key).title,
    value: (table.has(key) && table.text(key, i)) || "blank",
  }));
  return {
    title: fans.isAbsent(i) ? `${fanName(job, i)}: no fan` : `Fan ${fanName(job, i)}`,
    given: [...asked, ...statedIn(table, i, further), ...visitsOf(job, i)],
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
  const kind = fans.verdictOn(i);
  const judged = isJudged ? `: ${verdict}${kind ? `, by a ${kind} rate` : ""}` : "";
  return `${what} ${shown(flow)} ${flowUnit(settings.system)}${judged}`;
}
