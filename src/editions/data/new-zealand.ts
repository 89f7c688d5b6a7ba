import { sourcesIn } from "../documents";
import { type Edition, edition } from "../edition";
import type { RoomRule } from "../room";
import { roomTable } from "../room";

const acceptable = sourcesIn("NZ Building Code G4/AS1");
const healthy = sourcesIn("Healthy Homes ventilation standard 2019");

const inToilets: RoomRule = {
  room: "toilet",
  duty: "on demand",
  rate: { si: 25 },
  when: { window: "none" },
  is: "capacity",
  source: acceptable("extract rates"),
};

export const newZealand: readonly Edition[] = [
  edition("NZ-G4", "New Zealand Building Code G4/AS1", "si", {
    aliases: ["G4/AS1", "New Zealand"],
    rooms: [
      ...roomTable({ system: "si", is: "capacity" }, () => acceptable("extract rates"), [
        ["kitchen hood", 50, null],
        ["kitchen", 50, null],
        ["bathroom", 25, null],
      ]),
      inToilets,
    ],
  }),
  edition("NZ-HEALTHY-HOMES", "New Zealand Healthy Homes ventilation standard 2019", "si", {
    aliases: ["Healthy Homes"],
    rooms: roomTable(
      { system: "si", is: "capacity", note: "a duct of 150 mm (bath: 120 mm) may stand instead" },
      (_, room) =>
        room === "bathroom"
          ? healthy("fans installed from July 2019 on")
          : healthy("fans installed from July 2019 on", "read", "healthyHomes"),
      [
        ["kitchen hood", 50, null],
        ["kitchen", 50, null],
        ["bathroom", 25, null],
      ],
    ),
  }),
];
