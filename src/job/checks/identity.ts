import { plainName } from "../fit";
import type { Check } from "./check";

/** Fans and dwellings: each listed once, each fan in a dwelling, each dwelling with a fan. */
export const checkIdentity: Check = (job, report) => {
  const { fans } = job;
  const { dwellings } = job.tables;
  const known = new Map<string, number>();
  dwellings?.texts("dwelling").forEach((name, i) => {
    const first = known.get(plainName(name));
    if (name !== "" && first !== undefined)
      report.at("dwelling-repeated", dwellings, "dwelling", i, name, {
        what: `this dwelling is already listed in ${dwellings.where(first, i)}`,
        effect: "Its fans are counted for both.",
        mend: "Remove one of the rows, or correct its name.",
      });
    else known.set(plainName(name), i);
  });
  if (!fans) return;
  const seen = new Map<string, number>();
  const withFans = new Set<string>();
  for (let i = 0; i < fans.length; i++) {
    const dwelling = fans.table.text("dwelling", i);
    const tag = fans.table.text("tag", i);
    withFans.add(plainName(dwelling));
    if (dwelling === "" || (dwellings && !known.has(plainName(dwelling))))
      report.at("dwelling-unknown", fans.table, "dwelling", i, fans.label(i), {
        what:
          dwelling === ""
            ? "no dwelling is named"
            : `"${dwelling}" is not on the ${dwellings?.name} sheet`,
        cause: plainName(dwelling),
        effect: "The fan counts for no dwelling.",
        mend: "Correct the name, or list the dwelling.",
      });
    const key = `${plainName(dwelling)}\u0000${plainName(tag)}`;
    const first = seen.get(key);
    if (tag !== "" && tag.toLowerCase() !== "none" && first !== undefined)
      report.at("fan-repeated", fans.table, "tag", i, fans.label(i), {
        what: `this fan is already listed in ${fans.table.where(first, i)}`,
        effect: "Its flow is counted twice.",
        mend: "Correct the tag or the dwelling, or remove the row that is not wanted.",
      });
    else seen.set(key, i);
  }
  for (const name of job.tables.schedule?.texts("dwelling") ?? []) withFans.add(plainName(name));
  dwellings?.texts("dwelling").forEach((name, i) => {
    if (name === "" || withFans.has(plainName(name))) return;
    report.at("dwelling-empty", dwellings, "dwelling", i, name, {
      what: "no fan is listed for this dwelling",
      effect: "Nothing shows that it is ventilated.",
      mend: "List its fans, or correct the dwelling named in the fan rows.",
    });
  });
};
