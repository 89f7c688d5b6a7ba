import { factsOf } from "../facts";
import { eachRow } from "./each";

/** Dwellings whose edition asks for a rate of the whole, and for which no continuous fan is listed. */
export const checkWholeHouse = eachRow("dwellings", (dwellings, job) => {
  const { fans, settings } = job;
  // A sheet that never adds up continuous flows leaves whole dwellings to somebody else.
  if (!fans || !dwellings.has("provided") || !settings.edition) return undefined;
  return (i, say) => {
    const { needed, ...facts } = factsOf(job).dwellings.at(i);
    if (facts.fans.length === 0 || facts.continuousFans > 0 || facts.isUnsure) return;
    if (dwellings.text("note", i) !== "") return;
    if (!("value" in needed) || !(needed.value.rate > 0)) return;
    say("whole-house-missing", "provided", {
      what: "no continuous fan is listed, and the edition asks for a rate of the whole dwelling",
      effect: "Whether the dwelling gets its rate cannot be said.",
      mend: "List the fan, supply or heat-recovery unit that ventilates the dwelling as continuous, or say in the note what does.",
      cause: "whole house",
    });
  };
});
