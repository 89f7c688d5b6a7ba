import type { Source } from "../formulas";
import type { Duty, Edition, RoomKind, RoomRule } from "./edition";

const source = (clause: string): Source => ({
  work: "Approved Document F, volume 1, 2021 (England)",
  clause,
  mark: "from memory",
});

const room = (kind: RoomKind, duty: Duty, litresPerSecond: number): RoomRule => ({
  room: kind,
  duty,
  rate: { si: litresPerSecond },
  source: source(duty === "continuous" ? "table 1.2" : "table 1.1"),
});

export const adf2021: Edition = {
  id: "ADF-2021",
  title: "UK Approved Document F 2021, dwellings",
  aliases: ["ADF 2021", "Approved Document F 2021"],
  systems: ["si"],
  rooms: [
    room("kitchen hood", "on demand", 30),
    room("kitchen hood", "continuous", 13),
    room("kitchen", "on demand", 60),
    room("kitchen", "continuous", 13),
    room("utility", "on demand", 30),
    room("utility", "continuous", 8),
    room("bathroom", "on demand", 15),
    room("bathroom", "continuous", 8),
    room("toilet", "on demand", 6),
    room("toilet", "continuous", 6),
  ],
  dwelling: [
    {
      method: "larger",
      system: "si",
      areaRate: 0.3,
      byBedrooms: [13, 19, 25, 31, 37, 43],
      eachFurther: 6,
      source: source("table 1.3"),
      areaSource: source("1.24"),
    },
  ],
  notes: ["The larger of the area rate and the bedroom rate counts."],
};
