import { numberOfName } from "../names";
import { forEachSystem, numbered, type TableCell, type TableMaker, traced } from "../table";

const headings = [
  "Edition",
  "Room",
  "Duty",
  "System",
  "Rate, cfm or L/s",
  "Air changes an hour",
  "Both",
  "Edition no.",
  "Room no.",
  "Duty no.",
  "Clause",
  "Mark",
  "Note",
];

/** A row for each edition, system, room and duty. */
export const roomRates: TableMaker = (sheet) => {
  const rows: TableCell[][] = [];
  forEachSystem((edition, system) => {
    const seen = new Set<string>();
    for (const {
      room,
      duty,
      rate,
      airChanges,
      together,
      enclosedOnly,
      note,
      source,
    } of edition.rooms) {
      const key = `${room} ${duty}`;
      if (seen.has(key)) continue;
      seen.add(key);
      rows.push([
        edition.id,
        room,
        duty,
        system,
        rate?.[system] ?? null,
        // What only an enclosed kitchen may have instead of a rate takes an answer that is not here.
        enclosedOnly && rate ? null : (airChanges ?? null),
        together === "both" ? 1 : 0,
        numberOfName("edition", edition.id),
        numberOfName("room", room),
        numberOfName("duty", duty),
        ...traced(source),
        note ?? null,
      ]);
    }
  });
  return numbered(sheet, "Least rates of rooms", headings, rows);
};
