import { call } from "../../src/rules";

/**
 * Least exhaust rate that an edition asks of a room.
 * @customfunction ROOM_RATE
 * @helpurl https://localhost:3443/help/room-rate.html
 * @param {any[][]} edition Edition, such as 62.2-2016 or IRC-2021: one cell or a range.
 * @param {any[][]} room Room kind: bathroom, toilet, kitchen hood, kitchen or utility.
 * @param {any[][]} duty "on demand" or "continuous".
 * @param {any[][]} [volume] Room volume, ft³ (m³ for "si"), where the edition asks for air changes.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @param {any[][]} [enclosed] "yes" for a kitchen shut off from the rooms beside it; open where left out.
 * @param {any[][]} [cooking] "fuel" or "electric", where hoods go by that; as for most where left out.
 * @param {any[][]} [window] "yes" for a window that opens, where the edition asks; "no" where left out.
 * @param {any[][]} [floorArea] Floor area of the dwelling, ft² (m² for "si"), where hoods go by that.
 * @param {any[][]} [capture] Capture efficiency at which the hood is listed, %, where that may stand instead.
 * @returns {any[][]} Required rate, cfm (L/s for "si"); "none" where nothing is asked of such a room.
 */
export function ROOM_RATE(
  edition: any[][],
  room: any[][],
  duty: any[][],
  volume: any[][],
  units: any,
  enclosed: any[][],
  cooking: any[][],
  window: any[][],
  floorArea: any[][],
  capture: any[][],
): any[][] {
  return call("ROOM_RATE", [
    edition,
    room,
    duty,
    volume,
    units,
    enclosed,
    cooking,
    window,
    floorArea,
    capture,
  ]);
}
