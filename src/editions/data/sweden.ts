import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { roomTable } from "../room";
import { byArea } from "./by-area";

const source = sourcesIn("BBR");

const rates = source("extract rates (doubtful)");

export const sweden = edition("SE-BBR", "Sweden, BBR", "si", {
  aliases: ["BBR", "Sweden"],
  rooms: [
    ...roomTable({ system: "si", is: "delivered", when: { window: "none" } }, () => rates, [
      ["bathroom", null, 15],
    ]),
    ...roomTable({ system: "si", is: "delivered" }, () => rates, [
      ["bathroom", null, 10],
      ["kitchen hood", null, 10],
      ["kitchen", null, 10],
      ["toilet", null, 10],
      ["utility", null, 10],
    ]),
  ],
  dwelling: [byArea(0.35, source("0.35 L/s for each m²"))],
  notes: ["A hood also catches 75 % of the smoke (from memory)."],
});
