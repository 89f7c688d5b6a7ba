import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { type Condition, type RoomRule, roomTable } from "../room";
import { byArea } from "./by-area";

const source = sourcesIn("BBR");

const rates = source("extract rates (doubtful)");
const bath = (si: number, when?: Condition): RoomRule => ({
  ...{ room: "bathroom", duty: "continuous", rate: { si }, is: "delivered", source: rates },
  ...(when && { when }),
});

export const sweden = edition("SE-BBR", "Sweden, BBR", "si", {
  aliases: ["BBR", "Sweden"],
  rooms: [
    bath(15, { window: "none" }),
    bath(10),
    ...roomTable({ system: "si", is: "delivered" }, () => rates, [
      ["kitchen hood", null, 10],
      ["kitchen", null, 10],
      ["toilet", null, 10],
      ["utility", null, 10],
    ]),
  ],
  dwelling: [byArea(0.35, source("0.35 L/s for each m²"))],
  notes: ["A hood also catches 75 % of the smoke (from memory)."],
});
