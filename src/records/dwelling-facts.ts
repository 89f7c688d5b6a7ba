import {
  dwellingAccount,
  type Finding,
  type Job,
  plainName,
  type RequiredRate,
  valueIn,
} from "../job";
import { type FanFact, fanFacts } from "./fan-facts";

/** What a record says of one dwelling. */
export interface DwellingFact {
  readonly name: string;
  /** Row of the job's dwelling table; −1 where it is listed only by its fans. */
  readonly row: number;
  readonly plan: string;
  readonly floor: number;
  readonly bedrooms: number;
  readonly fans: readonly FanFact[];
  /** The edition's rate; undefined where floor area or bedrooms are unusable. */
  readonly rate: RequiredRate | undefined;
  /** What the fans must move: the rate after a credit where the job works one out, else the rate. */
  readonly needed: number;
  /** Sum of the usable continuous flows. */
  readonly provided: number;
  /** A continuous fan is not measured, or its reading cannot be used. */
  readonly isUnsure: boolean;
  readonly continuousFans: number;
  /** What is missing, above 0; NaN where it cannot be told, 0 where nothing is. */
  readonly missing: number;
}

/** The dwellings of a job: those listed, then those that only fans name. */
export function dwellingFacts(job: Job): DwellingFact[] {
  const { dwellings } = job.tables;
  const byName = new Map<string, FanFact[]>();
  for (const fan of fanFacts(job)) {
    const key = plainName(fan.dwelling);
    byName.set(key, [...(byName.get(key) ?? []), fan]);
  }
  const listed = (dwellings?.texts("dwelling") ?? []).map((name, row) => ({ name, row }));
  const names = new Set(listed.map(({ name }) => plainName(name)));
  const strayed = [...byName]
    .filter(([key]) => key !== "" && !names.has(key))
    .map(([, [fan]]) => ({ name: fan?.dwelling ?? "", row: -1 }));
  const met = new Set<string>();
  return [...listed, ...strayed]
    .filter(({ name }) => name !== "" && !met.has(plainName(name)) && met.add(plainName(name)))
    .map(({ name, row }) => factOf(job, name, row, byName.get(plainName(name)) ?? []));
}

function factOf(job: Job, name: string, row: number, fans: readonly FanFact[]): DwellingFact {
  const { dwellings } = job.tables;
  const number = (key: string) =>
    row < 0 ? Number.NaN : (dwellings?.number(key, row) ?? Number.NaN);
  const [floor, bedrooms] = [number("floor"), number("bedrooms")];
  const rate = row < 0 ? undefined : valueIn(dwellingAccount(job, row).required);
  const after = number("needed");
  const needed = after > 0 ? after : (rate?.rate ?? Number.NaN);
  const continuous = fans.filter(({ isContinuous, isAbsent }) => isContinuous && !isAbsent);
  const usable = continuous.filter(({ flow, verdict }) => {
    return !Number.isNaN(flow) && verdict !== "retest" && verdict !== "not measured";
  });
  const provided = usable.reduce((sum, { flow }) => sum + flow, 0);
  const isUnsure = usable.length < continuous.length;
  const isTold = continuous.length > 0 && !isUnsure && !Number.isNaN(needed);
  return {
    name,
    row,
    plan: row < 0 ? "" : (dwellings?.text("plan", row) ?? ""),
    floor,
    bedrooms,
    fans,
    rate,
    needed,
    provided,
    isUnsure,
    continuousFans: continuous.length,
    missing: isTold ? Math.max(0, needed - provided) : Number.NaN,
  };
}

/** The findings about a dwelling: on its own row, or on the row of one of its fans. */
export function findingsOf(
  job: Job,
  findings: readonly Finding[],
  dwelling: DwellingFact,
): Finding[] {
  const { dwellings } = job.tables;
  const fanTable = job.fans?.table;
  const fans = new Set(dwelling.fans.map(({ row }) => row));
  return findings.filter(({ sheet, row }) => {
    if (row < 0) return false;
    if (fanTable?.readingsAt(sheet, row).some((i) => fans.has(i))) return true;
    return dwellings?.readingsAt(sheet, row).includes(dwelling.row) === true;
  });
}
