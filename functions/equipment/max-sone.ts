import { call } from "../../src/rules";

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
export function MAX_SONE(
  edition: any[][],
  duty: any[][],
  flow: any[][],
  remote: any[][],
  units: any,
): any[][] {
  return call("MAX_SONE", [edition, duty, flow, remote, units]);
}
