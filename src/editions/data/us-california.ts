import { sourcesIn } from "../documents";
import { type Edition, edition } from "../edition";
import type { Condition, RoomRule } from "../room";

/** Below 750 ft² (of whole ft²), then to each edge: floor area, then cfm and capture of hoods over fuel and over electric cooking. */
const hoods = [
  [{ floorTo: 749 }, 280, 85, 160, 65],
  [{ floorAbove: 749, floorTo: 1000 }, 280, 85, 130, 55],
  [{ floorAbove: 1000, floorTo: 1500 }, 250, 80, 110, 50],
  [{ floorAbove: 1500 }, 180, 70, 110, 50],
] as const;

function california(year: 2022 | 2025, adopted: string): Edition {
  const work = `California Title 24, part 6, ${year}`;
  const source = sourcesIn(work);
  const hood = (when: Condition, ip: number, captures: number): RoomRule => ({
    room: "kitchen hood",
    duty: "on demand",
    rate: { ip },
    when,
    captures,
    is: "model check",
    note: "checked by the directory's flow or capture efficiency of the model on site, RA3.7.4.3",
    source: source("table 150.0-G", "from memory", "regionalNote"),
  });
  const table = source("table 150.0-E");
  return edition(`CA-${year}`, `${work} (${adopted})`, "ip", {
    aliases: [`California ${year}`, `Title 24 ${year}`, ...(year === 2022 ? ["California"] : [])],
    rooms: [
      { room: "bathroom", duty: "on demand", rate: { ip: 50 }, is: "delivered", source: table },
      { room: "bathroom", duty: "continuous", rate: { ip: 20 }, is: "delivered", source: table },
      ...hoods.map(([floor, fuel, caught]) => hood({ cooking: "fuel", ...floor }, fuel, caught)),
      ...hoods.map(([floor, , , electric, caught]) =>
        hood({ cooking: "electric", ...floor }, electric, caught),
      ),
      {
        room: "kitchen",
        duty: "on demand",
        rate: { ip: 300 },
        airChanges: 5,
        enclosedOnly: true,
        is: "delivered",
        source: source("150.0(o)1G", "two sources", "californiaPages"),
      },
      {
        room: "kitchen",
        duty: "continuous",
        airChanges: 5,
        enclosedOnly: true,
        is: "delivered",
        source: source("150.0(o)1G", "two sources", "californiaPages"),
      },
    ],
    dwelling: [
      {
        method: "equation",
        areaRate: { ip: 0.03 },
        personRate: { ip: 7.5 },
        leastBedrooms: 1,
        source: source("150.0(o)1C"),
      },
    ],
    notes: [
      "The flow meter states ±10 % of the reading or better over the range measured, the gauge ±1 % or ±0.2 Pa, RA3.7.2 (read).",
      ...(year === 2025 ? ["Numbers taken to be those of 2022 (from memory)."] : []),
    ],
  });
}

export const californian: readonly Edition[] = [
  california(2022, "from January 2023"),
  california(2025, "from January 2026"),
];
