import { factsOf } from "../facts";
import type { Check } from "./check";

/** Dwellings whose edition asks for a rate of the whole, and for which no continuous fan is listed. */
export const checkWholeHouse: Check = (job, report) => {
  const { fans, settings, tables } = job;
  const { dwellings } = tables;
  // A sheet that never adds up continuous flows leaves whole dwellings to somebody else.
  if (!fans || !dwellings?.has("provided") || !settings.edition) return;
  for (let i = 0; i < dwellings.length; i++) {
    const { name, needed, ...facts } = factsOf(job).dwellings.at(i);
    if (facts.fans.length === 0 || facts.continuousFans > 0 || facts.isUnsure) continue;
    if (dwellings.text("note", i) !== "") continue;
    if (!("value" in needed) || !(needed.value.rate > 0)) continue;
    report.at("whole-house-missing", dwellings, "provided", i, name, {
      what: "no continuous fan is listed, and the edition asks for a rate of the whole dwelling",
      effect: "Whether the dwelling gets its rate cannot be said.",
      mend: "List the fan, supply or heat-recovery unit that ventilates the dwelling as continuous, or say in the note what does.",
      cause: "whole house",
    });
  }
};
