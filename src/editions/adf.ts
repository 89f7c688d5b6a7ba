import type { Source } from "../formulas";
import type { Duty, Edition, LargerRule, RoomKind, RoomRule } from "./edition";

type ByBedrooms = Pick<LargerRule, "leastBedrooms" | "byBedrooms" | "eachFurther">;

interface Clauses {
  readonly work: string;
  readonly demand: string;
  readonly continuous: string;
  readonly dwelling: string;
  readonly area: string;
}

/** Room rates are the same in 2010 and 2021; those of the dwelling rose. All from memory. */
function adf(year: number, clauses: Clauses, byBedrooms: ByBedrooms): Edition {
  const source = (clause: string): Source => ({ work: clauses.work, clause, mark: "from memory" });
  const room = (kind: RoomKind, duty: Duty, litresPerSecond: number): RoomRule => ({
    room: kind,
    duty,
    rate: { si: litresPerSecond },
    source: source(duty === "continuous" ? clauses.continuous : clauses.demand),
  });
  return {
    id: `ADF-${year}`,
    title: `UK Approved Document F ${year}, dwellings`,
    aliases: [`ADF ${year}`, `Approved Document F ${year}`],
    systems: ["si"],
    rooms: [
      room("kitchen hood", "on demand", 30),
      room("kitchen hood", "continuous", 13),
      room("kitchen", "on demand", 60),
      room("kitchen", "continuous", 13),
      room("utility", "on demand", 30),
      room("utility", "continuous", 8),
      room("bathroom", "on demand", 15),
      room("bathroom", "continuous", 8),
      room("toilet", "on demand", 6),
      room("toilet", "continuous", 6),
    ],
    dwelling: [
      {
        method: "larger",
        system: "si",
        areaRate: 0.3,
        ...byBedrooms,
        source: source(clauses.dwelling),
        areaSource: source(clauses.area),
      },
    ],
    notes: ["The larger of the area rate and the bedroom rate counts."],
  };
}

export const adf2010 = adf(
  2010,
  {
    work: "Approved Document F, 2010 (England)",
    demand: "table of intermittent extract rates",
    continuous: "table of continuous extract rates",
    dwelling: "table of whole-dwelling rates",
    area: "table of whole-dwelling rates, note",
  },
  { leastBedrooms: 1, byBedrooms: [13, 17, 21, 25, 29], eachFurther: 4 },
);

export const adf2021 = adf(
  2021,
  {
    work: "Approved Document F, volume 1, 2021 (England)",
    demand: "table 1.1",
    continuous: "table 1.2",
    dwelling: "table 1.3",
    area: "1.24",
  },
  { leastBedrooms: 0, byBedrooms: [13, 19, 25, 31, 37, 43], eachFurther: 6 },
);
