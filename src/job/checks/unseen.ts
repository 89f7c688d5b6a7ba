import { cellName, fixed, shown } from "../../cells";
import { usualWindow } from "../../rules";
import { codeKinds, type JobCodes } from "../codes";
import { provenanceOf } from "../provenance";
import type { Job } from "../read";
import { listed } from "../words";
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

/** A second sheet with the fans of another, which a reader may take for the one that counts. */
export const checkFansAgain: Check = ({ second, firm }, report) => {
  for (const { name, firstName, row, col, rows, otherwise } of second) {
    const differ =
      otherwise === 0 ? "with the same readings" : `${otherwise} of them with other readings`;
    report.add("fans-again", name, cellName(row, col), row, "", {
      what: `${name} lists ${rows} fans of ${firstName} again, ${differ}`,
      effect: `Which of the two sheets counts cannot be told: ${firm ? "the fans of both are counted" : `${name} is left out, and all results are those of ${firstName}`}.`,
      mend: "Delete the sheet that does not count, or keep it in a workbook of its own.",
    });
  }
};

/**
 * Flows of so many fans that lie so close together are not met with where each fan has a duct of its
 * own: readings in tenths of a pascal alone make some 1 % (common practice).
 */
const alike = { fans: 8, spread: 0.02, above: 1.08 } as const;

/** All flows of one tester in a narrow band just above what is required. */
export const checkFlowsAlike: Check = ({ fans }, report) => {
  if (!fans) return;
  const groups = new Map<string, number[]>();
  for (let i = 0; i < fans.length; i++) {
    const required = fans.requiredNumber(i);
    const tester = fans.table.text("tester", i);
    if (!fans.isMeasured(i) || tester === "" || !(required > 0)) continue;
    const key = `${tester}\u0000${required}`;
    groups.set(key, [...(groups.get(key) ?? []), i]);
  }
  for (const [key, rows] of groups) {
    const [tester, required] = key.split("\u0000") as [string, string];
    const flows = rows.map((i) => fans.flow[i] ?? Number.NaN);
    const mean = flows.reduce((sum, flow) => sum + flow, 0) / flows.length;
    const isBand = flows.every((flow) => Math.abs(flow / mean - 1) <= alike.spread);
    const ratio = mean / Number(required);
    if (rows.length < alike.fans || !isBand || ratio < 1 || ratio > alike.above) continue;
    // Fans whose readings are all the same are told of as copied down.
    const readings = rows.map((i) => fans.pressure[i]);
    if (new Set(readings).size < leastReadings) continue;
    const [first = 0, ...others] = rows;
    const cellOf = (i: number) => {
      const { grid, row, col } = fans.table.placeOrHome("flow", i);
      return { sheet: grid.name, cell: cellName(row, col) };
    };
    report.at("flows-alike", fans.table, "flow", first, fans.label(first), {
      what: `the flows of all ${rows.length} fans that ${tester} measured for ${shown(Number(required))} lie between ${fixed(Math.min(...flows))} and ${fixed(Math.max(...flows))}`,
      effect:
        "Fans that hold their flow by themselves do that. Of others the flows differ more from duct to duct, and these may not have been measured.",
      mend: "Look at the fans' type, and compare with the field notes or photos.",
      also: others.map(cellOf),
    });
  }
};

const codesOnSheet = /^([0-9a-f]{8}) ([0-9a-f]{8}) ([0-9a-f]{8})\. /;
/** A record is no longer than this. */
const mostRows = 2_000;

/** Records in the workbook that were made before its inputs, formulas or settings were changed. */
export const checkOldRecords: Check = (job, report) => {
  const fitted = new Set(
    Object.values(job.fit.sheets).flatMap((sheets) => sheets.map(({ sheet }) => sheet)),
  );
  let now: JobCodes | undefined;
  for (const grid of job.file.sheets) {
    const { name, rowCount, colCount } = grid;
    if (fitted.has(name) || rowCount > mostRows) continue;
    for (let row = 0; row < rowCount; row++)
      for (let col = 0; col < Math.min(colCount, 12); col++) {
        const text = grid.value(row, col);
        const codes = typeof text === "string" ? codesOnSheet.exec(text)?.slice(1) : undefined;
        if (!codes) continue;
        now ??= provenanceOf(job).codes;
        const changed = codeKinds.filter((kind, i) => now?.[kind] !== codes[i]);
        if (changed.length === 0) continue;
        report.add("record-old", name, cellName(row, col), row, "", {
          what: `the record on ${name} was made before the ${listed(changed)} of the job were changed`,
          effect: "It does not say what the job says now.",
          mend: "Look at what was changed (compare with an earlier copy), then write the record again.",
        });
      }
  }
};
