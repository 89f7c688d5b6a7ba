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
  const bySet = new Map<string, [dwelling: string, rows: readonly number[]][]>();
  for (const [dwelling, rows] of byDwelling) {
    const readings = rows.map((i) => fans.table.number(fans.typedPressure(i), i));
    if (new Set(readings).size < leastReadings) continue;
    kept(bySet, readings.map(shown).join(", "), () => []).push([dwelling, rows]);
  }
  for (const [set, [source, copy, ...more]] of bySet) {
    if (!source || !copy) continue;
    const [first = 0, ...others] = [copy, ...more].flatMap(([, rows]) => rows);
    const copies =
      more.length === 0 ? copy[0] : `${copy[0]} and of ${more.length.toLocaleString("en")} more`;
    report.at("readings-copied", fans.table, fans.typedPressure(first), first, fans.label(first), {
      what: `the ${copy[1].length} readings of ${copies} are those of ${source[0]}, in the same order (${set} Pa)`,
      effect: `One of them may not have been measured: the flows of ${copies} say nothing of their fans then.`,
      mend: "Compare them with the field notes or photos, and read again what was not measured.",
      also: others.map((i) => fans.table.cell(fans.typedPressure(i), i)),
    });
  }
};
