import { shown } from "../../cells";
import { balancedRules } from "../../editions";
import { unitOf } from "../columns";
import { factsOf } from "../facts";
import { eachFan, eachRow } from "./each";

/** Dwellings whose edition raises the rate by what the system is not, and that do not say it. */
export const checkSystem = eachRow("dwellings", (dwellings, job) => {
  const { settings } = job;
  const { increase } = balancedRules.find(({ code }) => code === settings.edition?.id) ?? {};
  if (!increase) return undefined;
  return (i, say) => {
    const { ofSystem, continuousFans } = factsOf(job).dwellings.at(i);
    if (ofSystem || continuousFans === 0) return;
    const key = dwellings.has("ducted") ? "ducted" : "required";
    say("system-unsaid", key, {
      what: `${settings.edition?.id} multiplies the rate by up to ${1 + increase.neither} where the system is not balanced and ducted to the rooms, and nothing says whether it is`,
      effect: "The rate counts as that of a balanced and ducted system, which is the least.",
      mend: 'Say "yes" (both), "one" (one of the two) or "no" under Balanced and ducted on the Dwellings sheet.',
      cause: "system",
    });
  };
});

/** Supply that was read with the box. */
export const checkSupplyRead = eachFan((fans) => {
  if (!fans.table.has("direction")) return undefined;
  return (i, say) => {
    if (fans.isSupply(i) && !fans.isByInstrument(i) && fans.isMeasured(i))
      say("supply-by-box", fans.typedPressure(i), {
        what: "a supply terminal was read with the box, which is made for exhaust",
        effect: "The jet of a supply disturbs the pressure in the box: the flow is unsure.",
        mend: "Measure supply with a hood or a bag, or in the duct, and name the instrument.",
        cause: "supply by box",
      });
  };
});

/** Supply beside exhaust: whether the two are as near as the edition asks. */
export const checkBalance = eachRow("dwellings", (dwellings, job) => {
  if (!job.fans?.table.has("direction")) return undefined;
  const all = factsOf(job).dwellings;
  const unit = unitOf("flow", job.settings.system);
  const key = dwellings.has("balance") ? "balance" : "dwelling";
  return (i, say) => {
    const facts = all.at(i);
    const balance = facts.isUnsure ? undefined : all.balance(facts);
    if (!balance || balance.value === "balanced") return;
    say("balance-off", key, {
      what: `${shown(facts.supplied)} ${unit} of supply and ${shown(facts.exhausted)} ${unit} of exhaust are ${balance.value === "not balanced" ? "not balanced" : "balanced by one definition of the edition and not by the other"}: ${balance.working}`,
      effect: "No reduction of the rate, and no duty to be balanced, can rest on it.",
      mend:
        balance.value === "not balanced"
          ? "Set the speeds or the dampers and measure both again."
          : "Ask the code official which definition counts, or set the flows nearer to each other.",
    });
  };
});
