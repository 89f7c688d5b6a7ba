import { sourcesIn } from "../documents";
import { edition } from "../edition";
import { roomTable } from "../room";

const source = sourcesIn("HUD 24 CFR 3280, edition of 2001");
const read = (clause: string) => source(clause, "read", "cfr2001");

export const manufacturedHomes = edition(
  "HUD-3280",
  "HUD manufactured homes, 24 CFR 3280.103",
  "ip",
  {
    aliases: ["24 CFR 3280", "24 CFR 3280.103", "HUD 3280"],
    rooms: roomTable(
      { system: "ip", is: "capacity" },
      (_, room) =>
        room === "toilet"
          ? source("3280.103, toilet compartments; a window of 1.5 ft² may stand instead")
          : read("3280.103, kitchens and bathrooms"),
      [
        ["bathroom", 50, null],
        ["toilet", 50, null],
        ["kitchen hood", 100, null],
        ["kitchen", 100, null],
      ],
    ),
    dwelling: [
      {
        method: "bounded",
        system: "ip",
        areaRate: 0.035,
        least: 50,
        most: 90,
        source: read("3280.103, whole-house ventilation"),
      },
    ],
    notes: [
      "The rate has an upper limit too, and bedrooms do not count.",
      "The 0.25 air changes an hour that the code takes for natural are outside this rate.",
    ],
  },
);
