import { shown, shownApart } from "../../cells";
import { asksNoFan } from "../../rules";
import { unitOf } from "../columns";
import { type DwellingFacts, factsOf } from "../facts";
import { valueIn } from "../read";
import { eachRow } from "./each";
import { where } from "./equipment";

/** Dwellings whose continuous fans move less than they must, or more than they may. */
export const checkDwellingRates = eachRow("dwellings", (dwellings, job) => {
  if (!job.tables.fans) return undefined;
  const unit = unitOf("flow", job.settings.system);
  return (i, say) => {
    const facts = factsOf(job).dwellings.at(i);
    const { provided, neededFlow, missing, isTold } = facts;
    if (!isTold) return;
    const key = dwellings.has("provided") ? "provided" : "dwelling";
    const { most = Number.POSITIVE_INFINITY, source } = valueIn(facts.required) ?? {};
    if (source && provided > most) {
      const [own, limit] = shownApart(provided, most);
      say("dwelling-over", key, {
        what: `its continuous fans move ${own} ${unit}, and the edition sets a band: ${shown(neededFlow)} to ${limit} ${unit} (${where({ source })})`,
        effect: "Too much air fails as well as too little.",
        mend: "Set a lower speed, or use a fan that has one, and measure again.",
      });
    }
    if (!(missing > 0)) return;
    const [own, least] = shownApart(provided, neededFlow);
    const { credit } = job.settings.edition ?? {};
    const { work, system } = job.settings;
    const noFan = facts.infiltration && credit && asksNoFan(credit, neededFlow, work, system);
    say("dwelling-short", key, {
      what: `its continuous fans move ${own} ${unit} where ${least} ${unit} are required${madeUp(facts)}`,
      effect: noFan
        ? `The dwelling is short by ${shown(missing)} ${unit}, yet so little may need no fan at all (${where(noFan)}).`
        : `The dwelling is short by ${shown(missing)} ${unit}.`,
      mend: noFan
        ? "Verify against your copy of the edition before anything is built."
        : "Raise the continuous flow, add a continuous fan, or record the credit that makes up for it.",
    });
  };
});

/** What the rate that fans must move is made up of, where it is not the edition's alone. */
function madeUp({ required, ofSystem, deficits, raised, infiltration, needed }: DwellingFacts) {
  const rate = (of: DwellingFacts["raised"]) => (of && valueIn(of)?.rate) ?? Number.NaN;
  const own = rate(required);
  // The sheet's own number stands in where the edition gives none.
  if (Number.isNaN(own)) return "";
  const base = (ofSystem && valueIn(ofSystem)?.rate) ?? own;
  const before = raised ? rate(raised) : base;
  const steps = [
    ...(base === own ? [] : [`${shown(base)} with its system`]),
    ...(before > base
      ? [`${shown(before - base)} more for room deficits of ${shown(deficits?.sum ?? 0)}`]
      : []),
    ...(infiltration && rate(needed) < before
      ? [`${shown(before - rate(needed))} less for infiltration`]
      : []),
  ];
  return steps.length === 0 ? "" : ` (${[`${shown(own)} by the edition`, ...steps].join(", ")})`;
}
