import Papa from "papaparse";
import type { FileCheck } from "../check-file";

const columns = [
  ...["file", "sheet", "cell", "severity", "kind", "about", "what", "effect", "mend"],
  ...["state", "reason", "initials"],
];

/** The findings as CSV. Text that a spreadsheet would take for a formula is made harmless. */
export function csvReport(results: readonly FileCheck[]): string {
  const rows = results.flatMap((result) =>
    "check" in result
      ? result.check.findings.map((finding) => ({
          file: result.file,
          ...finding,
          state: finding.accepted ? "accepted" : finding.lapsed ? "accepted before" : "open",
          reason: (finding.accepted ?? finding.lapsed)?.reason ?? "",
          initials: (finding.accepted ?? finding.lapsed)?.initials ?? "",
        }))
      : [unreadableRow(result.file, result.unreadable)],
  );
  return `${Papa.unparse(rows, { columns, escapeFormulae: true, newline: "\r\n" })}\r\n`;
}

function unreadableRow(file: string, why: string) {
  return {
    file,
    sheet: "",
    cell: "",
    severity: "wrong",
    kind: "unreadable",
    about: "",
    what: why,
    effect: "Nothing in this file was checked.",
    mend: "",
    state: "open",
    reason: "",
    initials: "",
  };
}
