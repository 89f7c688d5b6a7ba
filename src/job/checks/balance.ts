import { shown } from "../../cells";
import { balancedRules } from "../../editions";
import { unitOf } from "../columns";
import { factsOf } from "../facts";
import type { Check } from "./check";

/** Dwellings whose edition raises the rate by what the system is not, and that do not say it. */
export const checkSystem: Check = (job, report) => {
  const { settings, tables } = job;
  const { dwellings } = tables;
  const rule = balancedRules.find(({ code }) => code === settings.edition?.id);
  if (!dwellings || !rule?.increase) return;
  for (let row = 0; row < dwellings.length; row++) {
    const { ofSystem, continuousFans, name } = factsOf(job).dwellings.at(row);
    if (ofSystem || continuousFans === 0) continue;
    const key = dwellings.has("ducted") ? "ducted" : "required";
    report.at("system-unsaid", dwellings, key, row, name, {
      what: `${settings.edition?.id} multiplies the rate by up to ${1 + rule.increase.neither} where the system is not balanced and ducted to the rooms, and nothing says whether it is`,
      effect: "The rate counts as that of a balanced and ducted system, which is the least.",
      mend: 'Say "yes" (both), "one" (one of the two) or "no" under Balanced and ducted on the Dwellings sheet.',
      cause: "system",
    });
  }
};

/** Supply beside exhaust: whether the two are as near as the edition asks, and how supply was read. */
export const checkBalance: Check = (job, report) => {
  const { fans, settings, tables } = job;
  const { dwellings } = tables;
  if (!fans?.table.has("direction")) return;
  for (let i = 0; i < fans.length; i++)
    if (fans.isSupply(i) && !fans.isByInstrument(i) && fans.isMeasured(i))
      report.at("supply-by-box", fans.table, fans.typedPressure(i), i, fans.label(i), {
        what: "a supply terminal was read with the box, which is made for exhaust",
        effect: "The jet of a supply disturbs the pressure in the box: the flow is unsure.",
        mend: "Measure supply with a hood or a bag, or in the duct, and name the instrument.",
        cause: "supply by box",
      });
  const all = factsOf(job).dwellings;
  for (let row = 0; row < (dwellings?.length ?? 0); row++) {
    const facts = all.at(row);
    const balance = facts.isUnsure ? undefined : all.balance(facts);
    if (!dwellings || !balance || balance.value === "balanced") continue;
    const unit = unitOf("flow", settings.system);
    const key = dwellings.has("balance") ? "balance" : "dwelling";
    report.at("balance-off", dwellings, key, row, facts.name, {
      what: `${shown(facts.supplied)} ${unit} of supply and ${shown(facts.exhausted)} ${unit} of exhaust are ${balance.value === "not balanced" ? "not balanced" : "balanced by one definition of the edition and not by the other"}: ${balance.working}`,
      effect: "No reduction of the rate, and no duty to be balanced, can rest on it.",
      mend:
        balance.value === "not balanced"
          ? "Set the speeds or the dampers and measure both again."
          : "Ask the code official which definition counts, or set the flows nearer to each other.",
    });
  }
};
