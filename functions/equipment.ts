import { findDuct, findDuty, findFan } from "../src/editions";
import { designMatch, leastEfficacy, longestDuct, loudest, makeupAir, readYesNo } from "../src/job";
import { byEdition, known } from "./by-edition";
import { zeroOrMore } from "./dwelling";
import { missing } from "./problem";
import { pick, Rows } from "./rows";
import { aboveZero, readUnits } from "./units";

const optional = { blank: "allowed", otherwise: Number.NaN, refuse: aboveZero } as const;
const wholeNumber = (value: number) =>
  Number.isInteger(value) && value >= 0 ? undefined : "give a whole number, 0 or more";

/**
 * Least flow for each watt that a code asks of a fan.
 * @customfunction MIN_EFFICACY
 * @helpurl https://localhost:3443/help/min-efficacy.html
 * @param {any[][]} edition Code, such as IECC-2021 or 10-CFR-460: one cell or a range.
 * @param {any[][]} fanKind Fan kind: heat recovery, range hood, in-line, bath or utility, air handler. A blank gives a blank.
 * @param {any[][]} [flow] Rated flow, cfm, where the code tells fans apart by it.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Least efficacy, cfm/W.
 */
export function minEfficacyOf(
  edition: any[][],
  fanKind: any[][],
  flow: any[][],
  units: any,
): any[][] {
  const system = readUnits(units);
  const rows = new Rows({ edition, fanKind, flow });
  const editionOf = rows.texts("edition");
  const kindOf = rows.texts("fanKind");
  const flows = rows.numbers("flow", optional);
  const least = (named: string, i: number) =>
    leastEfficacy(named, findFan(kindOf(i)), known(pick(flows, i)), system).value;
  return byEdition(rows, editionOf, least, { example: "IECC-2021", kindOf });
}

/**
 * Loudest rating that a fan may have, in sones.
 * @customfunction MAX_SONE
 * @helpurl https://localhost:3443/help/max-sone.html
 * @param {any[][]} edition Edition or programme, such as 62.2-2016: one cell or a range.
 * @param {any[][]} duty "on demand" or "continuous". A blank gives a blank.
 * @param {any[][]} [flow] Rated flow, cfm: large fans are exempt.
 * @param {any[][]} [remote] "yes" for a fan mounted outside the rooms with 4 ft of duct or more; "no" where left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Sones, or "no limit".
 */
export function maxSoneOf(
  edition: any[][],
  duty: any[][],
  flow: any[][],
  remote: any[][],
  units: any,
): any[][] {
  const system = readUnits(units);
  const rows = new Rows({ edition, duty, flow, remote });
  const editionOf = rows.texts("edition");
  const dutyOf = rows.texts("duty");
  const remoteOf = rows.texts("remote");
  const flows = rows.numbers("flow", optional);
  const limit = (named: string, i: number) => {
    const away = readYesNo("remote", remoteOf(i)) ?? false;
    return loudest(named, findDuty(dutyOf(i)), known(pick(flows, i)), away, system).value;
  };
  return byEdition(rows, editionOf, limit, { kindOf: dutyOf });
}

/**
 * Longest exhaust duct by the code's table, once its elbows are taken off.
 * @customfunction DUCT_LIMIT
 * @helpurl https://localhost:3443/help/duct-limit.html
 * @param {any[][]} edition Code, such as IRC-2021: one cell or a range.
 * @param {any[][]} ductKind "flex" or "smooth".
 * @param {any[][]} diameter Duct diameter, in.
 * @param {any[][]} ratedFlow Rated flow of the fan at 0.25 in w.c., cfm. A blank gives a blank.
 * @param {any[][]} [elbows] Number of elbows; 0 where left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Length, ft, or "no limit" or "not allowed".
 */
export function ductLimitOf(
  edition: any[][],
  ductKind: any[][],
  diameter: any[][],
  ratedFlow: any[][],
  elbows: any[][],
  units: any,
): any[][] {
  const system = readUnits(units);
  const rows = new Rows({ edition, ductKind, diameter, ratedFlow, elbows });
  const editionOf = rows.texts("edition");
  const kindOf = rows.texts("ductKind");
  const sizes = rows.numbers("diameter", { refuse: aboveZero });
  const flows = rows.numbers("ratedFlow", { blank: "nothing yet", refuse: aboveZero });
  const bends = rows.numbers("elbows", { ...optional, refuse: wholeNumber });
  const limit = (named: string, i: number) => {
    const kind = kindOf(i);
    if (kind === "") return missing("the duct kind is blank: say flex or smooth");
    const duct = {
      kind: findDuct(kind),
      diameter: pick(sizes, i),
      ratedFlow: pick(flows, i),
      elbows: known(pick(bends, i)) ?? 0,
    };
    return longestDuct(named, duct, system).value;
  };
  return byEdition(rows, editionOf, limit, { example: "IRC-2021" });
}

/**
 * Whether an exhaust of this flow needs makeup air.
 * @customfunction MAKEUP_AIR
 * @helpurl https://localhost:3443/help/makeup-air.html
 * @param {any[][]} edition Code, such as IRC-2021: one cell or a range.
 * @param {any[][]} flow Largest flow of the exhaust, cfm (L/s for "si"). A blank gives a blank.
 * @param {any[][]} [appliance] "yes" if a fuel appliance inside is neither direct-vent nor mechanical-draft, or "no".
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} "needed" or "not needed".
 */
export function makeupAirOf(
  edition: any[][],
  flow: any[][],
  appliance: any[][],
  units: any,
): any[][] {
  const system = readUnits(units);
  const rows = new Rows({ edition, flow, appliance });
  const editionOf = rows.texts("edition");
  const applianceOf = rows.texts("appliance");
  const flows = rows.numbers("flow", { blank: "nothing yet", refuse: aboveZero });
  const answer = (named: string, i: number) =>
    makeupAir(named, pick(flows, i), readYesNo("appliance", applianceOf(i)), system).value;
  return byEdition(rows, editionOf, answer, { example: "IRC-2021" });
}

/**
 * Whether a measured flow lies within a programme's tolerance of its design, either way.
 * @customfunction DESIGN_MATCH
 * @helpurl https://localhost:3443/help/design-match.html
 * @param {any[][]} programme Programme, such as ENERGY-STAR-3.1: one cell or a range.
 * @param {any[][]} design Design flow, above 0, cfm.
 * @param {any[][]} measured Measured flow, cfm. A blank gives a blank.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} "matches", "low" or "high".
 */
export function designMatchOf(
  programme: any[][],
  design: any[][],
  measured: any[][],
  units: any,
): any[][] {
  const system = readUnits(units);
  const rows = new Rows({ programme, design, measured });
  const programmeOf = rows.texts("programme");
  const designs = rows.numbers("design", { refuse: aboveZero });
  const flows = rows.numbers("measured", { blank: "nothing yet", refuse: zeroOrMore });
  const match = (named: string, i: number) =>
    designMatch(named, pick(designs, i), pick(flows, i), system).value;
  return byEdition(rows, programmeOf, match, { what: "programme", example: "ENERGY-STAR-3.1" });
}
