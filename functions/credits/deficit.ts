import { call } from "../../src/rules";

/**
 * What a room's exhaust lacks, for existing dwellings that keep weak fans; never below 0.
 * @customfunction DEFICIT
 * @helpurl https://localhost:3443/help/deficit.html
 * @param {any[][]} edition Edition, such as 62.2-2016: one cell or a range.
 * @param {any[][]} room Room kind: bathroom, kitchen hood or kitchen.
 * @param {any[][]} measured Measured flow, or 0 or "none" without a fan. A blank gives a blank.
 * @param {any[][]} [window] "yes" for an openable window in the room; "no" where left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Deficit, cfm (L/s for "si").
 */
export function DEFICIT(
  edition: any[][],
  room: any[][],
  measured: any[][],
  window: any[][],
  units: any,
): any[][] {
  return call("DEFICIT", [edition, room, measured, window, units]);
}
