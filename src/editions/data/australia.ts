import { sourcesIn } from "../documents";
import { type Edition, edition } from "../edition";
import { roomTable } from "../room";

function ncc(year: 2019 | 2022): Edition {
  const work = `NCC ${year}`;
  const source =
    year === 2019
      ? sourcesIn(work)("3.8.7.3", "read", "ncc2019")
      : sourcesIn(work)("Housing Provisions 10.8.2");
  return edition(`NCC-${year}`, `Australian National Construction Code ${year}`, "si", {
    aliases: [work, ...(year === 2022 ? ["Australia"] : [])],
    rooms: roomTable({ system: "si", is: "capacity" }, () => source, [
      ["kitchen hood", 40, null],
      ["kitchen", 40, null],
      ["utility", 40, null],
      ["bathroom", 25, null],
      ["toilet", 25, null],
    ]),
  });
}

export const australian: readonly Edition[] = [ncc(2019), ncc(2022)];
