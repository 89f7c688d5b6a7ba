import { sourcesIn } from "../documents";
import { edition } from "../edition";
import type { RoomRule } from "../room";
import { northwest } from "./us-ducts";

const title = "Washington State residential code 2021, WAC 51-51-1505";
const read = (clause: string) => sourcesIn(title)(clause, "read", "washington");

const delivered = (
  rule: Pick<RoomRule, "room" | "duty"> & Partial<RoomRule>,
  clause: string,
): RoomRule => ({ is: "delivered", source: read(clause), ...rule });

const hood = (cooking: "electric" | "fuel", cfm: number, captures: number): RoomRule => ({
  room: "kitchen hood",
  duty: "on demand",
  rate: { ip: cfm },
  when: { cooking },
  captures,
  is: "model check",
  note: "checked by the listed flow or capture efficiency and the sones of the model on site",
  source: read("table M1505.4.4.3"),
});

export const washington = edition("WA-2021", title, "ip", {
  aliases: ["Washington 2021", "Washington State 2021", "Washington", "WAC 51-51-1505"],
  rooms: [
    ...(["bathroom", "toilet"] as const).flatMap((room) => [
      delivered({ room, duty: "on demand", rate: { ip: 50 } }, "table M1505.4.4.1"),
      delivered({ room, duty: "continuous", rate: { ip: 20 } }, "table M1505.4.4.1"),
    ]),
    hood("fuel", 250, 80),
    hood("electric", 160, 65),
    delivered({ room: "kitchen", duty: "on demand", rate: { ip: 300 } }, "table M1505.4.4.3"),
    delivered(
      { room: "kitchen", duty: "continuous", airChanges: 5, enclosedOnly: true },
      "M1505.4.4.1",
    ),
  ],
  dwelling: [
    {
      method: "equation",
      areaRate: { ip: 0.01 },
      personRate: { ip: 7.5 },
      leastBedrooms: 0,
      least: { ip: 30 },
      source: read("M1505.4.3, eq. 15-1"),
    },
    {
      method: "table",
      system: "ip",
      areas: [500, 1000, 1500, 2000, 2500, 3000, 3500, 4000, 4500, 5000],
      bedrooms: [1, 2, 3, 4, Number.POSITIVE_INFINITY],
      leastBedrooms: 0,
      cells: [
        [30, 30, 35, 45, 50],
        [30, 35, 40, 50, 55],
        [30, 40, 45, 55, 60],
        [35, 45, 50, 60, 65],
        [40, 50, 55, 65, 70],
        [45, 55, 60, 70, 75],
        [50, 60, 65, 75, 80],
        [55, 65, 70, 80, 85],
        [60, 70, 75, 85, 90],
        [65, 75, 80, 90, 95],
      ],
      source: read("table M1505.4.3(1)"),
    },
  ],
  runTime: {
    segmentHours: 4,
    rows: [
      [0.5, 2],
      [0.66, 1.5],
      [0.75, 1.3],
      [1, 1],
    ],
    source: read("M1505.4.3.2, table M1505.4.3.2"),
  },
  balanced: {
    reduction: 0,
    increase: { one: 0.25, neither: 0.5 },
    source: read("M1505.4.3.1, table M1505.4.3(2)"),
  },
  balance: { of: "supply", within: 0.1, orFlow: { ip: 5 }, source: read("M1505.4.1.4") },
  makeupAir: { above: { ip: 400 }, onlyWithAppliance: true, source: read("M1503.6") },
  sound: {
    limits: { "on demand": 3, continuous: 1 },
    exemptAbove: { ip: 400 },
    remoteDuct: { ip: 4 },
    source: read("M1505.4.1.1 and M1505.4.4.2 (exempt above 400 cfm: from memory)"),
  },
  ducts: northwest("WAC 51-51-1505", "M1505.4.4.2", "washington", {
    ratedAt: 0.25,
    ratedFlows: [50, 80, 100, 125],
  }),
  notes: [
    "The flow of the whole-house system is measured, and a certificate posted.",
    "The whole-house rate is multiplied by the system coefficient: 1 if balanced and distributed, 1.25 if one of them, 1.5 if neither.",
  ],
});
