import { cellName, columnLetters, grouped, once, parseCell } from "../../cells";
import {
  asSentence,
  count,
  estimateOf,
  type Finding,
  findingKinds,
  isFault,
  isOpen,
  type JobCheck,
  type Severity,
  severities,
  sharedWords,
} from "../../job";
import type { WorkbookReading } from "../../reading";

/** "30 faults in 34 cells: 19 wrong, 5 doubtful, 6 missing; 7 results; 2 accepted". */
export function countsText(check: JobCheck): string {
  const { bySeverity, accepted, faultyCells } = check.summary;
  const parts = severities
    .filter((severity) => severity !== "result" && bySeverity[severity] > 0)
    .map((severity) => `${bySeverity[severity]} ${severity}`);
  const faults = faultCount(check);
  const open =
    faults > 0
      ? `${count(faults, "fault")} in ${count(faultyCells, "cell")}: ${parts.join(", ")}`
      : bySeverity.result > 0
        ? "no fault"
        : accepted > 0
          ? "nothing open"
          : check.job.fans && check.summary.fans === 0
            ? `no fan typed yet${planned(check)}`
            : "nothing found";
  const results = bySeverity.result > 0 ? `; ${count(bySeverity.result, "result")}` : "";
  return `${open}${results}${accepted > 0 ? `; ${accepted} accepted` : ""}`;
}

function planned({ job }: JobCheck): string {
  const fans = estimateOf(job)?.totals.at(-1)?.planned ?? 0;
  return fans > 0 ? `; ${count(fans, "fan")} planned: --order tells what to buy` : "";
}

/** Open faults, a cause each. */
export function faultCount({ summary: { bySeverity } }: JobCheck): number {
  return bySeverity.wrong + bySeverity.doubtful + bySeverity.missing;
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
  if (check.job.noFans !== "" && !check.job.fans) return asSentence(check.job.noFans);
  const { fans, measured, unusable, dwellings, openings } = check.summary;
  const { edition, system } = check.job.settings;
  const isJudged = check.job.fans?.table.has("required") === true;
  const unnamed = isJudged
    ? "no edition is named: judged by the sheets' own required rates"
    : "no edition is named, and no required rates stand in the sheets: flows are not judged";
  const read = unusable > 0 ? `, ${unusable} with a reading that is no number` : "";
  const listed = openings > 0 || !check.job.firm ? `, ${count(openings, "opening")}` : "";
  return (
    `${count(fans, "fan")} in ${count(dwellings, "dwelling")}, ${measured} measured${read}${listed}; ` +
    `${edition?.id ?? (check.job.firm ? unnamed : "no edition")}, ${system}`
  );
}

/** Findings of one kind, with what is the same for all of them. */
export interface Cause {
  readonly title: string;
  readonly severity: Severity;
  readonly findings: readonly Finding[];
  /** What they do and how to mend them, where that is the same for several. */
  readonly shared: ReturnType<typeof sharedWords>;
  readonly lines: readonly FindingLine[];
}

/** A line of a report: a finding with where it stands, or the first of many that say the same. */
export interface FindingLine {
  readonly place: string;
  readonly about: string;
  readonly finding: Finding;
}

/** More findings of the same words than these are told in one line, with their cells. */
const mostAlone = 8;
/** So many runs of cells are named; the rest are counted. */
const mostRuns = 8;

function linesOf(findings: readonly Finding[], isShared: boolean): FindingLine[] {
  const alone = (finding: Finding) => ({
    place: placeText(finding),
    about: finding.about,
    finding,
  });
  if (!isShared || findings.length <= mostAlone) return findings.map(alone);
  const words = once((finding: Finding) =>
    [finding.sheet, finding.what, acceptanceText(finding)].join("\n"),
  );
  const alike = grouped(findings, words);
  return findings.flatMap((finding) => {
    const own = alike.get(words(finding)) ?? [];
    if (own.length <= mostAlone || finding.cell === "") return alone(finding);
    if (own[0] !== finding) return [];
    const about = `${finding.about} and ${own.length - 1} more`.trim();
    return { place: `${finding.sheet}!${runsOf(own)}`, about, finding };
  });
}

