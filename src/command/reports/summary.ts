import {
  type Finding,
  findingKinds,
  isOpen,
  type JobCheck,
  type Severity,
  severities,
} from "../../job";

const words: Record<Severity, string> = {
  wrong: "wrong",
  doubtful: "doubtful",
  missing: "missing",
};

/** "14 wrong, 3 doubtful, 6 missing", or "nothing found"; then "; 2 accepted" where some are. */
export function countsText(check: JobCheck): string {
  const { bySeverity, accepted } = check.summary;
  const parts = severities
    .filter((severity) => bySeverity[severity] > 0)
    .map((severity) => `${bySeverity[severity]} ${words[severity]}`);
  const open =
    parts.length > 0 ? parts.join(", ") : accepted > 0 ? "nothing open" : "nothing found";
  return accepted > 0 ? `${open}; ${accepted} accepted` : open;
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

/** The findings that want something done, and those that someone accepted. */
export function openAndAccepted({ findings }: JobCheck): {
  readonly open: readonly Finding[];
  readonly accepted: readonly Finding[];
} {
  return { open: findings.filter(isOpen), accepted: findings.filter((one) => !isOpen(one)) };
}

/** "Accepted by JK: read with the door open"; "" for an open finding that never was. */
export function acceptanceText({ accepted, lapsed }: Finding): string {
  if (accepted) return `Accepted by ${accepted.initials}: ${accepted.reason}`;
  return lapsed
    ? `Accepted before by ${lapsed.initials} (${lapsed.reason}), but the row has changed since.`
    : "";
}
