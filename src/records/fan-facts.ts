import { isoDay, once, shown, counted as timesOf } from "../cells";
import { factsOf, type Job, type JobCheck, type Replaced, type Table, type Verdict } from "../job";
import { counted } from "./words";

/** What a record says of one fan row, recomputed from the row's own cells. */
export interface FanFact {
  /** Row of the job's fan table. */
  readonly row: number;
  readonly dwelling: string;
  readonly tag: string;
  readonly room: string;
  readonly duty: string;
  readonly isContinuous: boolean;
  /** The box with its openings or their area, or the other instrument. */
  readonly by: string;
  readonly readings: readonly number[];
  readonly pressure: number;
  /** The flow that is judged; NaN where nothing was measured. */
  readonly flow: number;
  /** Half width at 95 %; NaN where it cannot be told. */
  readonly expanded: number;
  readonly required: number;
  readonly verdict: Verdict | undefined;
  /** What the rate that the flow was held against is a number of, such as "capacity"; else "". */
  readonly verdictOn: string;
  /** Read above the window, where the box only lowers a flow that is enough. */
  readonly alreadyMeets: boolean;
  /** Another row stands for the fan: a later reading, or the mean that this one is of. */
  readonly replacedAs: Replaced | undefined;
  readonly isMeasured: boolean;
  /** The room has no fan, so that there is nothing to judge. */
  readonly isAbsent: boolean;
  readonly tester: string;
  readonly date: number;
}

/** The fan rows of a job in their order. */
export const fanFacts = once((job: Job): readonly FanFact[] => {
  const { fans } = job;
  const facts = factsOf(job).fans;
  if (!fans || !facts) return [];
  const { table, length } = fans;
  return Array.from({ length }, (_, i) => {
    const duty = fans.duty(i);
    const isBox = !fans.isByInstrument(i);
    const openings = table.text("openings", i) || areaIn(table, i);
    return {
      row: i,
      dwelling: table.text("dwelling", i),
      tag: [table.text("tag", i), fans.which(i)].filter((part) => part !== "").join(", "),
      room: table.text("room", i) || table.text("roomKind", i),
      duty: "value" in duty ? duty.value : table.text("duty", i),
      isContinuous: "value" in duty && duty.value === "continuous",
      by: isBox
        ? [table.text("box", i), openings].filter((part) => part !== "").join(" · ")
        : table.text("instrument", i),
      readings: isBox ? fans.readings(i) : fans.deviceReadings(i),
      pressure: isBox ? (fans.pressure[i] as number) : Number.NaN,
      flow: facts.judged(i),
      expanded: facts.budget(i)?.expanded ?? Number.NaN,
      required: facts.required(i),
      verdictOn: facts.verdictOn(i) ?? "",
      verdict: facts.verdict(i),
      alreadyMeets: facts.alreadyMeets(i),
      replacedAs: facts.replacedAs(i),
      isMeasured: fans.isMeasured(i),
      isAbsent: fans.isAbsent(i),
      tester: table.text("tester", i),
      date: table.number("date", i),
    };
  });
});

/** The area as its sheet has it, where a firm names no openings. */
function areaIn(table: Table, i: number): string {
  const area = table.has("openings") ? Number.NaN : table.number("area", i);
  return area > 0 ? `${shown(area / table.factor("area", i))} ${table.unit("area", i)}` : "";
}

/** By which rates the fans are judged, in words. */
export function requiredBy({ firm, settings }: Job): string {
  if (settings.edition) return settings.edition.title;
  return firm ? "the sheets' own required rates, no edition named" : "no edition named";
}

/** Whether anything was read through a box, and not flows alone. */
export const readsPressure = ({ firm }: Job): boolean => firm?.readsPressure !== false;

/**
 * First and last day of some rows, with the people who tested. Days that a finding calls unusable
 * are left out and counted.
 */
export function whoAndWhen({ job, findings }: JobCheck, facts: readonly FanFact[]) {
  const { table } = job.fans ?? {};
  const unusable = new Set(
    findings
      .filter(({ kind }) => kind === "date-wrong")
      .flatMap(({ sheet, row }) => table?.readingsAt(sheet, row) ?? []),
  );
  const dated = facts.filter(({ row }) => !unusable.has(row));
  const days = dated.map(({ date }) => date).filter((date) => date > 0);
  const tested = facts.filter(({ tester, isMeasured }) => tester !== "" && isMeasured);
  const testers = timesOf(tested.map(({ tester }) => tester));
  const { dateOffset } = job.file;
  const first = isoDay(Math.min(...days), dateOffset);
  const last = isoDay(Math.max(...days), dateOffset);
  const left = facts.length - dated.length;
  const when =
    days.length === 0 ? "no usable date" : first === last ? first : `${first} to ${last}`;
  return {
    when: left === 0 ? when : `${when}; ${counted(left, "row")} with a date that cannot be used`,
    testers,
  };
}
