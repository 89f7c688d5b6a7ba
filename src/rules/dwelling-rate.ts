import { oneValue, typeset } from "../algebra";
import { InputError } from "../cells";
import {
  type BoundedRule,
  type DwellingRule,
  type Edition,
  type EquationRule,
  type LargerRule,
  type Method,
  type System,
  type TableRule,
  UnknownNameError,
} from "../editions";
import {
  dwellingRateBounded,
  dwellingRateEquation,
  dwellingRateLarger,
  rateForPersons,
} from "../formulas";
import { flowUnit, type RequiredRate, requireSystem } from "./room-rate";
import { noRule, statedIn, worked } from "./ruling";

/**
 * The least rate of a whole dwelling under an edition, cfm (ip) or L/s (si), before any credit.
 *
 * `floorArea` in ft² (ip) or m² (si), above 0; `bedrooms` a whole number from 0. `method` picks
 * where an edition has both an equation and a table; left out, the edition's usual one. `occupants`
 * where more people are known to live there than bedrooms plus one.
 */
export function dwellingRate(
  edition: Edition,
  floorArea: number,
  bedrooms: number,
  system: System,
  method?: string,
  occupants?: number,
): RequiredRate {
  requireSystem(edition, system);
  if (!(floorArea > 0)) throw new InputError(`floor area ${floorArea}: give an area above 0`);
  if (!Number.isInteger(bedrooms) || bedrooms < 0)
    throw new InputError(`${bedrooms} bedrooms: give a whole number, 0 or more`);
  const usable = edition.dwelling.filter((rule) => isStated(rule, system));
  const wanted = method?.trim().toLowerCase();
  const rule = wanted ? usable.find((entry) => entry.method === wanted) : usable[0];
  if (usable.length === 0)
    throw noRule(edition, "rate for a whole dwelling", ({ dwelling }) => dwelling.length > 0);
  if (!rule) {
    const known: Method[] = usable.map((entry) => entry.method);
    throw new UnknownNameError(
      `unknown method "${method}" in ${edition.id}: use one of ${known.join(", ")}`,
    );
  }
  const before = byRule(rule, floorArea, bedrooms, system);
  return occupants === undefined
    ? before
    : forPersons(edition, before, occupants, bedrooms, system);
}

function byRule(rule: DwellingRule, area: number, bedrooms: number, system: System): RequiredRate {
  switch (rule.method) {
    case "equation":
      return byEquation(rule, area, bedrooms, system);
    case "table":
      return byTable(rule, area, bedrooms);
    case "larger":
      return byLarger(rule, area, bedrooms);
    case "bounded":
      return byBounds(rule, area);
  }
}

/** Whether a rule is stated in these units. */
export function isStated(rule: DwellingRule, system: System): boolean {
  return "system" in rule ? rule.system === system : rule.areaRate[system] !== undefined;
}

/** The rate with what each person above bedrooms + 1 adds, by equation and by table alike. */
function forPersons(
  edition: Edition,
  before: RequiredRate,
  n: number,
  bedrooms: number,
  system: System,
): RequiredRate {
  if (!Number.isInteger(n) || n < 0)
    throw new InputError(`${n} occupants: give a whole number, 0 or more`);
  const further = personsOf(edition, system);
  if (!further?.furtherPerson)
    throw noRule(edition, "rate by persons", (each) => personsOf(each, system) !== undefined);
  const { each, source } = further.furtherPerson;
  const N = Math.max(bedrooms, further.leastBedrooms);
  const given = { R: before.rate, b: statedIn(each, system, edition.id), n, N };
  const rate = oneValue(rateForPersons, given);
  if (rate === before.rate) return before;
  return {
    rate,
    source,
    working: `${before.working}; ${worked(rateForPersons, given, system)}`,
  };
}

export function personsOf(edition: Edition, system: System): EquationRule | undefined {
  return edition.dwelling.find(
    (rule): rule is EquationRule =>
      rule.method === "equation" && rule.furtherPerson?.each[system] !== undefined,
  );
}

function byEquation(rule: EquationRule, A: number, bedrooms: number, system: System): RequiredRate {
  const a = rule.areaRate[system];
  const b = rule.personRate[system];
  if (a === undefined || b === undefined)
    throw new UnknownNameError(`${rule.source.work} has no equation in ${flowUnit(system)}`);
  const given = { a, A, b, N: Math.max(bedrooms, rule.leastBedrooms) };
  const rate = oneValue(dwellingRateEquation, given);
  const least = rule.least?.[system] ?? 0;
  const working = typeset(dwellingRateEquation, system, given).numbers.join("; ");
  return {
    rate: Math.max(rate, least),
    source: rule.source,
    working: rate < least ? `${working}; not below ${least} ${flowUnit(system)}` : working,
  };
}

function byTable(rule: TableRule, area: number, bedrooms: number): RequiredRate {
  const count = Math.max(bedrooms, rule.leastBedrooms);
  const row = rule.areas.findIndex((edge) => area <= edge);
  const column = rule.bedrooms.findIndex((edge) => count <= edge);
  const rate = rule.cells[row]?.[column];
  if (rate === undefined)
    throw new InputError(
      `${rule.source.work} ${rule.source.clause} ends at ${rule.areas.at(-1)} of floor and ${rule.bedrooms.at(-1)} bedrooms: use the method "equation"`,
    );
  return {
    rate,
    source: rule.source,
    working: `table row ${row + 1}, column ${column + 1}: ${rate}`,
  };
}

function byLarger(rule: LargerRule, A: number, bedrooms: number): RequiredRate {
  const last = rule.byBedrooms.length - 1;
  const at = Math.max(0, bedrooms - rule.leastBedrooms);
  if (at > last && rule.eachFurther === undefined)
    throw new InputError(
      `${rule.source.work} ${rule.source.clause} ends at ${rule.leastBedrooms + last} bedrooms: see its other standard for more`,
    );
  const listed = rule.byBedrooms[Math.min(at, last)] ?? 0;
  const B = listed + Math.max(0, at - last) * (rule.eachFurther ?? 0);
  const most = rule.mostByBedrooms?.[at];
  const given = { a: rule.areaRate, A, B };
  const rate = oneValue(dwellingRateLarger, given);
  return {
    rate,
    source: rate > B ? rule.areaSource : rule.source,
    working: [
      ...typeset(dwellingRateLarger, "si", given).numbers,
      ...(most === undefined ? [] : [`at most ${most} L/s`]),
    ].join("; "),
  };
}

function byBounds(rule: BoundedRule, A: number): RequiredRate {
  const given = { a: rule.areaRate, A, lo: rule.least, hi: rule.most };
  return {
    rate: oneValue(dwellingRateBounded, given),
    source: rule.source,
    working: worked(dwellingRateBounded, given, rule.system),
  };
}
