import { shown, shownApart } from "../../cells";
import { unitOf } from "../columns";
import { factsOf } from "../facts";
import type { Check } from "./check";

/** Dwellings whose continuous fans move less than they must. */
export const checkDwellingRates: Check = (job, report) => {
  const { dwellings, fans } = job.tables;
  if (!dwellings || !fans) return;
  const unit = unitOf("flow", job.settings.system);
  for (let i = 0; i < dwellings.length; i++) {
    const { name, provided, neededFlow, missing, isTold } = factsOf(job).dwellings.at(i);
    if (!isTold || !(missing > 0)) continue;
    const [own, least] = shownApart(provided, neededFlow);
    const key = dwellings.has("provided") ? "provided" : "dwelling";
    report.at("dwelling-short", dwellings, key, i, name, {
      what: `its continuous fans move ${own} ${unit} where ${least} ${unit} are required`,
      effect: `The dwelling is short by ${shown(missing)} ${unit}.`,
      mend: "Raise the continuous flow, add a continuous fan, or record the credit that makes up for it.",
    });
  }
};
