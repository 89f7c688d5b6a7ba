import {
  count,
  type Finding,
  isOpen,
  type JobCheck,
  type Severity,
  type Summary,
  severities,
} from "../../job";
import { findingKey } from "./finding-groups";

export { count } from "../../job";

/** "12 wrong", "1 result", "3 results". */
export function countOf(severity: Severity, number: number): string {
  return severity === "result" ? count(number, severity) : `${number} ${severity}`;
}

/** "12 wrong, 3 doubtful, 1 missing"; "nothing found" where the job is clean. */
function severityCounts(bySeverity: Readonly<Record<Severity, number>>): string {
  const parts = severities
    .filter((severity) => bySeverity[severity] > 0)
    .map((severity) => countOf(severity, bySeverity[severity]));
  return parts.length > 0 ? parts.join(", ") : "nothing found";
}

function total({ bySeverity }: Pick<Summary, "bySeverity">): number {
  return severities.reduce((sum, severity) => sum + bySeverity[severity], 0);
}

/** "37 open, 2 accepted"; accepted ones are left out where there are none. */
export function openAndAccepted({ bySeverity, accepted }: Summary): string {
  const open = total({ bySeverity });
  return accepted > 0 ? `${open} open, ${accepted} accepted` : `${open} open`;
}

/** "104 fans in 27 dwellings, 103 measured; 17 openings" */
export function sizeOf({ fans, dwellings, measured, unusable, openings }: Summary): string {
  const home = dwellings > 0 ? ` in ${count(dwellings, "dwelling")}` : "";
  const read = unusable > 0 ? `, ${unusable} with a reading that is no number` : "";
  const listed = openings > 0 ? `; ${count(openings, "opening")}` : "";
  return `${count(fans, "fan")}${home}, ${measured} measured${read}${listed}`;
}

/** What a check came to, in one sentence for the eye and the ear. */
export function announceCheck({ job, summary }: JobCheck): string {
  if (job.noFans !== "" && summary.fans === 0 && total(summary) === 0)
    return `Read the workbook: ${job.noFans}.`;
  if (summary.fans === 0 && summary.accepted === 0 && total(summary) === 0)
    return "Read the workbook: there is no fan in it yet.";
  const read =
    summary.fans > 0
      ? `Checked ${count(summary.fans, "fan")} in ${count(summary.dwellings, "dwelling")}`
      : "Checked the workbook";
  const accepted = summary.accepted > 0 ? `, ${summary.accepted} accepted` : "";
  return `${read}: ${severityCounts(summary.bySeverity)}${accepted}.`;
}

/** What an edit changed; "" where the findings stayed as they were. */
export function announceChange(before: JobCheck, after: JobCheck): string {
  const old = statesOf(before.findings);
  const now = statesOf(after.findings);
  const gone = [...old.keys()].filter((key) => !now.has(key)).length;
  const come = [...now.keys()].filter((key) => !old.has(key)).length;
  const reopened = [...now].filter(([key, open]) => open && old.get(key) === false).length;
  const parts = [
    gone > 0 ? `${gone} cleared` : "",
    come > 0 ? `${come} new` : "",
    reopened > 0 ? `${reopened} open again` : "",
  ].filter((part) => part !== "");
  if (parts.length === 0) return "";
  return `${parts.join(", ")}. Now ${severityCounts(after.summary.bySeverity)}.`;
}

/** Whether each finding is open, by its key. */
function statesOf(findings: readonly Finding[]): Map<string, boolean> {
  return new Map(findings.map((finding) => [findingKey(finding), isOpen(finding)]));
}
