import { grouped, isoDay } from "../../cells";
import { type Finding, findingKinds, isFault, isOpen, type Job, severities } from "../../job";
import { looks } from "../looks";
import type { PlanRows } from "../plan-rows";

/** Places named of one kind; the rest are counted. */
const mostPlaces = 6;

/** Open findings by kind, with where they are: faults of the sheet, then results of the fans. */
export function addFindingsByKind(rows: PlanRows, findings: readonly Finding[]): void {
  const open = findings.filter(isOpen);
  addKinds(rows, "Faults left open", open.filter(isFault));
  addKinds(
    rows,
    "Results that ask for something",
    open.filter((finding) => !isFault(finding)),
  );
}

function addKinds(rows: PlanRows, title: string, open: readonly Finding[]): void {
  rows.section(title);
  const kinds = [...grouped(open, ({ kind }) => kind)].map(([kind, own]) => ({
    title: findingKinds[kind].title,
    severity: (own[0] as Finding).severity,
    own,
  }));
  kinds.sort((a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity));
  rows.table(kinds, [
    ["Kind", 4, looks.cell, ({ title }) => title],
    ["Severity", 2, looks.cell, ({ severity }) => severity],
    ["Number", 1, looks.whole, ({ own }) => own.length],
    ["Where", 5, looks.small, ({ own }) => placesOf(own)],
  ]);
}

function placesOf(findings: readonly Finding[]): string {
  const all = findings.flatMap(({ cells }) =>
    cells.length === 0 ? ["whole sheet"] : cells.map(({ sheet, cell }) => `${sheet} ${cell}`),
  );
  const places = all.slice(0, mostPlaces);
  const left = all.length - places.length;
  return places.join(", ") + (left > 0 ? ` and ${left} more` : "");
}

/** Accepted findings with why, by whom and when. */
export function addAccepted(rows: PlanRows, job: Job, findings: readonly Finding[]): void {
  const accepted = findings.flatMap(({ accepted, ...finding }) =>
    accepted ? [{ ...finding, ...accepted }] : [],
  );
  rows.section("Findings accepted");
  rows.table(accepted, [
    ["Where", 3, looks.small, placeOf],
    ["Finding", 3, looks.small, ({ kind }) => findingKinds[kind].title],
    ["Reason", 4, looks.small, ({ reason }) => reason],
    ["Initials", 1, looks.small, ({ initials }) => initials],
    ["Date", 1, looks.small, ({ date }) => dateOf(job, date)],
  ]);
}

function placeOf({ sheet, cell, about }: Pick<Finding, "sheet" | "cell" | "about">): string {
  return [`${sheet} ${cell}`.trim(), about].filter((part) => part !== "").join(": ");
}

function dateOf(job: Job, date: number | string | null): string {
  if (typeof date === "number") return isoDay(date, job.file.dateOffset);
  return date ?? "";
}

/** Findings in words, one after another: for the few of one dwelling. */
export function addFindingsInWords(rows: PlanRows, findings: readonly Finding[]): void {
  const open = findings.filter(isOpen);
  rows.section("Findings left open");
  if (open.length === 0) rows.line("None.", looks.text);
  for (const { sheet, cell, about, what } of open)
    rows.line(`${sheet} ${cell}, ${about}: ${what}.`, looks.text);
}
