import { cellName } from "../../cells";
import { codeKinds, type JobCodes } from "../codes";
import { provenanceOf } from "../provenance";
import { listed } from "../words";
import type { Check } from "./check";

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
