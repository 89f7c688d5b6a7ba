import { type JobCheck, type Severity, type Summary, severities } from "../../job";
import { findingKey } from "./finding-groups";

/** "1 fan", "3 fans". */
export function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`;
}

/** "12 wrong, 3 doubtful, 1 missing"; "nothing found" where the job is clean. */
export function severityCounts(bySeverity: Readonly<Record<Severity, number>>): string {
  const parts = severities
    .filter((severity) => bySeverity[severity] > 0)
    .map((severity) => `${bySeverity[severity]} ${severity}`);
  return parts.length > 0 ? parts.join(", ") : "nothing found";
}

/** "104 fans in 27 dwellings, 103 measured; 17 openings" */
export function sizeOf({ fans, dwellings, measured, openings }: Summary): string {
  const home = dwellings > 0 ? ` in ${count(dwellings, "dwelling")}` : "";
  return `${count(fans, "fan")}${home}, ${measured} measured; ${count(openings, "opening")}`;
}

/** What a check came to, in one sentence for the eye and the ear. */
export function announceCheck({ summary }: JobCheck): string {
  const read =
    summary.fans > 0
      ? `Checked ${count(summary.fans, "fan")} in ${count(summary.dwellings, "dwelling")}`
      : "Checked the workbook";
  return `${read}: ${severityCounts(summary.bySeverity)}.`;
}

/** What an edit changed; "" where the findings stayed as they were. */
export function announceChange(before: JobCheck, after: JobCheck): string {
  const old = new Set(before.findings.map(findingKey));
  const now = new Set(after.findings.map(findingKey));
  const gone = [...old].filter((key) => !now.has(key)).length;
  const come = [...now].filter((key) => !old.has(key)).length;
  if (gone === 0 && come === 0) return "";
  const parts = [gone > 0 ? `${gone} cleared` : "", come > 0 ? `${come} new` : ""];
  return `${parts.filter((part) => part !== "").join(", ")}. Now ${severityCounts(after.summary.bySeverity)}.`;
}
