import type { DwellingRule, Edition, EquationRule, System } from "../../editions";

/** Whether a rule is stated in these units. */
export function isStated(rule: DwellingRule, system: System): boolean {
  return "system" in rule ? rule.system === system : rule.areaRate[system] !== undefined;
}

/** The equation of an edition that counts persons, in these units. */
export function personsOf(edition: Edition, system: System): EquationRule | undefined {
  return edition.dwelling.find(
    (rule): rule is EquationRule =>
      rule.method === "equation" && rule.furtherPerson?.each[system] !== undefined,
  );
}

/** Whether an edition has a rate that goes by persons, in these units. */
export function goesByPersons(edition: Edition, system: System): boolean {
  const isByPersons = (rule: DwellingRule) =>
    rule.method === "larger" && rule.byPersons === true && isStated(rule, system);
  return personsOf(edition, system) !== undefined || edition.dwelling.some(isByPersons);
}
