import { checks } from "./checks";
import {
  type Finding,
  type FindingKind,
  findingKinds,
  type Severity,
  severities,
} from "./findings";
import type { JobFile } from "./grid";
import { type Job, readJob } from "./read";
import { Report } from "./report";

/** What a check of a workbook came to. */
export interface JobCheck {
  readonly job: Job;
  readonly findings: readonly Finding[];
  readonly summary: Summary;
}

export interface Summary {
  readonly fans: number;
  readonly measured: number;
  readonly dwellings: number;
  readonly openings: number;
  readonly bySeverity: Readonly<Record<Severity, number>>;
  /** Kinds met, in the catalogue's order. */
  readonly byKind: readonly { readonly kind: FindingKind; readonly count: number }[];
}

/** Reads a job workbook and runs every check. `today` is a serial number of the workbook. */
export function checkJob(file: JobFile, today: number): JobCheck {
  const job = readJob(file);
  const report = new Report();
  for (const check of checks) check(job, report, { today });
  const findings = report.findings();
  return { job, findings, summary: summarise(job, findings) };
}

function summarise(job: Job, findings: readonly Finding[]): Summary {
  const count = (kind: FindingKind) => findings.filter((finding) => finding.kind === kind).length;
  return {
    fans: job.fans?.length ?? 0,
    measured: job.fans?.pressure.filter((value) => !Number.isNaN(value)).length ?? 0,
    dwellings: job.tables.dwellings?.length ?? 0,
    openings: job.tables.boxes?.length ?? 0,
    bySeverity: Object.fromEntries(
      severities.map((severity) => [
        severity,
        findings.filter((finding) => finding.severity === severity).length,
      ]),
    ) as Record<Severity, number>,
    byKind: (Object.keys(findingKinds) as FindingKind[])
      .map((kind) => ({ kind, count: count(kind) }))
      .filter((entry) => entry.count > 0),
  };
}

/** A day as a serial number of workbooks that count from 1900. */
export function serialOf(date: Date): number {
  return Math.floor(date.getTime() / 86_400_000) + 25569;
}
