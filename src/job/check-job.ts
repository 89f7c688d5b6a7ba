import { counted, type Place } from "../cells";
import { type Acceptance, applyAcceptances } from "./accepting";
import { type Check, type CheckContext, checkSettings, checks, reachOf } from "./checks";
import { factsOf } from "./facts";
import {
  type Finding,
  type FindingKind,
  findingKinds,
  isFault,
  isOpen,
  nameOfCell,
  type Severity,
  severities,
} from "./findings";
import { plainName } from "./fit";
import type { JobFile } from "./grid";
import { type Job, type JobAgain, patched, readJob, readJobAgain } from "./read";
import { findingsOf, type Noted, Report, standing } from "./report";

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
 * job as it was read, it returns what it found besides. `kept` is what it may keep until the next check.
 */
export type FurtherCheck = (
  file: JobFile,
  findings: readonly Finding[],
  job: Job,
  kept?: KeptLook,
) => readonly Finding[];

/** What a further check keeps, and the cells that were edited since. */
export interface KeptLook {
  readonly store: Map<string, unknown>;
  readonly cells: readonly Place[] | undefined;
}

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

/** An earlier check of the same workbook, and the cells that an edit changed since. */
export interface Since {
  readonly check: JobCheck | undefined;
  /** undefined where they are not known. */
  readonly cells: readonly Place[] | undefined;
}

/** What a check keeps for the next one. */
interface Kept {
  readonly today: number;
  readonly notes: Map<Check, readonly Noted[]>;
  readonly columns: Map<string, readonly unknown[]>;
  readonly further: Map<string, unknown>;
}

const keptOf = new WeakMap<JobCheck, Kept>();

/**
 * The same step by step, for who has something else to do between two checks. With `since`, what an
 * edit cannot bear on is taken from the check before, and what the next may need is kept.
 */
export function* checkSteps(
  file: JobFile,
  today: number,
  further?: FurtherCheck,
  since?: Since,
): Generator<void, JobCheck, void> {
  const earlier = since?.check && keptOf.get(since.check);
  const cells = earlier?.today === today ? since?.cells : undefined;
  const again = since?.check && cells && readJobAgain(since.check.job, file, cells);
  const before = again ? earlier : undefined;
  const job = again?.job ?? readJob(file);
  const columns = new Map<string, readonly unknown[]>();
  const byRow: CheckContext["byRow"] = (words, kind, make) => {
    const known = before?.columns.get(words) as ReturnType<typeof make> | undefined;
    const rows = again?.rows[kind];
    const own = known && rows && make(again.part);
    const values = own
      ? patched(known, rows, (_, at) => own[at] as (typeof own)[number])
      : make(job);
    if (since) columns.set(words, values);
    return values;
  };
  const isAnswered = answeredIn(job, byRow);
  const notes = new Map<Check, readonly Noted[]>();
  const isJob = Object.values(job.tables).some((table) => table !== undefined);
  // Of a workbook without anything of a job nothing is judged: one line says so.
  for (const check of isJob ? checks : [checkSettings]) {
    yield;
    const reach = reachOf.get(check);
    const known = reach === "job" ? undefined : before?.notes.get(check);
    const isKept =
      again && known && !known.some(({ finding }) => finding.kind === "value-unchecked");
    const part = isKept && reach === undefined ? again.part : undefined;
    const report = new Report(part ? answeredIn(part) : isAnswered);
    check(part ?? job, report, { today, byRow, cells: isKept ? cells : undefined });
    const { found } = report;
    notes.set(check, isKept ? together(known, found, again.rows, reach && cells) : found);
  }
  yield;
  const noted = [...notes.values()].flat();
  const store = before?.further ?? new Map<string, unknown>();
  if (further && isJob) {
    const findings = standing(noted).map(({ finding }) => finding);
    const found = further(file, findings, job, since && { store, cells: again && cells });
    for (const finding of found)
      noted.push({ finding, cause: undefined, kind: undefined, i: finding.row });
  }
  yield;
  const names = file.sheets.map(({ name }) => name);
  const { findings, settled } = applyAcceptances(file, findingsOf(standing(noted), names));
  const check = { job, isJob, findings, summary: summarise(job, findings, byRow), settled };
  if (since) keptOf.set(check, { today, notes, columns, further: store });
  return check;
}

