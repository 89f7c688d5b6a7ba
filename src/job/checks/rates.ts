import { plainName } from "../fit";
import type { Job } from "../read";
import { dwellingRate, type RequiredRate } from "../rules";
import { unitOf } from "../sheets";
import { shown } from "../words";
import type { Check } from "./check";

/** Fans and dwellings whose flow is short of what the edition asks. */
export const checkRates: Check = (job, report) => {
  const { fans, settings } = job;
  if (!fans) return;
  const unit = unitOf("flow", settings.system);
  for (let i = 0; i < fans.length; i++) {
    const flow = fans.flow[i] as number;
    const required = fans.requiredNumber(i);
    if (!(flow < required)) continue;
    report.at("flow-short", fans.table, "flow", i, fans.label(i), {
      what: `${shown(flow)} ${unit} is short of the required ${shown(required)} ${unit} by ${shown(required - flow)}`,
      effect: "The room does not get the rate that the edition asks for.",
      mend: "Look for a crushed or long duct, a stuck damper, a blocked terminal or a low speed setting; mend, then test again.",
    });
  }
  const { dwellings } = job.tables;
  if (!dwellings) return;
  const sums = continuousFlows(job);
  for (let i = 0; i < dwellings.length; i++) {
    const name = dwellings.text("dwelling", i);
    const sum = sums.get(plainName(name));
    const rate = requiredOfDwelling(job, i);
    // Without a continuous fan the dwelling is ventilated by something that is not on this sheet.
    if (!sum || !rate || sum.unsure || sum.fans === 0 || !(sum.flow < rate.rate)) continue;
    const key = dwellings.has("provided") ? "provided" : "dwelling";
    report.at("dwelling-short", dwellings, key, i, name, {
      what: `its continuous fans move ${shown(sum.flow)} ${unit} where ${shown(rate.rate)} ${unit} are required`,
      effect: `The dwelling is short by ${shown(rate.rate - sum.flow)} ${unit}.`,
      mend: "Raise the continuous flow, add a continuous fan, or record the credit that makes up for it.",
    });
  }
};

/** The continuous fans of a dwelling: how many, what they move together, whether that is sure. */
interface Continuous {
  fans: number;
  flow: number;
  unsure: boolean;
}

/** Sum of the measured continuous flows of each dwelling; unsure where one is not measured. */
export function continuousFlows(job: Job): ReadonlyMap<string, Continuous> {
  let sums = known.get(job);
  if (!sums) {
    sums = sumContinuous(job);
    known.set(job, sums);
  }
  return sums;
}

/** Two checks ask for the same sums. */
const known = new WeakMap<Job, ReadonlyMap<string, Continuous>>();

function sumContinuous(job: Job): Map<string, Continuous> {
  const sums = new Map<string, Continuous>();
  const { fans } = job;
  for (let i = 0; i < (fans?.length ?? 0); i++) {
    const key = plainName(fans?.table.text("dwelling", i) ?? "");
    const sum = sums.get(key) ?? { fans: 0, flow: 0, unsure: false };
    sums.set(key, sum);
    const duty = fans?.duty(i);
    if (!duty || !("value" in duty)) sum.unsure = true;
    else if (duty.value === "continuous") {
      sum.fans++;
      const flow = fans?.flow[i] ?? Number.NaN;
      if (Number.isNaN(flow) || fans?.status[i] !== "in range") sum.unsure = true;
      else sum.flow += flow;
    }
  }
  return sums;
}

/** The edition's rate for a dwelling row, or undefined where it cannot be told. */
export function requiredOfDwelling(job: Job, i: number): RequiredRate | undefined {
  const { dwellings } = job.tables;
  const { edition, system, method } = job.settings;
  if (!dwellings || !edition) return undefined;
  const [floor, bedrooms] = [dwellings.number("floor", i), dwellings.number("bedrooms", i)];
  if (!(floor > 0) || !(bedrooms >= 0)) return undefined;
  try {
    return dwellingRate(edition, floor, bedrooms, system, method);
  } catch {
    // What is wrong with the size or the method has a finding of its own.
    return undefined;
  }
}
