import { cellName, shown } from "../../cells";
import type { Job } from "../read";
import { usualWindow } from "../rules";
import type { Check } from "./check";

/** A window of pressures wider than the usual one, with the fans that only it lets pass. */
export const checkWideWindow: Check = (job, report) => {
  const { low, high } = job.settings;
  const sides = [
    { key: "high", own: high, usual: usualWindow.high, isWide: high > usualWindow.high },
    { key: "low", own: low, usual: usualWindow.low, isWide: low < usualWindow.low },
  ];
  for (const { key, own, usual, isWide } of sides) {
    const at = job.fit.settings.get(key);
    if (!at || !isWide) continue;
    const passed = countBetween(job, own, usual);
    report.add("setting-unusual", at.sheet, cellName(at.row, at.col), at.row, "", {
      what: `the ${key === "high" ? "highest" : "lowest"} pressure is set to ${shown(own)} Pa; ${shown(usual)} Pa is usual`,
      effect:
        passed === 0
          ? "No fan is judged otherwise for it."
          : `${passed === 1 ? "1 fan passes" : `${passed} fans pass`} the window for it whose reading the usual one would have taken again.`,
      mend: "Say on the sheet why this box and manometer are good for it, or set the usual value.",
    });
  }
};

function countBetween({ fans }: Job, a: number, b: number): number {
  const [from, to] = [Math.min(a, b), Math.max(a, b)];
  let count = 0;
  for (let i = 0; i < (fans?.length ?? 0); i++) {
    const pressure = Math.abs(fans?.pressure[i] ?? Number.NaN);
    if (pressure >= from && pressure <= to && pressure !== b) count++;
  }
  return count;
}

/** Fewer readings than these may well be the same in two dwellings by chance. */
const leastReadings = 3;

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
    byDwelling.set(dwelling, [...(byDwelling.get(dwelling) ?? []), i]);
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
    const cellOf = (i: number) => {
      const { grid, row, col } = fans.table.placeOrHome(fans.typedPressure(i), i);
      return { sheet: grid.name, cell: cellName(row, col) };
    };
    report.at("readings-copied", fans.table, fans.typedPressure(first), first, fans.label(first), {
      what: `the ${readings.length} readings of ${dwelling} are those of ${before[0]}, in the same order (${readings.map(shown).join(", ")} Pa)`,
      effect: `Either dwelling may not have been measured: the flows of ${dwelling} say nothing of its fans then.`,
      mend: "Compare both with the field notes or photos, and read again what was not measured.",
      also: others.map(cellOf),
    });
  }
};
