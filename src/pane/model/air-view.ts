import { shown } from "../../cells";
import { airViews, factsOf, flowUnit, type Job, type Settings } from "../../job";
import { fanAir } from "./fan-air";
import { digits } from "./in-words";
import { type Clause, clauseOf } from "./marks";

export interface AirFlow {
  readonly title: string;
  /** Without the unit; "–" where there is none. */
  readonly flow: string;
  /** The job judges by this one. */
  readonly judged: boolean;
}

export interface FanAirView {
  /** "0.987 kg/m³", or "" where it cannot be told: `problem` then says why. */
  readonly density: string;
  readonly problem: string;
  readonly working: readonly string[];
  readonly stoodIn: readonly string[];
  readonly sources: readonly Clause[];
  readonly unit: string;
  readonly flows: readonly AirFlow[];
  /** Where the factor of a box may not be that of what was used; else "". */
  readonly note: string;
}

/** What standards and guides say of correcting a flow for the air, in words. */
interface StandardView {
  readonly who: string;
  readonly asks: string;
  readonly words: string;
  readonly clause: Clause;
}

const askWords = {
  leave: "Judge the flow as measured",
  correct: "Correct for the density",
  reference: "Judge at standard air",
} as const;

export const standardViews: readonly StandardView[] = airViews.map(
  ({ who, asks, words, source }) => ({
    who,
    asks: askWords[asks],
    words,
    clause: clauseOf(source),
  }),
);

/** The flow of a fan as measured, at the density at hand and at standard air, side by side. */
export function fanAirView(job: Job, i: number): FanAirView {
  const { fans, settings } = job;
  const air = fanAir(job, i);
  const measured = fans?.flow[i] ?? Number.NaN;
  const flowOf = (title: string, by: Settings["judgeBy"], value: number): AirFlow => ({
    title,
    flow: Number.isNaN(value) ? "–" : shown(value),
    judged: settings.judgeBy === by,
  });
  const known = "problem" in air ? undefined : air;
  const free = settings.judgeBy === "without box" ? factsOf(job).fans?.twoOpenings(i) : undefined;
  const isFree = free && "value" in free;
  return {
    density: known ? `${digits(known.density)} kg/m³` : "",
    problem: "problem" in air ? air.problem : "",
    working: known?.working ?? [],
    stoodIn: known?.stoodIn ?? [],
    sources: known?.sources ?? [],
    unit: flowUnit(settings.system),
    flows: [
      flowOf(
        "Measured",
        settings.judgeBy === "without box" && !isFree ? "without box" : "measured",
        measured,
      ),
      flowOf("Actual", "actual", known?.actual ?? Number.NaN),
      flowOf("Standard", "standard", known?.standard ?? Number.NaN),
      ...(isFree ? [flowOf("Without box", "without box", free.value.budget.value)] : []),
    ],
    note:
      known && fans?.isByInstrument(i)
        ? `The factor is that of a box. What ${fans.table.text("instrument", i)} shows in other air, its maker says.`
        : "",
  };
}
