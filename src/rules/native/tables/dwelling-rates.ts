import type { DwellingRule, Edition, System } from "../../../editions";
import { isStated, personsOf } from "../../required/stated";
import { bySystem, rowOf, type TableRow, tableOf, traced } from "../table";
import { endless } from "../text";

/** A row for each edition, system and method. */
export const dwellingRules = tableOf("Rules for dwellings", () =>
  bySystem((edition, system) =>
    rulesOf(edition, system).map((rule, i) => {
      const cells = {
        Method: rule.method,
        System: system,
        Usual: i === 0 ? 1 : 0,
        "Rate by area": null,
        "Rate by person": null,
        "Least bedrooms": null,
        "Last listed": null,
        "Least rate": null,
        "Most rate": null,
        "Goes by persons": 0,
        ...numbersOf(rule, system),
      };
      return rowOf(edition.id, cells, rule.source);
    }),
  ),
);

/** Printed tables of dwelling rates, a row for each number. */
export const dwellingCells = tableOf("Tables of dwelling rates", () => {
  let number = 0;
  return bySystem((edition, system) =>
    rulesOf(edition, system).flatMap((rule) => {
      number++;
      const head = { Table: `${edition.id} ${rule.method}`, System: system };
      const tail = { "Rule no.": number, ...traced(rule.source) };
      return cellsOf(rule).map((cells) => ({ ...head, ...cells, ...tail }));
    }),
  );
});

/** What each person above bedrooms + 1 adds. */
export const furtherPersons = tableOf("Rate of each further person", () =>
  bySystem((edition, system) => {
    const rule = personsOf(edition, system);
    const each = rule?.furtherPerson?.each[system];
    if (!rule?.furtherPerson || each === undefined) return [];
    const cells = {
      System: system,
      "Rate, cfm or L/s": each,
      "Least bedrooms": rule.leastBedrooms,
    };
    return [rowOf(edition.id, cells, rule.furtherPerson.source)];
  }),
);

/** What an edition states in a system, the usual method first; of a method its first rule. */
function rulesOf(edition: Edition, system: System): DwellingRule[] {
  const usable = edition.dwelling.filter((rule) => isStated(rule, system));
  return usable.filter(({ method }, i) => usable.findIndex((rule) => rule.method === method) === i);
}

/** The numbers that a rule has. */
function numbersOf(rule: DwellingRule, system: System): TableRow {
  switch (rule.method) {
    case "equation":
      return {
        "Rate by area": rule.areaRate[system] ?? null,
        "Rate by person": rule.personRate[system] ?? null,
        "Least bedrooms": rule.leastBedrooms,
        "Least rate": rule.least?.[system] ?? null,
      };
    case "table":
      return { "Least bedrooms": rule.leastBedrooms };
    case "larger":
      return {
        "Rate by area": rule.areaRate,
        // A rate below 0 stands for none.
        "Rate by person": rule.eachFurther ?? -1,
        "Least bedrooms": rule.leastBedrooms,
        "Last listed": rule.leastBedrooms + rule.byBedrooms.length - 1,
        "Goes by persons": rule.byPersons ? 1 : 0,
      };
    case "bounded":
      return { "Rate by area": rule.areaRate, "Least rate": rule.least, "Most rate": rule.most };
  }
}

/** Each printed number with the areas and bedrooms that it is for. */
function cellsOf(rule: DwellingRule): TableRow[] {
  const shown = (edge: number) => (Number.isFinite(edge) ? edge : endless);
  if (rule.method === "larger")
    return rule.byBedrooms.map((rate, i) => {
      const bedrooms = rule.leastBedrooms + i;
      const from = i === 0 ? 0 : bedrooms;
      return {
        "Floor area above": 0,
        "Floor area to": endless,
        "Bedrooms from": from,
        "Bedrooms to": i + 1 < rule.byBedrooms.length ? bedrooms : endless,
        "Rate, cfm or L/s": rate,
      };
    });
  if (rule.method !== "table") return [];
  return rule.areas.flatMap((area, r) =>
    rule.bedrooms.map((bedrooms, c) => ({
      "Floor area above": rule.areas[r - 1] ?? 0,
      "Floor area to": shown(area),
      "Bedrooms from": c === 0 ? 0 : (rule.bedrooms[c - 1] as number) + 1,
      "Bedrooms to": shown(bedrooms),
      "Rate, cfm or L/s": rule.cells[r]?.[c] as number,
    })),
  );
}
