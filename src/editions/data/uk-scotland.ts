import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { extracts } from "./uk-adf";

const source = sourcesIn("Scottish domestic handbook 3.14");

export const scotland = edition("SCOTLAND-3.14", "Scottish domestic handbook, clause 3.14", "si", {
  aliases: ["Scotland"],
  rooms: [
    ...extracts(
      (duty) =>
        source(duty === "continuous" ? "continuous extract (doubtful)" : "intermittent extract"),
      [
        ["kitchen hood", 30, 13],
        ["kitchen", 60, 13],
        ["utility", 30, 8],
        ["bathroom", 15, 8],
        ["toilet", null, 6],
      ],
    ),
    {
      room: "toilet",
      duty: "on demand",
      airChanges: 3,
      is: "delivered",
      note: "of the room's own volume",
      source: source("intermittent extract"),
    },
  ],
});
