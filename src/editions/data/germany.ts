import { sourcesIn } from "../documents";
import { type Edition, edition } from "../edition";
import { roomsPerHour } from "./per-hour";

export const german: readonly Edition[] = [
  edition("DIN-1946-6", "Germany, DIN 1946-6, nominal ventilation", "si", {
    aliases: ["DIN 1946-6"],
    rooms: roomsPerHour(sourcesIn("DIN 1946-6")("extract rates (2019 may have 40 and 20)"), [
      ["kitchen", "continuous", 45],
      ["kitchen hood", "continuous", 45],
      ["bathroom", "continuous", 45],
      ["toilet", "continuous", 25],
      ["utility", "continuous", 25],
    ]),
    notes: ["Reduced operation has 0.7 of the nominal rate, intensive 1.3 (from memory)."],
  }),
  edition("DIN-18017-3", "Germany, DIN 18017-3 (2022), rooms without windows", "si", {
    aliases: ["DIN 18017-3", "Germany"],
    rooms: roomsPerHour(sourcesIn("DIN 18017-3")("extract rates", "from memory", "german"), [
      ["bathroom", "on demand", 60],
      ["bathroom", "continuous", 40],
      ["toilet", "on demand", 30],
      ["toilet", "continuous", 20],
    ]),
    notes: ["A continuous bath may fall to 20 m³/h while the need is low (from memory)."],
  }),
];
