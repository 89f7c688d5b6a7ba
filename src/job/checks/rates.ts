import { shown } from "../../cells";
import { chanceMet } from "../../spread";
import { unitOf } from "../columns";
import { plainName } from "../fit";
import { dwellingAccount, fanDeficit, type Job } from "../read";
import type { Check } from "./check";

/** Fans and dwellings whose flow is short of what the edition asks. */
export const checkRates: Check = (job, report) => {
  const { fans, settings } = job;
  if (!fans) return;
  const unit = unitOf("flow", settings.system);
  for (let i = 0; i < fans.length; i++) {
    const flow = fans.flow[i] as number;
    const required = fans.requiredNumber(i);
    const close = closeCall(job, i, required);
    if (close !== undefined)
      report.at("flow-close", fans.table, "flow", i, fans.label(i), {
        what: `${shown(flow)} ${unit} against ${shown(required)} ${unit}: the chance of truly meeting it is ${shown(100 * close)} %`,
        effect: `The job asks for ${shown(100 * settings.chance)} %: neither "meets" nor "short" can be said.`,
        mend: "Measure with a smaller spread (a pressure of 3 to 6 Pa, more readings, a proved constant), or raise the flow.",
      });
    if (!(flow < required) || close !== undefined) continue;
    const deficit = fans.table.has("deficit") ? fanDeficit(job, i) : undefined;
    if (deficit && "value" in deficit) {
      const { rate } = deficit.value;
      report.at("deficit-carried", fans.table, "flow", i, fans.label(i), {
        what: `${shown(flow)} ${unit} is short of ${shown(required)} ${unit}; the room's deficit is ${shown(rate)}`,
        effect:
          rate > 0
            ? `The alternative for existing buildings lets it stay: a part of it is added to the dwelling's rate (${deficit.value.source.work}, ${deficit.value.source.clause}).`
            : "The openable window makes up for it under the alternative for existing buildings.",
        mend: "Mend or replace the fan, or see that the dwelling's continuous flow carries the deficit.",
      });
      continue;
    }
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
    const account = dwellingAccount(job, i);
    const rate = "value" in account.needed ? account.needed.value : undefined;
    // Without a continuous fan the dwelling is ventilated by something that is not on this sheet.
    if (!sum || !rate || sum.unsure || sum.fans === 0 || account.deficits?.unsure) continue;
    if (!(sum.flow < rate.rate)) continue;
    const key = dwellings.has("provided") ? "provided" : "dwelling";
    report.at("dwelling-short", dwellings, key, i, name, {
      what: `its continuous fans move ${shown(sum.flow)} ${unit} where ${shown(rate.rate)} ${unit} are required`,
      effect: `The dwelling is short by ${shown(rate.rate - sum.flow)} ${unit}.`,
      mend: "Raise the continuous flow, add a continuous fan, or record the credit that makes up for it.",
    });
  }
};

/** The chance that a flow truly meets its rate, where guarded judging can decide neither way. */
function closeCall(job: Job, i: number, required: number): number | undefined {
  const { fans, settings } = job;
  if (!fans?.table.has("spread") || settings.judging !== "guarded") return undefined;
  const [flow, u] = [fans.flow[i] as number, fans.table.number("spread", i)];
  if (!(u > 0) || !(flow > 0) || !(required > 0) || !isUsable(fans, i)) return undefined;
  const chance = chanceMet(flow, u, required);
  return chance < settings.chance && chance > 1 - settings.chance ? chance : undefined;
}

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
      if (Number.isNaN(flow) || !isUsable(fans, i)) sum.unsure = true;
      else sum.flow += flow;
    }
  }
  return sums;
}

/** Whether a flow may carry a sum or a verdict: read inside the window, or with another instrument. */
function isUsable(fans: Job["fans"], i: number): boolean {
  return fans?.status[i] === "in range" || fans?.isByInstrument(i) === true;
}
