import {
  type DwellingFacts,
  type Finding,
  factsOf,
  type Job,
  type RequiredRate,
  valueIn,
} from "../job";
import { type FanFact, fanFacts } from "./fan-facts";

/** What a record says of one dwelling. */
export interface DwellingFact extends Omit<DwellingFacts, "fans"> {
  readonly plan: string;
  readonly floor: number;
  readonly bedrooms: number;
  readonly fans: readonly FanFact[];
  /** The edition's rate; undefined where floor area or bedrooms are unusable. */
  readonly rate: RequiredRate | undefined;
}

/** The dwellings of a job: those listed, then those that only fans name. */
export function dwellingFacts(job: Job): DwellingFact[] {
  const { dwellings } = job.tables;
  const all = fanFacts(job);
  return factsOf(job)
    .dwellings.all()
    .map((dwelling) => {
      const { row, required, fans } = dwelling;
      const number = (key: string) =>
        row < 0 ? Number.NaN : (dwellings?.number(key, row) ?? Number.NaN);
      return {
        ...dwelling,
        plan: row < 0 ? "" : (dwellings?.text("plan", row) ?? ""),
        floor: number("floor"),
        bedrooms: number("bedrooms"),
        fans: fans.map((i) => all[i] as FanFact),
        rate: valueIn(required),
      };
    });
}

/** Whether nothing was measured, found absent or typed as a reading of any fan: there is nothing to record. */
export function isUntested({ fans: rows }: Job, { fans }: DwellingFact): boolean {
  return fans.every(
    ({ row, isMeasured, isAbsent }) => !isMeasured && !isAbsent && !rows?.isTyped(row),
  );
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
