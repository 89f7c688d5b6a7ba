import { sourcesIn } from "../documents";
import { type Edition, edition } from "../edition";
import { roomTable } from "../room";

function bc(year: 2018 | 2024): Edition {
  const source = sourcesIn(`BC Building Code ${year}`);
  return edition(`BCBC-${year}`, `British Columbia Building Code ${year}, 9.32`, "si", {
    aliases: [`BC ${year}`, `British Columbia ${year}`, ...(year === 2024 ? ["BC"] : [])],
    rooms: roomTable({ system: "si", is: "capacity" }, () => source("9.32.3.6 (doubtful)"), [
      ["kitchen hood", 47, null],
      ["kitchen", 47, null],
      ["bathroom", 23, 9],
    ]),
    dwelling: [
      {
        method: "table",
        system: "si",
        areas: [140],
        bedrooms: [1, 2, 3, 4, 5],
        leastBedrooms: 1,
        cells: [[14, 21, 28, 35, 42]],
        source: source("9.32.3.5, first row, up to 140 m² (doubtful)"),
      },
    ],
    notes: [
      "The rate rises by 7 L/s with each further band of floor area; the bands are not held here.",
    ],
  });
}

export const britishColumbian: readonly Edition[] = [bc(2018), bc(2024)];
