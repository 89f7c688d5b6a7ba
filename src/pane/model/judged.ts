import { type Guard, type Job, type Verdict, verdictColumn } from "../../job";
import { fanAir } from "./fan-air";
import { twoOpenings } from "./two-openings";

/** What each way of judging says of a flow; undefined where no rate is known. */
export interface BothVerdicts {
  readonly simple: Verdict | undefined;
  /** Undefined where the spread is not known: there is no guard to hold against. */
  readonly guarded: Verdict | undefined;
}

/**
 * The flow that the job judges a fan by: measured, at the density at hand, at standard air, or
 * without the box. The measured one stands in where two openings were not read.
 */
export function judgedFlow(job: Job, i: number): number {
  const { fans, settings } = job;
  const measured = fans?.flow[i] ?? Number.NaN;
  if (Number.isNaN(measured) || settings.judgeBy === "measured") return measured;
  if (settings.judgeBy === "without box") {
    const free = twoOpenings(job, i);
    return free && "budget" in free ? free.budget.value : measured;
  }
  const air = fanAir(job, i);
  return "problem" in air ? Number.NaN : air[settings.judgeBy];
}

/** Guarded judging of these spreads, where the job asks for it. */
export function guardOf({ settings }: Job, spread: Guard["spread"]): Guard | undefined {
  return settings.judging === "guarded" ? { spread, chance: settings.chance } : undefined;
}

/** A fan's verdicts side by side. `spread` is the standard one of its flow, NaN where not known. */
export function bothVerdicts(job: Job, i: number, spread: number): BothVerdicts {
  const { fans, settings } = job;
  const flow = judgedFlow(job, i);
  const required = fans?.requiredNumber(i) ?? Number.NaN;
  const status = [fans?.isByInstrument(i) ? undefined : fans?.status[i]];
  const guard = { spread, chance: settings.chance };
  return {
    simple: verdictColumn(flow, required, 1, status)[0],
    guarded: Number.isNaN(spread) ? undefined : verdictColumn(flow, required, 1, status, guard)[0],
  };
}