/** Whether a later reading stands for the fan of a reading. */
function answeredIn(
  job: Job,
  byRow: CheckContext["byRow"] = (_words, _kind, make) => make(job),
): (i: number) => boolean {
  let answered: readonly boolean[] | undefined;
  return (i) => {
    answered ??= byRow("answered", "fans", (own) => {
      const { fans } = factsOf(own);
      return Array.from(
        { length: own.fans?.length ?? 0 },
        (_, row) => fans?.replacedAs(row) === "read again",
      );
    });
    return answered[i] === true;
  };
}

/** Notes of before, with those of the rows that an edit bears on, or of its cells' rows, made anew. */
function together(
  known: readonly Noted[],
  found: readonly Noted[],
  rows: JobAgain["rows"],
  cells: readonly Place[] | undefined,
): readonly Noted[] {
  const own = Object.entries(rows).map(([kind, all]) => [kind, new Set(all)] as const);
  const isDue = ({ kind, i, finding: { sheet, row } }: Noted) =>
    cells
      ? cells.some((place) => place.sheet === sheet && row >= place.top && row <= place.bottom)
      : own.some(([each, all]) => each === kind && all.has(i));
  const [rest, fresh] = [known.filter((each) => !isDue(each)), found.filter(isDue)];
  return fresh.length === 0 ? rest : [...rest, ...fresh].sort((a, b) => a.i - b.i);
}

function summarise(job: Job, all: readonly Finding[], byRow: CheckContext["byRow"]): Summary {
  const findings = all.filter(isOpen);
  const isMeasured = (i: number) => job.fans?.isMeasured(i) === true;
  const names = byRow("names", "fans", namesOfFans);
  const fansWith = (isOf: (i: number) => boolean) =>
    new Set(names.filter((name, i) => name !== "" && isOf(i))).size;
  const kinds = counted(findings.map(({ kind }) => kind));
  const bySeverity = counted(findings.map(({ severity }) => severity));
  return {
    fans: fansWith(() => true),
    measured: fansWith(isMeasured),
    unusable: fansWith((i) => !isMeasured(i) && job.fans?.isTyped(i) === true),
    dwellings: job.tables.dwellings?.length ?? dwellingsNamed(job),
    openings: job.tables.boxes?.length ?? job.firm?.reading.openings.length ?? 0,
    bySeverity: Object.fromEntries(
      severities.map((severity) => [severity, bySeverity.get(severity) ?? 0]),
    ) as Record<Severity, number>,
    accepted: all.length - findings.length,
    faultyCells: new Set(findings.filter(isFault).flatMap(({ cells }) => cells.map(nameOfCell)))
      .size,
    byKind: (Object.keys(findingKinds) as FindingKind[])
      .map((kind) => ({ kind, count: kinds.get(kind) ?? 0 }))
      .filter((entry) => entry.count > 0),
  };
}

/** The dwellings that the fans name. */
function dwellingsNamed({ fans }: Job): number {
  return new Set(fans?.table.texts("dwelling").filter((name) => name !== "")).size;
}

/** By row the name of its fan, which one that is read again or at two speeds has in each; "" for none of its own. */
function namesOfFans({ fans, firm }: Job): string[] {
  return Array.from({ length: fans?.length ?? 0 }, (_, i) => {
    if (!fans || firm?.replacedAs(i) || firm?.isFurtherTest(i)) return "";
    const { table } = fans;
    const [dwelling, tag] = ["dwelling", "tag"].map((key) => plainName(table.text(key, i)));
    const isOne = table.has("visit") && tag !== "" && !fans.isAbsent(i);
    return isOne ? `${dwelling}\u0000${tag}` : String(table.numberInWhole(i));
  });
}
