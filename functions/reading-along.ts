import { findDuty, findEdition, findRoom } from "../src/editions";
import {
  dwellingSource,
  everyNumber,
  type NumberEntry,
  numbersOf,
  roomSource,
  verifyNote,
} from "../src/job";
import { fromError, missing } from "./problem";
import { isBlank, isError, Rows, toMatrix } from "./rows";

/**
 * Where the rate that an edition asks of a room stands; of the whole dwelling without a room.
 * @customfunction SOURCE
 * @helpurl https://localhost:3443/help/source.html
 * @param {any[][]} edition Edition, such as 62.2-2016 or IRC-2021: one cell or a range.
 * @param {any[][]} [room] Room kind, as in ROOM_RATE.
 * @param {any[][]} [duty] "on demand" or "continuous".
 * @returns {any[][]} Work, clause and how far the number has been traced.
 */
export function sourceOf(edition: any[][], room: any[][], duty: any[][]): any[][] {
  const rows = new Rows({ edition, room, duty });
  const [editionOf, roomOf, dutyOf] = [
    rows.texts("edition"),
    rows.texts("room"),
    rows.texts("duty"),
  ];
  const ofRoom = rows.has("room") || rows.has("duty");
  return rows.result((i) => {
    const [named, kind, running] = [editionOf(i), roomOf(i), dutyOf(i)];
    if (rows.isSpoiled(i)) return missing("the edition, room or duty holds an error");
    if (ofRoom ? kind === "" && running === "" : named === "") return "";
    if (named === "") return missing("the edition is blank: name one, such as 62.2-2016");
    try {
      if (!ofRoom) return dwellingSource(findEdition(named));
      if (kind === "") return missing("the room kind is blank: name one, such as bathroom");
      if (running === "") return missing("the duty is blank: say on demand or continuous");
      return roomSource(findEdition(named), findRoom(kind), findDuty(running));
    } catch (error) {
      return fromError(error);
    }
  });
}

const headings = [
  "edition",
  "what",
  "value",
  "unit",
  "work",
  "clause",
  "mark",
  "read in",
  "on",
  "note",
];

/**
 * Every number that the editions and rules rest on, one a row below a row of headings.
 * @customfunction EDITIONS
 * @helpurl https://localhost:3443/help/editions.html
 * @param {any[][]} [edition] One edition or code, such as 62.2-2016; all of them where left out.
 * @returns {any[][]} Edition, what, value, unit, work, clause, mark, document, date and note, side by side.
 */
export function editionsOf(edition: any[][]): any[][] {
  const cell = toMatrix(edition)[0]?.[0];
  if (isError(cell)) return [[cell]];
  try {
    const entries = isBlank(cell) ? everyNumber() : numbersOf(String(cell));
    return [headings, ...entries.map(numberRow)];
  } catch (error) {
    return [[fromError(error)]];
  }
}

function numberRow({ edition, what, value, unit, source }: NumberEntry): unknown[] {
  const { work, clause, mark, document = "", traced = "" } = source;
  const shown = Number.isFinite(value) ? value : "no end";
  return [edition, what, shown, unit, work, clause, mark, document, traced, verifyNote(mark)];
}
