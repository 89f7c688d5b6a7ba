import type { Source } from "../formulas";
import type { Edition, RoomKind, RoomRule } from "./edition";

const source = (clause: string): Source => ({ work: "HUD 24 CFR 3280", clause, mark: "read" });

const room = (kind: RoomKind, cfm: number): RoomRule => ({
  room: kind,
  duty: "on demand",
  rate: { ip: cfm },
  source: source("3280.103, kitchens and bathrooms"),
});

export const hud3280: Edition = {
  id: "HUD-3280",
  title: "HUD manufactured homes, 24 CFR 3280.103",
  aliases: ["24 CFR 3280", "24 CFR 3280.103", "HUD 3280"],
  systems: ["ip"],
  rooms: [room("bathroom", 50), room("kitchen hood", 100), room("kitchen", 100)],
  dwelling: [
    {
      method: "bounded",
      system: "ip",
      areaRate: 0.035,
      least: 50,
      most: 90,
      source: source("3280.103, whole-house ventilation"),
    },
  ],
  notes: [
    "The rate has an upper limit too, and bedrooms do not count.",
    "The 0.25 air changes an hour that the code takes for natural are outside this rate.",
  ],
};
