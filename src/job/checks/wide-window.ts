import { cellName, shown } from "../../cells";
import { usualWindow } from "../../rules";
import type { Job } from "../read";
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
