import { isoDay } from "../../cells";
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
  if (open.length === 0) {
    rows.line("None.", looks.text);
    return;
  }
  const kinds = [...new Set(open.map(({ kind }) => kind))].map((kind) => {
    const own = open.filter((finding) => finding.kind === kind);
    return { title: findingKinds[kind].title, severity: (own[0] as Finding).severity, own };
  });
  kinds.sort((a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity));
  rows.table(
    [
      { title: "Kind", span: 4, look: looks.cell },
      { title: "Severity", span: 2, look: looks.cell },
      { title: "Number", span: 1, look: looks.whole },
      { title: "Where", span: 5, look: looks.small },
    ],
    kinds.map(({ title, severity, own }) => [title, severity, own.length, placesOf(own)]),
  );
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
  const accepted = findings.filter((finding) => finding.accepted !== undefined);
  rows.section("Findings accepted");
  if (accepted.length === 0) {
    rows.line("None.", looks.text);
    return;
  }
  rows.table(
    [
      { title: "Where", span: 3, look: looks.small },
      { title: "Finding", span: 3, look: looks.small },
      { title: "Reason", span: 4, look: looks.small },
      { title: "Initials", span: 1, look: looks.small },
      { title: "Date", span: 1, look: looks.small },
    ],
    accepted.map(({ sheet, cell, about, kind, accepted: by }) => [
      [`${sheet} ${cell}`.trim(), about].filter((part) => part !== "").join(": "),
      findingKinds[kind].title,
      by?.reason ?? "",
      by?.initials ?? "",
      dateOf(job, by?.date ?? null),
    ]),
  );
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
