import { sourcesIn } from "../documents";
import { type Edition, edition } from "../edition";
import { roomTable } from "../room";

/** Principal fan by bedrooms 1 to 5, least and most; beyond that CSA F326. */
function nbc(year: 2015 | 2020): Edition {
  const source = sourcesIn(`NBC ${year}`);
  return edition(`NBC-${year}`, `National Building Code of Canada ${year}, 9.32`, "si", {
    aliases: [`NBC ${year}`, ...(year === 2020 ? ["NBC", "Canada"] : [])],
    rooms: roomTable(
      { system: "si", is: "capacity", note: "not needed where the principal fan draws there" },
      () => source("9.32.3.7", "from memory", "nrc"),
      [
        ["kitchen hood", 50, null],
        ["kitchen", 50, null],
        ["bathroom", 25, null],
        ["toilet", 25, null],
      ],
    ),
    dwelling: [
      {
        method: "larger",
        system: "si",
        areaRate: 0,
        leastBedrooms: 1,
        byBedrooms: [16, 18, 22, 26, 30],
        mostByBedrooms: [24, 28, 32, 38, 45],
        source: source("9.32.3.3, principal fan"),
        areaSource: source("9.32.3.3"),
      },
    ],
    notes: [
      "The principal fan's normal rate is a band: too much fails too. More than 5 bedrooms: CSA F326.",
    ],
  });
}

export const nationalBuilding: readonly Edition[] = [
  nbc(2015),
  nbc(2020),
  edition("CSA-F326", "CSA F326, residential mechanical ventilation", "si", {
    aliases: ["F326"],
    rooms: roomTable({ system: "si", is: "capacity" }, () => sourcesIn("CSA F326")("exhaust"), [
      ["kitchen hood", 50, 30],
      ["kitchen", 50, 30],
      ["bathroom", 25, 15],
    ]),
    notes: ["Base rate: 10 L/s for the main bedroom, 5 for each other room (from memory)."],
  }),
];
