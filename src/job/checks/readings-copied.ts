import { kept, shown } from "../../cells";
import type { Check } from "./check";

/** Fewer readings than these may well be the same in two dwellings by chance. */
export const leastReadings = 3;

/** The typed readings of a dwelling, which stand in another dwelling too, in the same order. */
export const checkReadingsCopied: Check = (job, report) => {
  const { fans } = job;
  if (!fans) return;
  const byDwelling = new Map<string, number[]>();
  for (let i = 0; i < fans.length; i++) {
    const { table } = fans;
    const key = fans.typedPressure(i);
    const dwelling = table.text("dwelling", i);
    if (dwelling === "" || table.hasFormula(key, i) || Number.isNaN(table.number(key, i))) continue;
    kept(byDwelling, dwelling, () => []).push(i);
  }
  const seen = new Map<string, readonly [dwelling: string, rows: readonly number[]]>();
  for (const [dwelling, rows] of byDwelling) {
    const readings = rows.map((i) => fans.table.number(fans.typedPressure(i), i));
    if (new Set(readings).size < leastReadings) continue;
    const set = readings.join(" ");
    const before = seen.get(set);
    if (!before) {
      seen.set(set, [dwelling, rows]);
      continue;
    }
    const [first = 0, ...others] = rows;
    report.at("readings-copied", fans.table, fans.typedPressure(first), first, fans.label(first), {
      what: `the ${readings.length} readings of ${dwelling} are those of ${before[0]}, in the same order (${readings.map(shown).join(", ")} Pa)`,
      effect: `Either dwelling may not have been measured: the flows of ${dwelling} say nothing of its fans then.`,
      mend: "Compare both with the field notes or photos, and read again what was not measured.",
      also: others.map((i) => fans.table.cell(fans.typedPressure(i), i)),
    });
  }
};
