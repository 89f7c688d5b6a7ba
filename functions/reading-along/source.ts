import { call } from "../../src/rules";

/**
 * Where the rate that an edition asks of a room stands; of the whole dwelling without a room.
 * @customfunction SOURCE
 * @helpurl https://localhost:3443/help/source.html
 * @param {any[][]} edition Edition, such as 62.2-2016 or IRC-2021: one cell or a range.
 * @param {any[][]} [room] Room kind, as in ROOM_RATE.
 * @param {any[][]} [duty] "on demand" or "continuous".
 * @returns {any[][]} Work, clause and how far the number has been traced.
 */
export function SOURCE(edition: any[][], room: any[][], duty: any[][]): any[][] {
  return call("SOURCE", [edition, room, duty]);
}
