import { findingKinds, type JobCheck, type Severity, severities } from "../../job";

const words: Record<Severity, string> = {
  wrong: "wrong",
  doubtful: "doubtful",
  missing: "missing",
};

/** "14 wrong, 3 doubtful, 6 missing", or "nothing found". */
export function countsText(check: JobCheck): string {
  const { bySeverity } = check.summary;
  const parts = severities
    .filter((severity) => bySeverity[severity] > 0)
    .map((severity) => `${bySeverity[severity]} ${words[severity]}`);
  return parts.length > 0 ? parts.join(", ") : "nothing found";
}

/** "104 fans in 27 dwellings, 103 measured, 17 openings; IRC-2021, ip". */
export function scopeText(check: JobCheck): string {
  const { fans, measured, dwellings, openings } = check.summary;
  const { edition, system } = check.job.settings;
  return (
    `${fans} fans in ${dwellings} dwellings, ${measured} measured, ${openings} openings; ` +
    `${edition?.id ?? "no edition"}, ${system}`
  );
}

/** Kinds met with their counts, most severe first. */
export function kindLines(check: JobCheck): { title: string; severity: Severity; count: number }[] {
  return check.summary.byKind
    .map(({ kind, count }) => ({
      title: findingKinds[kind].title,
      severity: findingKinds[kind].severity as Severity,
      count,
    }))
    .sort((a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity));
}
