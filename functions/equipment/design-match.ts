import { call } from "../../src/rules";

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
export function DESIGN_MATCH(
  programme: any[][],
  design: any[][],
  measured: any[][],
  units: any,
): any[][] {
  return call("DESIGN_MATCH", [programme, design, measured, units]);
}
