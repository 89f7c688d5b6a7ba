import { numberOfName } from "../names";
import { bySystem, rowOf, tableOf } from "../table";
import { endless } from "../text";

/** A row for each rule of an edition and system; of a room and duty the first that holds counts. */
export const roomRates = tableOf("Least rates of rooms", () =>
  bySystem((edition, system) =>
    edition.rooms.map((rule) => {
      const { room, duty, when = {} } = rule;
      const cells = {
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
      };
      const numbers = {
        "Room no.": numberOfName("room", room),
        "Duty no.": numberOfName("duty", duty),
      };
      return { ...rowOf(edition.id, cells, rule.source, numbers), Note: rule.note ?? null };
    }),
  ),
);
