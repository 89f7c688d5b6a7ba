import type { DwellingRule, Edition, System } from "../../../editions";
import { isStated, personsOf } from "../../required/stated";
import { numberOfName } from "../names";
import { forEachSystem, numbered, type TableCell, type TableMaker, traced } from "../table";
import { endless } from "../text";

/** A row for each edition, system and method. */
export const dwellingRules: TableMaker = (sheet) => {
  const rows: TableCell[][] = [];
  forEachRule((edition, system, rule, isFirst) => {
    rows.push([
      edition.id,
      rule.method,
      system,
      isFirst ? 1 : 0,
      ...numbersOf(rule, system),
      numberOfName("edition", edition.id),
      ...traced(rule.source),
    ]);
  });
  const headings = [
    "Edition",
    "Method",
    "System",
    "Usual",
    "Rate by area",
    "Rate by person",
    "Least bedrooms",
    "Last listed",
    "Least rate",
    "Most rate",
    "Edition no.",
    "Clause",
    "Mark",
  ];
  return numbered(sheet, "Rules for dwellings", headings, rows);
};

/** Printed tables of dwelling rates, a row for each number. */
export const dwellingCells: TableMaker = (sheet) => {
  const rows: TableCell[][] = [];
  let rule = 0;
  forEachRule((edition, system, each) => {
    rule++;
    for (const cells of cellsOf(each))
      rows.push([`${edition.id} ${each.method}`, system, ...cells, rule, ...traced(each.source)]);
  });
  const headings = [
    "Table",
    "System",
    "Floor area above",
    "Floor area to",
    "Bedrooms from",
    "Bedrooms to",
    "Rate, cfm or L/s",
    "Rule no.",
    "Clause",
    "Mark",
  ];
  return numbered(sheet, "Tables of dwelling rates", headings, rows);
};

/** What each person above bedrooms + 1 adds. */
export const furtherPersons: TableMaker = (sheet) => {
  const rows: TableCell[][] = [];
  forEachSystem((edition, system) => {
    const rule = personsOf(edition, system);
    const each = rule?.furtherPerson?.each[system];
    if (!rule?.furtherPerson || each === undefined) return;
    rows.push([
      edition.id,
      system,
      each,
      rule.leastBedrooms,
      numberOfName("edition", edition.id),
      ...traced(rule.furtherPerson.source),
    ]);
  });
  const headings = [
    "Edition",
    "System",
    "Rate, cfm or L/s",
    "Least bedrooms",
    "Edition no.",
    "Clause",
    "Mark",
  ];
  return numbered(sheet, "Rate of each further person", headings, rows);
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

/** Rate by area and by person, least and last listed bedrooms, least and most rate of a rule. */
function numbersOf(rule: DwellingRule, system: System): TableCell[] {
  switch (rule.method) {
    case "equation": {
      const { areaRate, personRate, leastBedrooms, least } = rule;
      return [
        areaRate[system] ?? null,
        personRate[system] ?? null,
        leastBedrooms,
        null,
        least?.[system] ?? null,
        null,
      ];
    }
    case "table":
      return [null, null, rule.leastBedrooms, null, null, null];
    case "larger": {
      const { areaRate, eachFurther, leastBedrooms, byBedrooms } = rule;
      const last = leastBedrooms + byBedrooms.length - 1;
      // A rate below 0 stands for none.
      return [areaRate, eachFurther ?? -1, leastBedrooms, last, null, null];
    }
    case "bounded":
      return [rule.areaRate, null, null, null, rule.least, rule.most];
  }
}

/** Area above and to, bedrooms from and to, rate: of each printed number. */
function cellsOf(rule: DwellingRule): TableCell[][] {
  const shown = (edge: number) => (Number.isFinite(edge) ? edge : endless);
  if (rule.method === "larger")
    return rule.byBedrooms.map((rate, i) => {
      const bedrooms = rule.leastBedrooms + i;
      const from = i === 0 ? 0 : bedrooms;
      return [0, endless, from, i + 1 < rule.byBedrooms.length ? bedrooms : endless, rate];
    });
  if (rule.method !== "table") return [];
  return rule.areas.flatMap((area, r) =>
    rule.bedrooms.map((bedrooms, c) => [
      rule.areas[r - 1] ?? 0,
      shown(area),
      c === 0 ? 0 : (rule.bedrooms[c - 1] as number) + 1,
      shown(bedrooms),
      rule.cells[r]?.[c] as number,
    ]),
  );
}
