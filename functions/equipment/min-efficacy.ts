import { call } from "../../src/rules";

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
export function MIN_EFFICACY(
  edition: any[][],
  fanKind: any[][],
  flow: any[][],
  units: any,
): any[][] {
  return call("MIN_EFFICACY", [edition, fanKind, flow, units]);
}
