import Papa from "papaparse";
import type { FileCheck } from "../check-file";

/** The findings as CSV. Text that a spreadsheet would take for a formula is made harmless. */
export function csvReport(results: readonly FileCheck[]): string {
  const rows = results.flatMap((result) =>
    "check" in result
      ? result.check.findings.map(({ sheet, cell, severity, kind, about, what, effect, mend }) => ({
          file: result.file,
          sheet,
          cell,
          severity,
          kind,
          about,
          what,
          effect,
          mend,
        }))
      : [unreadableRow(result.file, result.unreadable)],
  );
  const columns = ["file", "sheet", "cell", "severity", "kind", "about", "what", "effect", "mend"];
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
  };
}
