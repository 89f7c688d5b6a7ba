import { sourcesIn } from "../documents";
import { type Edition, edition } from "../edition";
import { roomTable } from "../room";

function imc(year: 2021 | 2024): Edition {
  const work = `IMC ${year}`;
  const traced = (clause: string) =>
    year === 2024 ? sourcesIn(work)(clause, "read", "imc2024") : sourcesIn(work)(clause);
  return edition(`IMC-${year}`, `International Mechanical Code ${year}`, "ip", {
    aliases: [work, ...(year === 2021 ? ["IMC"] : [])],
    rooms: roomTable({ system: "ip", is: "capacity" }, () => traced("403.3.2.3"), [
      ["bathroom", 50, 20],
      ["toilet", 50, 20],
      ["kitchen hood", 100, 25],
      ["kitchen", 100, 25],
    ]),
    dwelling: [
      {
        method: "equation",
        areaRate: { ip: 0.01 },
        personRate: { ip: 7.5 },
        leastBedrooms: 1,
        leastSource: sourcesIn(work)("403.3.2.1, no fewer than one bedroom"),
        source: traced("403.3.2.1, eq. 4-9"),
      },
    ],
    cycle: {
      averageHours: 4,
      leastShare: 0.25,
      source: traced("403.3.2.1, at least 1 hour in every 4"),
    },
    balanced: { reduction: 0.3, source: traced("403.3.2, exception") },
    notes: [
      "Dwellings of groups R-2, R-3 and R-4 of three storeys at most.",
      "The reduction asks for ducts to every bedroom and to living, dining and kitchen rooms.",
    ],
  });
}

export const internationalMechanical: readonly Edition[] = ([2021, 2024] as const).map(imc);
