import {
  type Finding,
  findingKinds,
  isFault,
  isOpen,
  type JobCheck,
  type Severity,
  severities,
} from "../../job";

/** "30 faults in 34 cells: 19 wrong, 5 doubtful, 6 missing; 7 results; 2 accepted". */
export function countsText(check: JobCheck): string {
  const { bySeverity, accepted, faultyCells } = check.summary;
  const parts = severities
    .filter((severity) => severity !== "result" && bySeverity[severity] > 0)
    .map((severity) => `${bySeverity[severity]} ${severity}`);
  const faults = faultCount(check);
  const open =
    faults > 0
      ? `${counted(faults, "fault")} in ${counted(faultyCells, "cell")}: ${parts.join(", ")}`
      : bySeverity.result > 0
        ? "no fault"
        : accepted > 0
          ? "nothing open"
          : "nothing found";
  const results = bySeverity.result > 0 ? `; ${counted(bySeverity.result, "result")}` : "";
  return `${open}${results}${accepted > 0 ? `; ${accepted} accepted` : ""}`;
}

/** Open faults, a cause each. */
export function faultCount({ summary: { bySeverity } }: JobCheck): number {
  return bySeverity.wrong + bySeverity.doubtful + bySeverity.missing;
}

function counted(number: number, one: string): string {
  return `${number} ${one}${number === 1 ? "" : "s"}`;
}

/** "Fans!K3", with " and 38 more" where the cause stands in further cells. */
export function placeText({ sheet, cell, cells }: Finding): string {
  if (sheet === "") return "(workbook)";
  const more = cells.length > 1 ? ` and ${cells.length - 1} more` : "";
  return `${cell === "" ? sheet : `${sheet}!${cell}`}${more}`;
}

/**
 * "104 fans in 27 dwellings, 103 measured, 17 openings; IRC-2021, ip"; of a firm's own sheets, how
 * they are judged; of a workbook without fans, that it has none.
 */
export function scopeText(check: JobCheck): string {
  if (check.job.noFans !== "" && !check.job.fans) return sentence(check.job.noFans);
  const { fans, measured, dwellings, openings } = check.summary;
  const { edition, system } = check.job.settings;
  const isJudged = check.job.fans?.table.has("required") === true;
  const unnamed = isJudged
    ? "no edition is named: judged by the sheets' own required rates"
    : "no edition is named, and no required rates stand in the sheets: flows are not judged";
  return (
    `${counted(fans, "fan")} in ${counted(dwellings, "dwelling")}, ${measured} measured, ${counted(openings, "opening")}; ` +
    `${edition?.id ?? (check.job.firm ? unnamed : "no edition")}, ${system}`
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

/** Faults of the sheet, results of the fans, and what someone accepted. */
export function sorted({ findings }: JobCheck): {
  readonly faults: readonly Finding[];
  readonly results: readonly Finding[];
  readonly accepted: readonly Finding[];
} {
  const open = findings.filter(isOpen);
  return {
    faults: open.filter(isFault),
    results: open.filter((one) => !isFault(one)),
    accepted: findings.filter((one) => !isOpen(one)),
  };
}

/** "Accepted by JK: read with the door open"; "" for an open finding that never was. */
export function acceptanceText({ accepted, lapsed }: Finding): string {
  if (accepted) return `Accepted by ${accepted.initials}: ${accepted.reason}`;
  return lapsed
    ? `Accepted before by ${lapsed.initials} (${lapsed.reason}), but the row has changed since.`
    : "";
}

/** A line for each block of a firm's sheets that was read, and for what was not. */
export function readLines({ job }: JobCheck): string[] {
  if (!job.firm) return [];
  const { blocks, notRead } = job.firm.reading;
  const read = blocks.map(
    ({ sheet, layout, readings, fans }) =>
      `Sheet ${sheet}: ${counted(readings, "reading")} of ${counted(fans.length, "fan")}, ${layout}`,
  );
  return [...read, ...notRead.map(({ because }) => because)];
}

function sentence(text: string): string {
  return `${text[0]?.toUpperCase()}${text.slice(1)}.`;
}
