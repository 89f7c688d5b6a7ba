import { type JobCheck, provenanceOf } from "../../job";
import type { FileCheck } from "../check-file";

/** The findings for other programs. `format` is raised when a field changes its meaning. */
export function jsonReport(results: readonly FileCheck[]): string {
  const files = results.map((result) =>
    "check" in result
      ? { file: result.file, ...content(result.check) }
      : { file: result.file, unreadable: result.unreadable },
  );
  return `${JSON.stringify({ format: 1, files }, null, 2)}\n`;
}

function content({ job, findings, summary, settled }: JobCheck) {
  const { settings, fit } = job;
  return {
    edition: settings.edition?.id ?? null,
    units: settings.system,
    summary,
    fit: Object.values(fit.sheets)
      .flat()
      .map((sheet) => ({
        kind: sheet.kind,
        sheet: sheet.sheet,
        headerRow: sheet.headerRow + 1,
        columns: Object.fromEntries([...sheet.columns].map(([key, { heading }]) => [key, heading])),
        unused: sheet.unused,
      })),
    findings: findings.map(({ row, ...finding }) => ({ ...finding, row: row + 1 })),
    settled: settled.map(({ place, ...acceptance }) => ({
      ...acceptance,
      row: place.row + 1,
    })),
    provenance: provenanceOf(job),
  };
}
