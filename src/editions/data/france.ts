import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { roomsPerHour } from "./per-hour";

const source = sourcesIn("Arrêté of 24 March 1982");

export const france = edition("FR-1982", "France, arrêté of 24 March 1982 (changed 1983)", "si", {
  aliases: ["France", "arrêté 1982"],
  rooms: roomsPerHour(source("article 3", "from memory", "french"), [
    ["kitchen", "on demand", 135],
    ["kitchen hood", "on demand", 135],
    ["bathroom", "on demand", 30],
    ["toilet", "on demand", 30],
    ["utility", "on demand", 15],
  ]),
  notes: [
    "Rates that the installation must reach, those of five main rooms and more: it asks less of fewer, down to 75 m³/h of the kitchen of a single room.",
    "Of several toilets each has 15 m³/h. A fan-powered hood may not join a collective duct.",
  ],
});
