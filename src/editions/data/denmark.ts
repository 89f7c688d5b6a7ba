import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { roomTable } from "../room";
import { byArea } from "./by-area";

const source = sourcesIn("BR18");

export const denmark = edition("DK-BR18", "Denmark, BR18", "si", {
  aliases: ["BR18", "Denmark"],
  rooms: roomTable({ system: "si", is: "delivered" }, () => source("extract rates"), [
    ["kitchen hood", null, 20],
    ["kitchen", null, 20],
    ["bathroom", null, 15],
    ["toilet", null, 10],
    ["utility", null, 10],
  ]),
  dwelling: [byArea(0.3, source("0.3 L/s for each m²"))],
  notes: ["A hood catches 75 % of the smoke at least (from memory)."],
});
