import { counted } from "../cells";
import { type Acceptance, applyAcceptances } from "./accepting";
import { checkSettings, checks } from "./checks";
import { factsOf } from "./facts";
import {
  type Finding,
  type FindingKind,
  findingKinds,
  isFault,
  isOpen,
  type Severity,
  severities,
} from "./findings";
import { plainName } from "./fit";
import type { JobFile } from "./grid";
import { type Job, readJob } from "./read";
import { Report } from "./report";

/** What a check of a workbook came to. */
export interface JobCheck {
  readonly job: Job;
  /** Whether anything of a job was recognised. */
  readonly isJob: boolean;
  /** All that was found, accepted or not. */
  readonly findings: readonly Finding[];
  readonly summary: Summary;
  /** Acceptances whose finding is gone. */
  readonly settled: readonly Acceptance[];
}

/**
 * A look of another room at the workbook, after the checks: given the findings so far and the
 * job as it was read, it returns what it found besides.
 */
export type FurtherCheck = (
  file: JobFile,
  findings: readonly Finding[],
  job: Job,
) => readonly Finding[];

export interface Summary {
  readonly fans: number;
  readonly measured: number;
  /** Fans with something typed for a reading that is no number. */
  readonly unusable: number;
  readonly dwellings: number;
  readonly openings: number;
  /** Open findings, a cause each; accepted ones are counted apart. */
  readonly bySeverity: Readonly<Record<Severity, number>>;
  readonly accepted: number;
  /** Cells that the open faults stand in. */
  readonly faultyCells: number;
  /** Kinds of open findings, in the catalogue's order. */
  readonly byKind: readonly { readonly kind: FindingKind; readonly count: number }[];
}

/**
 * Reads a job workbook and runs every check, then a further one where it is given. `today` is a
 * serial number of the workbook.
 */
export function checkJob(file: JobFile, today: number, further?: FurtherCheck): JobCheck {
  const steps = checkSteps(file, today, further);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** The same step by step, for who has something else to do between two checks. */
export function* checkSteps(
  file: JobFile,
  today: number,
  further?: FurtherCheck,
): Generator<void, JobCheck, void> {
  const job = readJob(file);
  const report = new Report(
    (i) => factsOf(job).fans?.replacedAs(i) === "read again",
    file.sheets.map(({ name }) => name),
  );
  const isJob = Object.values(job.tables).some((table) => table !== undefined);
  // Of a workbook without anything of a job nothing is judged: one line says so.
  for (const check of isJob ? checks : [checkSettings]) {
    yield;
    check(job, report, { today });
  }
  yield;
  if (further && isJob) report.include(further(file, report.findings(), job));
  yield;
  const { findings, settled } = applyAcceptances(file, report.findings());
  return { job, isJob, findings, summary: summarise(job, findings), settled };
}

function summarise(job: Job, all: readonly Finding[]): Summary {
  const findings = all.filter(isOpen);
  const isMeasured = (i: number) => job.fans?.isMeasured(i) === true;
  const [kinds, bySeverity] = [
    counted(findings.map(({ kind }) => kind)),
    counted(findings.map(({ severity }) => severity)),
  ];
  return {
    fans: fansAmong(job, () => true),
    measured: fansAmong(job, isMeasured),
    unusable: fansAmong(job, (i) => !isMeasured(i) && job.fans?.isTyped(i) === true),
    dwellings: job.tables.dwellings?.length ?? dwellingsNamed(job),
    openings: job.tables.boxes?.length ?? job.firm?.reading.openings.length ?? 0,
    bySeverity: Object.fromEntries(
      severities.map((severity) => [severity, bySeverity.get(severity) ?? 0]),
    ) as Record<Severity, number>,
    accepted: all.length - findings.length,
    faultyCells: new Set(
      findings
        .filter(isFault)
        .flatMap(({ cells }) => cells.map(({ sheet, cell }) => `${sheet}!${cell}`)),
    ).size,
    byKind: (Object.keys(findingKinds) as FindingKind[])
      .map((kind) => ({ kind, count: kinds.get(kind) ?? 0 }))
      .filter((entry) => entry.count > 0),
  };
}

/** The dwellings that the fans name. */
function dwellingsNamed({ fans }: Job): number {
  return new Set(fans?.table.texts("dwelling").filter((name) => name !== "")).size;
}

/** Fans with a row of a kind: one that is read again, or at two speeds, is one. */
function fansAmong({ fans, firm }: Job, isOf: (i: number) => boolean): number {
  if (!fans) return 0;
  const rows = Array.from({ length: fans.length }, (_, i) => i).filter(
    (i) => isOf(i) && !firm?.replacedAs(i) && !firm?.isFurtherTest(i),
  );
  if (!fans.table.has("visit")) return rows.length;
  const names = rows.map((i) => {
    const [dwelling, tag] = ["dwelling", "tag"].map((key) => plainName(fans.table.text(key, i)));
    return tag === "" || fans.isAbsent(i) ? String(i) : `${dwelling}\u0000${tag}`;
  });
  return new Set(names).size;
}
