import { numberOfName } from "../names";
import { forEachSystem, numbered, type TableMaker, type TableRow, traced } from "../table";
import { endless } from "../text";

/** A row for each rule of an edition and system; of a room and duty the first that holds counts. */
export const roomRates: TableMaker = (sheet) => {
  const rows: TableRow[] = [];
  forEachSystem((edition, system) => {
    for (const rule of edition.rooms) {
      const { room, duty, when = {} } = rule;
      rows.push({
        Edition: edition.id,
        Room: room,
        Duty: duty,
        System: system,
        "Rate, cfm or L/s": rule.rate?.[system] ?? null,
        "Air changes an hour": rule.airChanges ?? null,
        Both: rule.together === "both" ? 1 : 0,
        "Enclosed only": rule.enclosedOnly ? 1 : 0,
        "Cooking no.": when.cooking ? numberOfName("cooking", when.cooking) : 0,
        "No window": when.window === "none" ? 1 : 0,
        "Floor above": when.floorAbove ?? 0,
        "Floor to": when.floorTo ?? endless,
        Captures: rule.captures ?? 0,
        "Edition no.": numberOfName("edition", edition.id),
        "Room no.": numberOfName("room", room),
        "Duty no.": numberOfName("duty", duty),
        ...traced(rule.source),
        Note: rule.note ?? null,
      });
    }
  });
  return numbered(sheet, "Least rates of rooms", rows);
};