/** "K2:K501", "K2:K9, K12 and 3 more": the cells of findings, rows below each other as one. */
function runsOf(findings: readonly Finding[]): string {
  const runs: { col: number; from: number; to: number }[] = [];
  for (const { cell } of findings.flatMap(({ cells }) => cells)) {
    if (cell === "") continue;
    const at = parseCell(cell);
    const run = runs.findLast(({ col }) => col === at.col);
    if (run && run.to + 1 === at.row) run.to = at.row;
    else runs.push({ col: at.col, from: at.row, to: at.row });
  }
  const named = runs.slice(0, mostRuns).map(({ col, from, to }) => {
    const first = cellName(from, col);
    return from === to ? first : `${first}:${columnLetters(col)}${to + 1}`;
  });
  const left = runs.slice(mostRuns).reduce((sum, { from, to }) => sum + to - from + 1, 0);
  return `${named.join(", ")}${left > 0 ? ` and ${left} more` : ""}`;
}

/** Findings by their kind, most severe first. */
export function byCause(findings: readonly Finding[]): Cause[] {
  return [...grouped(findings, ({ kind }) => kind)]
    .map(([kind, own]) => {
      const { title } = findingKinds[kind];
      const shared = sharedWords(own);
      const lines = linesOf(own, shared !== undefined);
      return { title, severity: findingKinds[kind].severity, findings: own, shared, lines };
    })
    .sort((a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity));
}

/** Kinds met with their counts, most severe first. */
export function kindLines(check: JobCheck): { title: string; severity: Severity; count: number }[] {
  return check.summary.byKind
    .map(({ kind, count }) => ({
      title: findingKinds[kind].title,
      severity: findingKinds[kind].severity,
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

/** How the file was read, a line for each block of a firm's sheets that was, and for what was not. */
export function readLines({ job }: JobCheck): string[] {
  const said = job.file.said ?? [];
  if (!job.firm) return [...said];
  const { blocks, notRead } = job.firm.reading;
  const bySheet = grouped(blocks, ({ sheet }) => sheet);
  const alike = grouped(bySheet, ([, own]) => layoutsOf(own));
  const read = [...alike.values()].flatMap((sheets) =>
    sheets.length > mostSheets
      ? [
          readLine(
            sheetsText(sheets.map(([sheet]) => sheet)),
            sheets.flatMap(([, own]) => own),
          ),
        ]
      : sheets.map(([sheet, own]) => readLine(`Sheet ${sheet}`, own)),
  );
  return [...said, ...read, ...notRead.map(({ because }) => because)];
}

/** So many sheets of one layout are told each in a line of its own. */
const mostSheets = 6;

type Block = WorkbookReading["blocks"][number];

/** "cards"; "cards and a row a fan" where a sheet has both. */
const layoutsOf = (blocks: readonly Block[]) =>
  [
    ...new Set(blocks.filter(({ retestOf }) => retestOf === undefined).map((own) => own.layout)),
  ].join(" and ");

/** "Sheet Fans: 87 readings of 87 fans, 24 readings of further tests, fans side by side" */
function readLine(place: string, blocks: readonly Block[]): string {
  const sum = (of: readonly Block[], each: (block: Block) => number) =>
    of.reduce((total, block) => total + each(block), 0);
  const first = blocks.filter(({ retestOf }) => retestOf === undefined);
  const again = sum(blocks, ({ readings }) => readings) - sum(first, ({ readings }) => readings);
  const [readings, fans] = [
    sum(first, (own) => own.readings),
    sum(first, ({ fans, means }) =>
      means.reduce((left, { of }) => left + 1 - of.length, fans.length),
    ),
  ];
  const retests = again > 0 ? `, ${count(again, "reading")} of further tests` : "";
  return `${place}: ${count(readings, "reading")} of ${count(fans, "fan")}${retests}, ${layoutsOf(blocks)}`;
}

function sheetsText(sheets: readonly string[]): string {
  return `${sheets.length} sheets, ${sheets[0]} to ${sheets.at(-1)}`;
}
