import { visibleJson } from "../../cells";
import { type Finding, isFault, type JobCheck, provenanceOf } from "../../job";
import { fitEntries } from "../../reading";
import type { Report } from "./report";

/**
 * The findings for other programs. `format` is raised when a field changes its meaning. Faults of
 * the sheet are `findings`; what a sound sheet says of its fans are `results`.
 */
export function jsonReport(): Report {
  let between = "\n";
  return {
    head: `{\n  "format": 2,\n  "files": [`,
    file(result) {
      const file =
        "check" in result
          ? { file: result.file, ...content(result.check) }
          : { file: result.file, unreadable: result.unreadable };
      // Set in at once as it stands in the list: a large text is copied no more often than it must be.
      const list = JSON.stringify([[file]], null, 2);
      const told = `${between}    ${visibleJson(list.slice("[\n  [\n    ".length, -"\n  ]\n]".length))}`;
      between = ",\n";
      return told;
    },
    end: () => (between === "\n" ? "]\n}\n" : "\n  ]\n}\n"),
  };
}

function content({ job, findings, summary, settled }: JobCheck) {
  const { settings, fit } = job;
  return {
    edition: settings.edition?.id ?? null,
    units: settings.system,
    summary,
    noFans: job.noFans === "" ? undefined : job.noFans,
    fit: [
      ...(job.firm ? fitEntries(job.firm.reading) : []),
      ...Object.values(fit.sheets)
        .flat()
        .map((sheet) => ({
          kind: sheet.kind,
          sheet: sheet.sheet,
          headerRow: sheet.headerRow + 1,
          columns: Object.fromEntries(
            [...sheet.columns].map(([key, { heading }]) => [key, heading]),
          ),
          unused: sheet.unused,
        })),
    ],
    said: job.file.said ?? [],
    notRead: job.firm?.reading.notRead.map(({ because }) => because) ?? [],
    findings: findings.filter(isFault).map(({ row, ...finding }) => ({ ...finding, row: row + 1 })),
    results: findings.filter((finding) => !isFault(finding)).map(resultOf),
    settled: settled.map(({ place, ...acceptance }) => ({
      ...acceptance,
      row: place.row + 1,
    })),
    provenance: provenanceOf(job),
  };
}

/** A fan's result, and what is to be done about it. */
function resultOf({ kind, sheet, cell, cells, about, what, mend, accepted }: Finding) {
  return { outcome: kind, sheet, cell, cells, fan: about, result: what, next: mend, accepted };
}
