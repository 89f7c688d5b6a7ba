import { oneValue, typeset } from "../../algebra";
import {
  type Edition,
  type EquationRule,
  type LargerRule,
  type Method,
  type System,
  type TableRule,
  UnknownNameError,
} from "../../editions";
import { dwellingRateEquation, dwellingRateLarger } from "../../formulas";
import { flowUnit, type RequiredRate, requireSystem } from "./room-rate";

/**
 * The least rate of a whole dwelling under an edition, cfm (ip) or L/s (si), before any credit.
 *
 * `floorArea` in ft² (ip) or m² (si), above 0; `bedrooms` a whole number from 0. `method` picks
 * where an edition has both an equation and a table; left out, the edition's usual one.
 */
export function dwellingRate(
  edition: Edition,
  floorArea: number,
  bedrooms: number,
  system: System,
  method?: string,
): RequiredRate {
  requireSystem(edition, system);
  if (!(floorArea > 0)) throw new RangeError(`floor area ${floorArea}: give an area above 0`);
  if (!Number.isInteger(bedrooms) || bedrooms < 0)
    throw new RangeError(`${bedrooms} bedrooms: give a whole number, 0 or more`);
  const usable = edition.dwelling.filter((rule) => !("system" in rule) || rule.system === system);
  const wanted = method?.trim().toLowerCase();
  const rule = wanted ? usable.find((entry) => entry.method === wanted) : usable[0];
  if (!rule) {
    const known: Method[] = usable.map((entry) => entry.method);
    throw new UnknownNameError(
      `unknown method "${method}" in ${edition.id}: use one of ${known.join(", ")}`,
    );
  }
  switch (rule.method) {
    case "equation":
      return byEquation(rule, floorArea, bedrooms, system);
    case "table":
      return byTable(rule, floorArea, bedrooms);
    case "larger":
      return byLarger(rule, floorArea, bedrooms);
  }
}

function byEquation(rule: EquationRule, A: number, bedrooms: number, system: System): RequiredRate {
  const a = rule.areaRate[system];
  const b = rule.personRate[system];
  if (a === undefined || b === undefined)
    throw new UnknownNameError(`${rule.source.work} has no equation in ${flowUnit(system)}`);
  const given = { a, A, b, N: Math.max(bedrooms, rule.leastBedrooms) };
  return {
    rate: oneValue(dwellingRateEquation, given),
    source: rule.source,
    working: typeset(dwellingRateEquation, system, given).numbers.join("; "),
  };
}

function byTable(rule: TableRule, area: number, bedrooms: number): RequiredRate {
  const count = Math.max(bedrooms, rule.leastBedrooms);
  const row = rule.areas.findIndex((edge) => area <= edge);
  const column = rule.bedrooms.findIndex((edge) => count <= edge);
  const rate = rule.cells[row]?.[column];
  if (rate === undefined)
    throw new RangeError(
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
  const listed = rule.byBedrooms[Math.min(bedrooms, last)] ?? 0;
  const B = listed + Math.max(0, bedrooms - last) * rule.eachFurther;
  const given = { a: rule.areaRate, A, B };
  const rate = oneValue(dwellingRateLarger, given);
  return {
    rate,
    source: rate > B ? rule.areaSource : rule.source,
    working: typeset(dwellingRateLarger, "si", given).numbers.join("; "),
  };
}
