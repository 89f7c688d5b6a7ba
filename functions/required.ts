import { findDuty, findEdition, findRoom } from "../src/editions";
import { dwellingRate, roomRate } from "../src/job";
import { known } from "./by-edition";
import { fromError, missing } from "./problem";
import { pick, Rows } from "./rows";
import { aboveZero, readUnits } from "./units";

/**
 * Least exhaust rate that an edition asks of a room.
 * @customfunction ROOM_RATE
 * @helpurl https://localhost:3443/help/room-rate.html
 * @param {any[][]} edition Edition, such as 62.2-2016 or IRC-2021: one cell or a range.
 * @param {any[][]} room Room kind: bathroom, toilet, kitchen hood, kitchen or utility.
 * @param {any[][]} duty "on demand" or "continuous".
 * @param {any[][]} [volume] Room volume, ft³ (m³ for "si"), where the edition asks for air changes.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Required rate, cfm (L/s for "si").
 */
export function roomRateOf(
  edition: any[][],
  room: any[][],
  duty: any[][],
  volume: any[][],
  units: any,
): any[][] {
  const system = readUnits(units);
  const rows = new Rows({ edition, room, duty, volume });
  const texts = {
    edition: rows.texts("edition"),
    room: rows.texts("room"),
    duty: rows.texts("duty"),
  };
  const volumes = rows.has("volume")
    ? rows.numbers("volume", { blank: "allowed", refuse: aboveZero })
    : Number.NaN;
  return rows.result((i) => {
    const [named, kind, running] = [texts.edition(i), texts.room(i), texts.duty(i)];
    if (rows.isSpoiled(i)) return missing("the edition, room or duty holds an error");
    if (kind === "" && running === "") return "";
    if (named === "") return missing("the edition is blank: name one, such as 62.2-2016");
    if (kind === "") return missing("the room kind is blank: name one, such as bathroom");
    if (running === "") return missing("the duty is blank: say on demand or continuous");
    const volume = pick(volumes, i);
    const size = Number.isNaN(volume) ? undefined : volume;
    try {
      return roomRate(findEdition(named), findRoom(kind), findDuty(running), system, {
        volume: size,
      }).rate;
    } catch (error) {
      return fromError(error);
    }
  });
}

/**
 * Least ventilation rate that an edition asks of a whole dwelling, before any credit.
 * @customfunction DWELLING_RATE
 * @helpurl https://localhost:3443/help/dwelling-rate.html
 * @param {any[][]} edition Edition, such as 62.2-2016 or IRC-2021: one cell or a range.
 * @param {any[][]} floorArea Floor area, above 0, ft² (m² for "si"): one cell or a range.
 * @param {any[][]} bedrooms Number of bedrooms, 0 or more: one cell or a range.
 * @param {any[][]} [method] "equation", "table", "larger" or "bounded"; the edition's usual one where left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @param {any[][]} [occupants] People known to live there, where they are more than bedrooms plus one.
 * @returns {any[][]} Required rate, cfm (L/s for "si").
 */
export function dwellingRateOf(
  edition: any[][],
  floorArea: any[][],
  bedrooms: any[][],
  method: any[][],
  units: any,
  occupants: any[][],
): any[][] {
  const system = readUnits(units);
  const rows = new Rows({ edition, floorArea, bedrooms, method, occupants });
  const editionOf = rows.texts("edition");
  const methodOf = rows.texts("method");
  const area = rows.numbers("floorArea", { blank: "nothing yet", refuse: aboveZero });
  const count = rows.numbers("bedrooms");
  const people = rows.numbers("occupants", { blank: "allowed", otherwise: Number.NaN });
  return rows.result((i) => {
    const [named, way] = [editionOf(i), methodOf(i)];
    if (rows.isSpoiled(i)) return missing("the edition or the method holds an error");
    if (named === "") return missing("the edition is blank: name one, such as 62.2-2016");
    try {
      const [floor, rooms, living] = [pick(area, i), pick(count, i), known(pick(people, i))];
      return dwellingRate(findEdition(named), floor, rooms, system, way, living).rate;
    } catch (error) {
      return fromError(error);
    }
  });
}
