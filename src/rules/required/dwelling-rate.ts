import { oneValue, plain } from "../../algebra";
import { InputError } from "../../cells";
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
} from "../../editions";
import {
  dwellingRateBounded,
  dwellingRateEquation,
  dwellingRateLarger,
  rateForPersons,
} from "../../formulas";
import { edition, flowToCome, units } from "../arguments";
import { ifGiven, namedIfGiven, needed, optional } from "../contract/argument";
import type { Help } from "../contract/help";
import { wholeNumber } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import { flowUnits, noRule, RequiredRate, requireSystem, statedIn, sum } from "../contract/ruling";
import type { Found } from "../native/found";
import type { Native, NativeForm } from "../native/native";
import { dwellingCells, dwellingRules, furtherPersons } from "../native/tables/dwelling-rates";
import { sumOver, wrong } from "../native/text";
import { goesByPersons, isStated, personsOf } from "./stated";

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
  if (occupants === undefined) return byRule(rule, floorArea, bedrooms, system);
  if (!Number.isInteger(occupants) || occupants < 0)
    throw new InputError(`${occupants} occupants: give a whole number, 0 or more`);
  return rule.method === "larger" && rule.byPersons
    ? byLarger(rule, floorArea, Math.max(bedrooms, occupants - 1))
    : forPersons(edition, byRule(rule, floorArea, bedrooms, system), occupants, bedrooms, system);
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

/** The rate with what each person above bedrooms + 1 adds, by equation and by table alike. */
function forPersons(
  edition: Edition,
  before: RequiredRate,
  n: number,
  bedrooms: number,
  system: System,
): RequiredRate {
  const further = personsOf(edition, system);
  if (!further?.furtherPerson)
    throw noRule(edition, "rate by persons", (each) => goesByPersons(each, system));
  const { each, source } = further.furtherPerson;
  const N = Math.max(bedrooms, further.leastBedrooms);
  const given = { R: before.rate, b: statedIn(each, system, edition.id), n, N };
  const rate = oneValue(rateForPersons, given);
  if (rate === before.rate) return before;
  return before.followedBy(rate, source, sum(rateForPersons, given));
}

function byEquation(rule: EquationRule, A: number, bedrooms: number, system: System): RequiredRate {
  const a = rule.areaRate[system];
  const b = rule.personRate[system];
  if (a === undefined || b === undefined)
    throw new UnknownNameError(`${rule.source.work} has no equation in ${flowUnits[system]}`);
  const given = { a, A, b, N: Math.max(bedrooms, rule.leastBedrooms) };
  const rate = oneValue(dwellingRateEquation, given);
  const least = rule.least?.[system] ?? 0;
  return new RequiredRate(Math.max(rate, least), rule.source, system, [
    sum(dwellingRateEquation, given),
    ...(rate < least ? [`not below ${least} ${flowUnits[system]}`] : []),
  ]);
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
  const words = `table row ${row + 1}, column ${column + 1}: ${rate}`;
  return new RequiredRate(rate, rule.source, "ip", [words]);
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
  const source = rate > B ? rule.areaSource : rule.source;
  const parts = [
    sum(dwellingRateLarger, given),
    ...(most === undefined ? [] : [`a band: at most ${most} L/s`]),
  ];
  return new RequiredRate(rate, source, "si", parts, most);
}

function byBounds(rule: BoundedRule, A: number): RequiredRate {
  const given = { a: rule.areaRate, A, lo: rule.least, hi: rule.most };
  const parts = [sum(dwellingRateBounded, given)];
  return new RequiredRate(
    oneValue(dwellingRateBounded, given),
    rule.source,
    rule.system,
    parts,
    rule.most,
  );
}

export const rule = ruleOf({
  id: "DWELLING_RATE",
  title: "Required rate of a dwelling",
  arguments: {
    edition,
    floorArea: flowToCome,
    bedrooms: needed(wholeNumber),
    method: optional(namedIfGiven((text) => text)),
    units,
    occupants: optional(ifGiven(wholeNumber)),
  },
  work: ({ edition, floorArea, bedrooms, units, method, occupants }) =>
    dwellingRate(edition, floorArea, bedrooms, units, method, occupants).answer(flowUnits),
});

export const native: NativeForm = (native) =>
  native.has("occupants") ? withPersons(native) : nativeRate(native);

