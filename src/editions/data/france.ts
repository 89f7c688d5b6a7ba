import { sourcesIn } from "../documents";
import { edition } from "../edition";
import type { RoomKind } from "../room";
import { roomsPerHour } from "./per-hour";

const source = sourcesIn("Arrêté of 24 March 1982");

/** m³/h by main rooms of the dwelling, from 5 and more down to 1. */
const byMainRooms: readonly (readonly [RoomKind, ...number[]])[] = [
  ["kitchen", 135, 120, 105, 90, 75],
  ["kitchen hood", 135, 120, 105, 90, 75],
  ["bathroom", 30, 30, 30, 15, 15],
  ["toilet", 30, 30, 15, 15, 15],
  ["utility", 15, 15, 15, 15, 15],
];

export const france = edition("FR-1982", "France, arrêté of 24 March 1982 (changed 1983)", "si", {
  aliases: ["France", "arrêté 1982"],
  rooms: byMainRooms.flatMap(([room, ...printed]) =>
    roomsPerHour(
      source("article 3", "from memory", "french"),
      printed.map((rate, i) => [room, "on demand", rate, i === 0 ? {} : { mainRooms: 5 - i }]),
    ),
  ),
  notes: [
    "Rates that the installation must reach, by the number of main rooms; the highest where that is not known.",
    "Of several toilets each has 15 m³/h. A fan-powered hood may not join a collective duct.",
  ],
});
