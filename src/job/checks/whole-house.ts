import { plainName } from "../fit";
import { dwellingAccount } from "../read";
import type { Check } from "./check";

/** Dwellings whose edition asks for a rate of the whole, and for which no continuous fan is listed. */
export const checkWholeHouse: Check = (job, report) => {
  const { fans, settings, tables } = job;
  const { dwellings } = tables;
  // A sheet that never adds up continuous flows leaves whole dwellings to somebody else.
  if (!fans || !dwellings?.has("provided") || !settings.edition) return;
  const listed = new Set<string>();
  const served = new Set<string>();
  const unsure = new Set<string>();
  for (let i = 0; i < fans.length; i++) {
    const key = plainName(fans.table.text("dwelling", i));
    const duty = fans.duty(i);
    listed.add(key);
    if (!("value" in duty)) unsure.add(key);
    else if (duty.value === "continuous") served.add(key);
  }
  for (let i = 0; i < dwellings.length; i++) {
    const name = dwellings.text("dwelling", i);
    const key = plainName(name);
    if (!listed.has(key) || served.has(key) || unsure.has(key) || dwellings.text("note", i) !== "")
      continue;
    const needed = dwellingAccount(job, i).needed;
    if (!("value" in needed) || !(needed.value.rate > 0)) continue;
    report.at("whole-house-missing", dwellings, "provided", i, name, {
      what: "no continuous fan is listed, and the edition asks for a rate of the whole dwelling",
      effect: "Whether the dwelling gets its rate cannot be said.",
      mend: "List the fan, supply or heat-recovery unit that ventilates the dwelling as continuous, or say in the note what does.",
      cause: "whole house",
    });
  }
};
