import { sourcesIn } from "../documents";
import { type Edition, edition } from "../edition";
import { roomTable } from "../room";

function ontario(year: 2012 | 2024): Edition {
  const source = sourcesIn(`Ontario Building Code ${year}`);
  return edition(`OBC-${year}`, `Ontario Building Code ${year}, 9.32`, "si", {
    aliases: [`OBC ${year}`, `Ontario ${year}`, ...(year === 2024 ? ["Ontario"] : [])],
    rooms: roomTable({ system: "si", is: "capacity" }, () => source("9.32.3 (doubtful)"), [
      ["kitchen hood", 50, null],
      ["kitchen", 50, null],
      ["bathroom", 25, null],
      ["toilet", 25, null],
    ]),
    dwelling: [
      {
        method: "larger",
        system: "si",
        areaRate: 0,
        leastBedrooms: 1,
        byBedrooms: [15, 22.5, 30, 37.5],
        source: source("9.32.3, principal exhaust (doubtful)"),
        areaSource: source("9.32.3"),
      },
    ],
    notes: [
      "Total capacity: 10 L/s for the main bedroom and a basement, 5 for each other room (from memory); five bedrooms or more: CSA F326.",
    ],
  });
}

export const ontarian: readonly Edition[] = [ontario(2012), ontario(2024)];
