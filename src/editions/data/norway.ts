import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { byArea } from "./by-area";
import { perHour, roomsPerHour } from "./per-hour";

const source = sourcesIn("TEK17");

export const norway = edition("TEK17", "Norway, TEK17 § 13-2", "si", {
  aliases: ["Norway"],
  rooms: roomsPerHour(source("§ 13-2, guidance, extract rates"), [
    ["kitchen hood", "on demand", 108],
    ["kitchen hood", "continuous", 36],
    ["kitchen", "on demand", 108],
    ["kitchen", "continuous", 36],
    ["bathroom", "on demand", 108],
    ["bathroom", "continuous", 54],
    ["toilet", "on demand", 36],
    ["toilet", "continuous", 36],
    ["utility", "on demand", 72],
    ["utility", "continuous", 36],
  ]),
  dwelling: [byArea(perHour(1.2), source("§ 13-2, 1.2 m³/h for each m²", "read", "tek17"))],
  notes: ["Bedrooms have 26 m³/h of supply for each bed; empty rooms 0.7 m³/h for each m² (read)."],
});
