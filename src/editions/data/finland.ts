import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { roomTable } from "../room";
import { byArea } from "./by-area";

const source = sourcesIn("Finnish guide to decree 1009/2017");

export const finland = edition("FI-1009-2017", "Finland, guide to decree 1009/2017", "si", {
  aliases: ["1009/2017", "Finland"],
  rooms: roomTable({ system: "si", is: "delivered" }, () => source("extract rates"), [
    ["kitchen hood", 25, 8],
    ["kitchen", 25, 8],
    ["bathroom", 15, 10],
    ["toilet", 10, 7],
    ["utility", 15, 8],
  ]),
  dwelling: [byArea(0.35, source("0.35 L/s for each m²"))],
  notes: ["The whole can be raised by 30 % (from memory)."],
});
