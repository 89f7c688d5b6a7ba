import { shown } from "../../cells";
import { type Unit, unitIn } from "../../formulas";
import { type FanFacts, factsOf, flowUnit, type Job, type Verdict } from "../../job";
import { acceptFrom, type Budget } from "../../spread";
import { digits, percentOf, sentenceOf } from "./in-words";

/** One reason why a flow may be off. */
export interface SpreadLine {
  readonly label: string;
  /** "ΔP = 5.53, u 0.144 Pa" */
  readonly input: string;
  /** What it does to the flow, in the flow's unit. */
  readonly contribution: string;
  /** Part of the variance, 0 to 1. */
  readonly share: number;
}

/** One way of accepting a flow. */
export interface Acceptance {
  readonly way: "simple" | "guarded";
  /** "50 cfm" and the like; "–" where no rate is known. */
  readonly meetsFrom: string;
  /** Below this it is short. */
  readonly shortBelow: string;
  readonly verdict: Verdict | "rate unknown";
  /** The job judges this way. */
  readonly used: boolean;
}

interface FreeFlow {
  /** "B, then C" */
  readonly openings: string;
  readonly measured: string;
  readonly free: string;
  /** "± 3.1 cfm at 95 % (k 1.96)" */
  readonly around: string;
  /** "12 % more than measured". */
  readonly gain: string;
}

export interface SpreadView {
  readonly title: string;
  readonly measured: string;
  readonly lines: readonly SpreadLine[];
  /** "1.32 cfm" */
  readonly u: string;
  /** "2.59 cfm" and "95 %": what the true flow lies within, and how surely. */
  readonly expanded: string;
  readonly coverage: string;
  /** "1.96, of 964 effective degrees of freedom" */
  readonly k: string;
  /** "" where no rate is known. */
  readonly chance: string;
  readonly acceptances: readonly Acceptance[];
  /** Which flow is judged where that is another than the measured one; else "". */
  readonly judged: string;
}

/** The spread of a fan's flow, or why there is none to tell. */
export function spreadView(job: Job, i: number): SpreadView | { readonly problem: string } {
  const { settings } = job;
  const facts = factsOf(job).fans;
  if (!facts) return { problem: "No sheet with fans was found." };
  const budget = facts.budget(i);
  if (!budget) return { problem: whyNone(job, i) };
  const unit = flowUnit(settings.system);
  const [flow, required] = [facts.judged(i), facts.required(i)];
  const isOther = settings.judgeBy !== "measured" && !Number.isNaN(flow);
  return {
    title: facts.fans.label(i),
    measured: `${shown(budget.value)} ${unit}`,
    lines: budget.lines.map((line) => ({
      label: line.label,
      input: inputWords(line, settings.system),
      contribution: digits(line.contribution),
      share: Math.max(0, line.share),
    })),
    u: `${digits(budget.u)} ${unit}`,
    expanded: `${digits(budget.expanded)} ${unit}`,
    coverage: percentOf(budget.chance),
    k: `${digits(budget.k)}, of ${freedomWords(budget.dof)}`,
    chance: Number.isNaN(required)
      ? ""
      : `Chance of truly meeting ${shown(required)} ${unit}: ${chanceWords(facts.chance(i))}`,
    acceptances: acceptances(job, facts, i),
    judged: isOther
      ? `Judged is the ${settings.judgeBy} flow, ${shown(flow)} ${unit}, with the spread of the measured one.`
      : "",
  };
}

/**
 * The measured flow beside that without the box; a sentence where it cannot be told, and where
 * there is one reading alone: nothing is carried on from a single point.
 */
export function freeFlowView(job: Job, i: number): FreeFlow | { readonly problem: string } {
  const { fans, settings } = job;
  const found = factsOf(job).fans?.twoOpenings(i);
  if (!found)
    return {
      problem:
        "One reading through one opening does not tell the flow without the box. Read the fan again through another opening.",
    };
  if ("problem" in found) return { problem: sentenceOf(found.problem) };
  const unit = flowUnit(settings.system);
  const { budget, openings } = found.value;
  const measured = fans?.flow[i] ?? Number.NaN;
  const more = percentOf(budget.value / measured - 1);
  return {
    openings: openings.join(", then "),
    measured: `${shown(measured)} ${unit}`,
    free: `${shown(budget.value)} ${unit}`,
    around: `u ${digits(budget.u)} ${unit}; ${aroundWords(budget, unit)}`,
    gain:
      budget.value >= measured
        ? `${more} more than measured through ${openings[0]}`
        : "No more than measured: the box does not hold this fan back.",
  };
}

function acceptances({ settings }: Job, facts: FanFacts, i: number): Acceptance[] {
  const unit = flowUnit(settings.system);
  const required = facts.required(i);
  const flowWords = (value: number) => (Number.isNaN(value) ? "–" : `${shown(value)} ${unit}`);
  const limit = (chance: number) =>
    flowWords(acceptFrom(required, facts.spread(i), chance, facts.budget(i)?.dof));
  return [
    {
      way: "simple",
      meetsFrom: flowWords(required),
      shortBelow: flowWords(required),
      verdict: facts.verdict(i, "simple") ?? "rate unknown",
      used: settings.judging === "simple",
    },
    {
      way: "guarded",
      meetsFrom: limit(settings.chance),
      shortBelow: limit(1 - settings.chance),
      verdict: facts.verdict(i, "guarded") ?? "rate unknown",
      used: settings.judging === "guarded",
    },
  ];
}

function inputWords(
  { shown: symbol, value, unit, u }: Budget["lines"][number],
  system: "ip" | "si",
): string {
  const off = `u ${withUnit(u, unit, system)}`;
  // The errors of an instrument are inputs of their own, each 0 as far as anyone knows.
  return value === 0 ? off : `${symbol} = ${digits(value)}, ${off}`;
}

function withUnit(value: number, unit: Unit, system: "ip" | "si"): string {
  const text = unitIn(unit, system);
  return text === "1" || text === "" ? digits(value) : `${digits(value)} ${text}`;
}

/** No chance that a spread tells is certain. */
function chanceWords(chance: number): string {
  return percentOf(Math.min(1 - Number.EPSILON, Math.max(Number.MIN_VALUE, chance)));
}

function aroundWords({ expanded, chance, k }: Budget, unit: string): string {
  return `± ${digits(expanded)} ${unit} at ${percentOf(chance)}, k ${digits(k)}`;
}

/** Beyond this many, a further degree of freedom changes nothing that is shown. */
const many = 1000;

function freedomWords(dof: number): string {
  const count = dof > many ? `over ${many}` : String(Math.floor(dof));
  return `${count} effective degrees of freedom`;
}

function whyNone(job: Job, i: number): string {
  const { fans } = job;
  if (!fans || fans.isAbsent(i)) return "This room has no fan.";
  if (!fans.isMeasured(i)) return "Nothing was measured here yet.";
  if (fans.isByInstrument(i)) {
    const name = fans.table.text("instrument", i);
    return fans.instruments?.find(name)
      ? `The Instruments sheet states no limit of ${name}: how far its reading may be off is not known.`
      : `${name} is not on the Instruments sheet: how far its reading may be off is not known.`;
  }
  return "The reading gives no flow: it needs a pressure above 0 and an open area.";
}
