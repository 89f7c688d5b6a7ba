import type { Check } from "./check";

/** Settings of the Job sheet that cannot be used, and sheets that were not found. */
export const checkSettings: Check = (job, report) => {
  const isEmpty = !Object.values(job.tables).some((table) => table.length > 0);
  for (const { sheet, cell, what, mend, isBlank } of job.settings.problems) {
    // A job that nobody has begun wants nothing yet.
    if (isBlank && isEmpty) continue;
    report.add(isBlank ? "setting-blank" : "setting-wrong", sheet, cell, rowOf(cell), "", {
      what,
      effect: "What depends on this setting is not checked, or checked with the usual value.",
      mend,
    });
  }
  if (!job.fans && !job.noFans)
    report.add("sheet-missing", "", "", -1, "", {
      what: "no sheet with a row a fan was recognised",
      effect: "No reading can be checked.",
      mend: "Name the columns as on a new job's Fans sheet: at least the dwelling and the pressure.",
    });
  if (job.fans && !job.firm && !job.tables.boxes && !job.fans.table.has("area"))
    report.add("sheet-missing", "", "", -1, "", {
      what: "neither a Boxes sheet nor an open-area column was recognised",
      effect: "No flow can be computed.",
      mend: "List the openings with their areas on a sheet with the columns Box, Opening and Area.",
    });
};

function rowOf(cell: string): number {
  return Number(/\d+$/.exec(cell)?.[0] ?? 0) - 1;
}
