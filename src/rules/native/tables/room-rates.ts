import { numberOfName } from "../names";
import { forEachSystem, numbered, type TableCell, type TableMaker, traced } from "../table";
import { endless } from "../text";

const headings = [
  "Edition",
  "Room",
  "Duty",
  "System",
  "Rate, cfm or L/s",
  "Air changes an hour",
  "Both",
  "Enclosed only",
  "Cooking no.",
  "No window",
  "Floor above",
  "Floor to",
  "Captures",
  "Edition no.",
  "Room no.",
  "Duty no.",
  "Clause",
  "Mark",
  "Note",
];

/** A row for each rule of an edition and system; of a room and duty the first that holds counts. */
export const roomRates: TableMaker = (sheet) => {
  const rows: TableCell[][] = [];
  forEachSystem((edition, system) => {
    for (const rule of edition.rooms) {
      const { room, duty, when = {} } = rule;
      rows.push([
        edition.id,
        room,
        duty,
        system,
        rule.rate?.[system] ?? null,
        rule.airChanges ?? null,
        rule.together === "both" ? 1 : 0,
        rule.enclosedOnly ? 1 : 0,
        when.cooking ? numberOfName("cooking", when.cooking) : 0,
        when.window === "none" ? 1 : 0,
        when.floorAbove ?? 0,
        when.floorTo ?? endless,
        rule.captures ?? 0,
        numberOfName("edition", edition.id),
        numberOfName("room", room),
        numberOfName("duty", duty),
        ...traced(rule.source),
        rule.note ?? null,
      ]);
    }
  });
  return numbered(sheet, "Least rates of rooms", headings, rows);
};