/** The step that gives a dwelling's rate, or an error where the edition sets none. */
function nativeRate(native: Native): string {
  const [A, N] = [native.far("floorArea"), native.far("bedrooms")];
  const rule = dwellingRule(native);
  const n = native.has("occupants") ? native.far("occupants") : undefined;
  const persons = n ? `,IF(ISNUMBER(${n}),${rule.of("Goes by persons")}*(${n}-1),0)` : "";
  const counted = native.call.step(
    "bedrooms that count",
    `MAX(${N},${rule.of("Least bedrooms")}${persons})`,
  );
  const cells = native.call.table(dwellingCells);
  const listed = native.call.step(
    "number in the table of dwelling rates",
    sumOver(cells.column("Rate, cfm or L/s"), [
      `${cells.column("Rule no.")}=${rule.row}`,
      `${cells.column("Floor area above")}<${A}`,
      `${cells.column("Floor area to")}>=${A}`,
      `${cells.column("Bedrooms from")}<=${counted}`,
      `${cells.column("Bedrooms to")}>=${counted}`,
    ]),
  );
  const a = rule.of("Rate by area");
  const b = rule.of("Rate by person");
  const equation = `MAX(${rule.of("Least rate")},${plain(dwellingRateEquation, { a, A, b, N: counted })})`;
  const table = `IF(${listed}>0,${listed},${wrong("beyond the end of the table")})`;
  const last = rule.of("Last listed");
  const further = `IF(${counted}<=${last},0,IF(${b}<0,${wrong("beyond the bedrooms that are listed")},(${counted}-${last})*${b}))`;
  const larger = plain(dwellingRateLarger, { a, A, B: `(${listed}+${further})` });
  const bounds = { a, A, lo: rule.of("Least rate"), hi: rule.of("Most rate") };
  const bounded = plain(dwellingRateBounded, bounds);
  const way = (method: string) => `${rule.of("Method")}="${method}"`;
  return native.call.step(
    "dwelling rate",
    rule.orNone(
      `IF(${way("equation")},${equation},IF(${way("table")},${table},IF(${way("larger")},${larger},${bounded})))`,
    ),
  );
}

function dwellingRule(native: Native): Found {
  const rules = native.call.table(dwellingRules);
  const of = (which: string) =>
    sumOver(rules.column("No."), [
      `${rules.column("Edition no.")}=${native.number("edition")}`,
      `${rules.column("System")}=${native.system}`,
      which,
    ]);
  const usual = of(`${rules.column("Usual")}=1`);
  const method = native.text("method", "far");
  const named = of(`${rules.column("Method")}=${method}`);
  const formula = native.has("method") ? `IF(${method}="",${usual},${named})` : usual;
  return native.rowBy(dwellingRules, formula);
}

/** The rate with what each person above bedrooms + 1 adds. */
function withPersons(native: Native): string {
  const R = nativeRate(native);
  const n = native.far("occupants");
  const rule = native.rowWhere(furtherPersons, {
    "Edition no.": native.number("edition"),
    System: native.system,
  });
  const N = `MAX(${native.far("bedrooms")},${rule.of("Least bedrooms")})`;
  const raised = plain(rateForPersons, { R, b: rule.of("Rate, cfm or L/s"), n, N });
  return native.call.step(
    "dwelling rate for its persons",
    `IF(ISNUMBER(${n}),IF(${dwellingRule(native).of("Goes by persons")}=1,${R},${rule.orNone(raised)}),${R})`,
  );
}

export const help: Help = {
  computes: [
    "Some editions give an equation and a table. Left out, the method is the edition's usual one; a table counts in bands of floor area, so the two may differ.",
    "Under ASHRAE 62.2 each person above bedrooms plus one adds to the rate (from memory). HUD's rate has an upper limit too.",
    "Verify against your own copy of the edition that applies.",
  ],
  result: 'Required rate, cfm (L/s with units "si").',
  formulas: [dwellingRateEquation, dwellingRateLarger, dwellingRateBounded, rateForPersons],
  examples: [
    {
      words: "1800 ft² of floor and 3 bedrooms, under ASHRAE 62.2-2016.",
      args: ["62.2-2016", 1800, 3],
      gives: 84,
    },
  ],
  troubles: [
    { when: "The edition is not known.", args: ["house rule", 1800, 3] },
    { when: "The edition has no such method.", args: ["62.2-2016", 1800, 3, "larger"] },
    { when: "The number of bedrooms is not whole.", args: ["62.2-2016", 1800, 2.5] },
    { when: "The edition does not count persons.", args: ["IRC-2021", 1800, 3, null, null, 6] },
    { when: "The table ends before this floor area.", args: ["62.2-2016", 9000, 3, "table"] },
  ],
  related: ["ROOM_RATE", "FAN_RATE", "BALANCED_RATE", "VERDICT"],
};
