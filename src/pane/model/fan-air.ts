import { type CallWorking, callLines, explainCall, factsOf, type Job } from "../../job";
import { digits, sentenceOf } from "./in-words";
import { type Clause, clauseOf } from "./marks";

/** The air at one fan and what it makes of the fan's flow; flows in the job's unit. */
interface FanAir {
  /** kg/m³. */
  readonly density: number;
  readonly actual: number;
  readonly standard: number;
  /** How the density and the two flows came about, a line each. */
  readonly working: readonly string[];
  /** What stood in for what nobody read. */
  readonly stoodIn: readonly string[];
  readonly sources: readonly Clause[];
}

/** The air at a fan by its own temperature or the job's; flows are NaN where none was measured. */
export function fanAir(job: Job, i: number): FanAir | { readonly problem: string } {
  const { fans, settings } = job;
  const { system } = settings;
  const own = fans?.table.number("temperature", i) ?? Number.NaN;
  const temperature = Number.isNaN(own) ? settings.temperature : own;
  if (temperature === undefined)
    return { problem: "No air temperature is given in this row or on the Job sheet." };
  const byPlace = settings.barometer === undefined ? "elevation" : "barometer";
  const state = explainCall("AIR_DENSITY", [
    temperature,
    settings.humidity ?? null,
    settings.barometer ?? null,
    settings.elevation ?? null,
    system,
  ]);
  if (state.problem !== undefined) return { problem: sentenceOf(state.problem) };
  const density = numberOf(state);
  const factor = explainCall("AIR_FACTOR", [density]);
  if (factor.problem !== undefined) return { problem: sentenceOf(factor.problem) };
  const measured = fans?.flow[i] ?? Number.NaN;
  const flows = factsOf(job).fans?.air(i);
  const actual = flows?.actual ?? Number.NaN;
  const atStandard = explainCall("STANDARD_FLOW", [Number.isNaN(actual) ? null : actual, density]);
  const isFlowing = atStandard.problem === undefined;
  return {
    density,
    actual,
    standard: flows?.standard ?? Number.NaN,
    working: [
      ...callLines(state).filter((line) => !state.words.includes(line)),
      ...callLines(factor),
      ...(isFlowing
        ? [
            `Actual flow = measured · F = ${digits(measured, 4)} · ${digits(numberOf(factor), 4)} = ${digits(actual, 4)}`,
            ...callLines(atStandard),
          ]
        : []),
    ],
    stoodIn: [
      ...state.words,
      ...(settings[byPlace] === undefined ? ["sea level, since no elevation is given"] : []),
    ],
    sources: uniqueSources([state, factor, ...(isFlowing ? [atStandard] : [])]),
  };
}

function numberOf({ gives: [value] }: CallWorking): number {
  return typeof value === "number" ? value : Number.NaN;
}

function uniqueSources(calls: readonly CallWorking[]): Clause[] {
  const texts = new Set<string>();
  return calls
    .flatMap(({ sources }) => sources)
    .filter(({ text }) => !texts.has(text) && texts.add(text))
    .map(clauseOf);
}
