import { visible } from "../../cells";
import { csvOf } from "../../csv";
import type { FileCheck } from "../check-file";
import type { Report } from "./report";

const columns = [
  ...["file", "sheet", "cell", "cells", "severity", "kind", "about", "what", "effect", "mend"],
  ...["state", "reason", "initials"],
];

/** The findings as CSV. Text that a spreadsheet would take for a formula is made harmless. */
export function csvReport(): Report {
  return { head: csvLines([columns]), file: (result) => csvLines(rowsOf(result)), end: () => "" };
}

/** Rows of texts as lines of CSV, with whatever would act on a screen made visible. */
export function csvLines(rows: readonly (readonly string[])[]): string {
  return rows.length === 0 ? "" : csvOf(rows.map((row) => row.map(visible)));
}

function rowsOf(result: FileCheck): string[][] {
  const { file } = result;
  if ("unreadable" in result) {
    const effect = "Nothing in this file was checked.";
    return [
      [file, "", "", "", "wrong", "unreadable", "", result.unreadable, effect, "", "open", "", ""],
    ];
  }
  return result.check.findings.map((finding) => {
    const { sheet, cell, severity, kind, about, what, effect, mend, accepted, lapsed } = finding;
    const state = accepted ? "accepted" : lapsed ? "accepted before" : "open";
    const { reason = "", initials = "" } = accepted ?? lapsed ?? {};
    const cells = finding.cells.map((at) => `${at.sheet}!${at.cell}`).join("; ");
    const told = [sheet, cell, cells, severity, kind, about, what, effect, mend];
    return [file, ...told, state, reason, initials];
  });
}
