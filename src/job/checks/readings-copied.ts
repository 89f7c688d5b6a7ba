import { kept, shown } from "../../cells";
import type { Job } from "../read";
import type { Check } from "./check";

/** Fewer readings than these may well be the same in two dwellings by chance. */
export const leastReadings = 3;

/** The typed readings of a dwelling, which stand in another dwelling too, in the same order. */
export const checkReadingsCopied: Check = ({ fans }, report, { byRow }) => {
  if (!fans) return;
  const typed = byRow("typed reading", "fans", typedReadings);
  const byDwelling = new Map<string, number[]>();
  for (const [i, dwelling] of fans.table.texts("dwelling").entries())
    if (dwelling !== "" && !Number.isNaN(typed[i])) kept(byDwelling, dwelling, () => []).push(i);
  const bySet = new Map<string, [dwelling: string, rows: readonly number[]][]>();
  for (const [dwelling, rows] of byDwelling) {
    const readings = rows.map((i) => typed[i] as number);
    if (new Set(readings).size < leastReadings) continue;
    kept(bySet, readings.join(), () => []).push([dwelling, rows]);
  }
  for (const [source, copy, ...more] of bySet.values()) {
    if (!source || !copy) continue;
    const [first = 0, ...others] = [copy, ...more].flatMap(([, rows]) => rows);
    const copies =
      more.length === 0 ? copy[0] : `${copy[0]} and of ${more.length.toLocaleString("en")} more`;
    report.at("readings-copied", fans.table, fans.typedPressure(first), first, fans.label(first), {
      what: `the ${copy[1].length} readings of ${copies} are those of ${source[0]}, in the same order (${copy[1].map((i) => shown(typed[i] as number)).join(", ")} Pa)`,
      effect: `One of them may not have been measured: the flows of ${copies} say nothing of their fans then.`,
      mend: "Compare them with the field notes or photos, and read again what was not measured.",
      also: others.map((i) => fans.table.cell(fans.typedPressure(i), i)),
    });
  }
};

/** The reading typed in a row; NaN where there is none. */
function typedReadings({ fans }: Job): number[] {
  return Array.from({ length: fans?.length ?? 0 }, (_, i) => {
    const key = fans?.typedPressure(i) ?? "";
    return fans && !fans.table.hasFormula(key, i) ? fans.table.number(key, i) : Number.NaN;
  });
}
