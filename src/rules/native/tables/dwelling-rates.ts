import type { DwellingRule, Edition, System } from "../../../editions";
import { isStated, personsOf } from "../../required/stated";
import { numberOfName } from "../names";
import { forEachSystem, numbered, type TableMaker, type TableRow, traced } from "../table";
import { endless } from "../text";

/** A row for each edition, system and method. */
export const dwellingRules: TableMaker = (sheet) => {
  const rows: TableRow[] = [];
  forEachRule((edition, system, rule, isFirst) => {
    rows.push({
      Edition: edition.id,
      Method: rule.method,
      System: system,
      Usual: isFirst ? 1 : 0,
      "Rate by area": null,
      "Rate by person": null,
      "Least bedrooms": null,
      "Last listed": null,
      "Least rate": null,
      "Most rate": null,
      ...numbersOf(rule, system),
      "Edition no.": numberOfName("edition", edition.id),
      ...traced(rule.source),
    });
  });
  return numbered(sheet, "Rules for dwellings", rows);
};

/** Printed tables of dwelling rates, a row for each number. */
export const dwellingCells: TableMaker = (sheet) => {
  const rows: TableRow[] = [];
  let rule = 0;
  forEachRule((edition, system, each) => {
    rule++;
    for (const cells of cellsOf(each))
      rows.push({
        Table: `${edition.id} ${each.method}`,
        System: system,
        ...cells,
        "Rule no.": rule,
        ...traced(each.source),
      });
  });
  return numbered(sheet, "Tables of dwelling rates", rows);
};

/** What each person above bedrooms + 1 adds. */
export const furtherPersons: TableMaker = (sheet) => {
  const rows: TableRow[] = [];
  forEachSystem((edition, system) => {
    const rule = personsOf(edition, system);
    const each = rule?.furtherPerson?.each[system];
    if (!rule?.furtherPerson || each === undefined) return;
    rows.push({
      Edition: edition.id,
      System: system,
      "Rate, cfm or L/s": each,
      "Least bedrooms": rule.leastBedrooms,
      "Edition no.": numberOfName("edition", edition.id),
      ...traced(rule.furtherPerson.source),
    });
  });
  return numbered(sheet, "Rate of each further person", rows);
};

function forEachRule(
  see: (edition: Edition, system: System, rule: DwellingRule, isFirst: boolean) => void,
): void {
  forEachSystem((edition, system) => {
    const usable = edition.dwelling.filter((rule) => isStated(rule, system));
    const seen = new Set<string>();
    usable.forEach((rule, i) => {
      if (seen.has(rule.method)) return;
      seen.add(rule.method);
      see(edition, system, rule, i === 0);
    });
  });
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
