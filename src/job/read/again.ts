import { grouped, kept, once, type Place } from "../../cells";
import { layoutOf, type SheetKind } from "../columns";
import { fitJob, type JobFit, plainName, searchedRows } from "../fit";
import type { JobFile } from "../grid";
import { filledIn } from "./block";
import { FanRows } from "./fan-rows";
import type { Job } from "./job";
import type { Table } from "./table";

/** A job after an edit that bears on some of its dwellings alone. */
export interface JobAgain {
  readonly job: Job;
  /** The same with no other fans and dwellings than those that the edit bears on. */
  readonly part: Job;
  /** Their numbers in the whole. */
  readonly rows: Readonly<Partial<Record<SheetKind, readonly number[]>>>;
}

/** An edit that bears on more fans than these, and on half of the job, is no small one. */
const mostRows = 1_000;

/**
 * A job read again after an edit of some cells. All that is worked out of a fan rests on its own
 * dwelling, the settings, the boxes and instruments. undefined where the edit bears on any of these, or
 * on what is a row at all: then the whole is read.
 */
export function readJobAgain(
  before: Job,
  file: JobFile,
  cells: readonly Place[],
): JobAgain | undefined {
  const { fans, dwellings } = before.tables;
  if (!fans || !before.fans || before.firm || fans.blocks.length > 1) return undefined;
  let isFitDue = false;
  const edited = { fans: new Set<number>(), dwellings: new Set<number>() };
  const settingSheets = new Set([...before.fit.settings.values()].map(({ sheet }) => sheet));
  for (const place of cells) {
    const { sheet, top, bottom } = place;
    isFitDue ||= top < searchedRows;
    if (settingSheets.has(sheet)) return undefined;
    const fit = Object.values(before.fit.sheets)
      .flat()
      .find((each) => each.sheet === sheet);
    isFitDue ||= fit === undefined;
    if (!fit) continue;
    const { kind } = fit;
    const grid = file.sheets.find(({ name }) => name === sheet);
    if ((kind !== "fans" && kind !== "dwellings") || !grid || top <= fit.headerRow)
      return undefined;
    const isFilled = filledIn(grid, fit, layoutOf(kind));
    for (let row = top; row <= bottom; row++) {
      const readings = before.tables[kind]?.readingsAt(sheet, row) ?? [];
      if (readings.length > 0 !== isFilled(row)) return undefined;
      for (const i of readings) edited[kind].add(i);
    }
  }
  if (isFitDue && textOf(fitJob(file)) !== textOf(before.fit)) return undefined;
  const tables = { ...before.tables, fans: fans.again(file.sheets, [...edited.fans]) };
  if (dwellings) tables.dwellings = dwellings.again(file.sheets, [...edited.dwellings]);
  const job = withTables({ ...before, file }, tables);
  const around = [
    ...[fans, tables.fans].flatMap((table) => namesOf(table, edited.fans)),
    ...[dwellings, tables.dwellings].flatMap((table) => namesOf(table, edited.dwellings)),
  ];
  const rows = rowsOf(job, new Set(around));
  if (rows.fans.length > Math.max(mostRows, fans.length / 2)) return undefined;
  return { job, part: partOf(job, rows), rows };
}

/** A part of a job, with the numbers that some rows have there. */
interface Part {
  readonly part: Job;
  readonly rows: readonly number[];
}

const partsOf = once((_: Job) => new Map<string, Part>());

/**
 * A job of no other fans and dwellings than those that rows of one of its tables rest on, with the
 * numbers that the rows have there; the job itself where all rests on all.
 */
export function partAround(job: Job, kind: SheetKind, rows: readonly number[]): Part {
  if (job.firm || !job.fans || (kind !== "fans" && kind !== "dwellings"))
    return { part: job, rows };
  return kept(partsOf(job), JSON.stringify([kind, rows]), () => {
    const all = rowsOf(job, new Set(namesOf(job.tables[kind], rows)));
    const numbers = new Map(all[kind].map((i, at) => [i, at]));
    return { part: partOf(job, all), rows: rows.map((i) => numbers.get(i) as number) };
  });
}

function partOf(job: Job, rows: ReturnType<typeof rowsOf>): Job {
  const { fans, dwellings } = job.tables;
  return withTables(job, {
    ...job.tables,
    fans: (fans as Table).part(rows.fans),
    ...(dwellings && { dwellings: dwellings.part(rows.dwellings) }),
  });
}

function withTables(job: Job, tables: Job["tables"] & { readonly fans: Table }): Job {
  const { settings, boxes, instruments } = job;
  const { fans, dwellings } = tables;
  return {
    ...job,
    tables,
    fans: new FanRows(fans, settings, boxes, instruments, undefined, dwellings),
  };
}

function namesOf(table: Table | undefined, rows: Iterable<number>): string[] {
  return table ? [...rows].map((i) => plainName(table.text("dwelling", i))) : [];
}

/** The fans of some dwellings, and their own rows. */
function rowsOf({ tables }: Job, names: ReadonlySet<string>) {
  const of = (table: Table | undefined) => {
    const own = table && rowsByName(table.texts("dwelling"));
    return [...names].flatMap((name) => own?.get(name) ?? []).sort((a, b) => a - b);
  };
  return { fans: of(tables.fans), dwellings: of(tables.dwellings) };
}

const rowsByName = once((names: readonly string[]) =>
  grouped(names.keys(), (i) => plainName(names[i] as string)),
);

function textOf(fit: JobFit): string {
  return JSON.stringify(fit, (_, value) => (value instanceof Map ? [...value] : value));
}
