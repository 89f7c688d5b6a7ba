import { grouped, once } from "../../cells";
import {
  type Finding,
  findingKinds,
  isFault,
  isOpen,
  type Severity,
  severities,
  sharedWords,
} from "../../job";

export type GroupBy = "row" | "kind";

/** What the reader of a long list has asked to see. */
export interface FindingFilter {
  /** Severities shown; empty means all. */
  readonly severities: readonly Severity[];
  /** Words that must all occur in the finding. */
  readonly search: string;
}

export const everything: FindingFilter = { severities: [], search: "" };

/** Findings under one heading: those of a row, or those of a kind. */
interface FindingGroup {
  readonly key: string;
  readonly title: string;
  /** Whether its findings are of one kind, and of several rows. */
  readonly isKind: boolean;
  /** What is the same for all of them, told once. */
  readonly shared: ReturnType<typeof sharedWords>;
  /** Where the row stands, such as "Fans, row 3"; "" for a kind. */
  readonly place: string;
  readonly worst: Severity;
  readonly findings: readonly Finding[];
  /** How many the group holds before a page cut it. */
  readonly total: number;
}

export function filterFindings(
  findings: readonly Finding[],
  { severities: wanted, search }: FindingFilter,
): readonly Finding[] {
  const words = search
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "");
  return findings.filter((finding) => {
    if (wanted.length > 0 && !wanted.includes(finding.severity)) return false;
    if (words.length === 0) return true;
    const text = [
      finding.sheet,
      finding.cell,
      finding.about,
      titleOf(finding),
      finding.what,
      finding.effect,
      finding.mend,
    ]
      .join(" ")
      .toLowerCase();
    return words.every((word) => text.includes(word));
  });
}

/**
 * By row the order of the sheet is kept, and results of the fans follow by kind, since they are no
 * faults of a row; by kind all have the order of the catalogue of kinds.
 */
export function groupFindings(findings: readonly Finding[], by: GroupBy): FindingGroup[] {
  if (by === "row")
    return [
      ...groupsBy(findings.filter(isFault), "row"),
      ...groupsBy(
        findings.filter((one) => !isFault(one)),
        "kind",
      ),
    ];
  return groupsBy(findings, "kind");
}

function groupsBy(findings: readonly Finding[], by: GroupBy): FindingGroup[] {
  const groups = grouped(findings, (finding) => (by === "kind" ? finding.kind : rowKey(finding)));
  const made = [...groups].map(([key, list]) => makeGroup(key, list, by));
  if (by === "row") return made;
  const order = Object.keys(findingKinds);
  return made.sort((a, b) => order.indexOf(a.key) - order.indexOf(b.key));
}

/** The first `most` findings, group by group, so that a list of thousands opens at once. */
export function firstOf(groups: readonly FindingGroup[], most: number): FindingGroup[] {
  const page: FindingGroup[] = [];
  let left = most;
  for (const group of groups) {
    if (left <= 0) break;
    page.push(
      group.findings.length > left ? { ...group, findings: group.findings.slice(0, left) } : group,
    );
    left -= group.findings.length;
  }
  return page;
}

/** Findings that wait for someone, and those that someone took as they are. */
export function splitAccepted(findings: readonly Finding[]): {
  readonly open: readonly Finding[];
  readonly accepted: readonly Finding[];
} {
  return {
    open: findings.filter(isOpen),
    accepted: findings.filter((finding) => !isOpen(finding)),
  };
}

export function titleOf(finding: Finding): string {
  return findingKinds[finding.kind].title;
}

/** "Fans!K3", or the sheet alone where no cell is meant. */
export function placeOf(finding: Finding): string {
  return [finding.sheet, finding.cell].filter((part) => part !== "").join("!");
}

/** A name that stays with a finding while others come and go. */
export const findingKey = once(
  (finding: Finding) => `${finding.kind} ${placeOf(finding)} ${finding.about}`,
);

const rowKey = once((finding: Finding) => `${finding.sheet}!${finding.row}`);

function makeGroup(key: string, findings: readonly Finding[], by: GroupBy): FindingGroup {
  const first = findings[0] as Finding;
  const named = findings.find((finding) => finding.about !== "")?.about;
  const row = first.row >= 0 ? `${first.sheet}, row ${first.row + 1}` : first.sheet;
  return {
    key,
    isKind: by === "kind",
    shared: by === "kind" ? sharedWords(findings) : undefined,
    title: by === "kind" ? titleOf(first) : (named ?? (row || "Workbook")),
    place: by === "kind" || row === "" || !named ? "" : row,
    worst: severities.find((severity) => findings.some((f) => f.severity === severity)) ?? "wrong",
    findings,
    total: findings.length,
  };
}
