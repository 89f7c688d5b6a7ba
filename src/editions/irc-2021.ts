import type { Mark, Source } from "../formulas";
import type { Duty, Edition, RoomKind, RoomRule } from "./edition";

const source = (clause: string, mark: Mark): Source => ({ work: "IRC 2021", clause, mark });

const room = (kind: RoomKind, duty: Duty, cfm: number): RoomRule => ({
  room: kind,
  duty,
  rate: { ip: cfm },
  source: source("M1505.4.4, table M1505.4.4", "two sources"),
});

export const irc2021: Edition = {
  id: "IRC-2021",
  title: "International Residential Code 2021, M1505",
  aliases: ["IRC 2021", "IRC 2021 M1505"],
  systems: ["ip"],
  rooms: [
    room("bathroom", "on demand", 50),
    room("bathroom", "continuous", 20),
    room("toilet", "on demand", 50),
    room("toilet", "continuous", 20),
    room("kitchen hood", "on demand", 100),
    room("kitchen hood", "continuous", 25),
    room("kitchen", "on demand", 100),
    room("kitchen", "continuous", 25),
  ],
  dwelling: [
    {
      method: "table",
      system: "ip",
      areas: [1500, 3000, 4500, 6000, 7500, Number.POSITIVE_INFINITY],
      bedrooms: [1, 3, 5, 7, Number.POSITIVE_INFINITY],
      leastBedrooms: 0,
      cells: [
        [30, 45, 60, 75, 90],
        [45, 60, 75, 90, 105],
        [60, 75, 90, 105, 120],
        [75, 90, 105, 120, 135],
        [90, 105, 120, 135, 150],
        [105, 120, 135, 150, 165],
      ],
      source: source("M1505.4.3, table M1505.4.3(1)", "read"),
    },
    {
      method: "equation",
      areaRate: { ip: 0.01 },
      personRate: { ip: 7.5 },
      leastBedrooms: 0,
      source: source("M1505.4.3, eq. 15-1", "two sources"),
    },
  ],
  runTime: {
    segmentHours: 4,
    rows: [
      [0.25, 4],
      [0.33, 3],
      [0.5, 2],
      [0.66, 1.5],
      [0.75, 1.3],
      [1, 1],
    ],
    source: source("M1505.4.3, table M1505.4.3(2)", "read"),
  },
  notes: [
    "The column above 7 bedrooms is the equation at 9 bedrooms, not at 8.",
    "A 30 % reduction for balanced, distributed systems exists (from memory); the rate here is the one before it.",
  ],
};
