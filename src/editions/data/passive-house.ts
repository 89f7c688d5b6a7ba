import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { perHour, roomsPerHour } from "./per-hour";

const source = sourcesIn("Passive House planning rules");
const read = (clause: string) => source(clause, "read", "passiveHouse");

export const passiveHouse = edition("PASSIVE-HOUSE", "Passive House, design flows", "si", {
  aliases: ["Passive House", "Passivhaus", "PHI"],
  rooms: roomsPerHour(read("extract rates"), [
    ["kitchen hood", "continuous", 60],
    ["kitchen", "continuous", 60],
    ["bathroom", "continuous", 40],
    ["toilet", "continuous", 20],
    ["utility", "continuous", 20],
  ]),
  dwelling: [
    {
      method: "larger",
      system: "si",
      // 0.30 air changes an hour of rooms 2.5 m high.
      areaRate: perHour(0.3 * 2.5),
      leastBedrooms: 0,
      byBedrooms: [perHour(30)],
      eachFurther: perHour(30),
      byPersons: true,
      source: read("30 m³/h for each person, bedrooms + 1 taken"),
      areaSource: read("0.30 air changes an hour at a height of 2.5 m"),
    },
  ],
  balance: {
    of: "supply",
    within: 0.1,
    source: source("supply and extract within 10 % of each other"),
  },
  notes: [
    "The design flow is also no less than the sum of the extract rates; standard operation has 77 % of it.",
    "A room with a shower only has 20 m³/h.",
  ],
});
