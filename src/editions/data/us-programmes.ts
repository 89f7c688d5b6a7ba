import { sourcesIn } from "../documents";
import { type Edition, edition } from "../edition";
import type { RoomRule } from "../room";

/** Local exhaust as the rater measures it, items 8.1 and 8.2 of the field checklist. */
function measured(work: string): RoomRule[] {
  const source = sourcesIn(work)("field checklist, items 8.1 and 8.2", "from memory", "basc");
  const shared = { is: "delivered", source } as const;
  const changed = { airChanges: 5, note: "of the kitchen's own volume" };
  return [
    { room: "bathroom", duty: "on demand", rate: { ip: 50 }, ...shared },
    { room: "bathroom", duty: "continuous", rate: { ip: 20 }, ...shared },
    { room: "kitchen hood", duty: "on demand", rate: { ip: 100 }, ...shared },
    {
      room: "kitchen",
      duty: "on demand",
      rate: { ip: 100 },
      ...changed,
      together: "both",
      note: "and 5 air changes an hour of the kitchen's own volume, where it is no part of the range",
      ...shared,
    },
    { room: "kitchen hood", duty: "continuous", ...changed, ...shared },
    { room: "kitchen", duty: "continuous", ...changed, ...shared },
  ];
}

const work = "ENERGY STAR homes 3.1";

export const programmes: readonly Edition[] = [
  edition("ENERGY-STAR-3.1", "ENERGY STAR homes, version 3.1", "ip", {
    aliases: ["ENERGY STAR", "ENERGY STAR v3.1"],
    rooms: measured(work),
    sound: {
      limits: { "on demand": 3, continuous: 1 },
      exemptAbove: { ip: 400 },
      remoteDuct: { ip: 4 },
      source: sourcesIn(work)(
        "rater field checklist, fan sound, as guides give it",
        "read",
        "basc",
      ),
    },
    designMatch: {
      within: { ip: 15 },
      share: 0.15,
      source: sourcesIn(work)("rater field checklist, item 7.1, the dwelling's rate"),
    },
    notes: [
      "The tolerance to the design belongs to the dwelling's ventilation rate; the rates of rooms have none.",
    ],
  }),
  edition("ZERH-2", "DOE zero-energy-ready homes, version 2", "ip", {
    aliases: ["Zero Energy Ready Homes", "zero-energy-ready homes"],
    rooms: measured("Zero-energy-ready homes 2, through ENERGY STAR 3.2"),
    notes: ["Asks for ENERGY STAR 3.2 and its rates (from memory)."],
  }),
];
