import type { Source } from "../../formulas";
import { sourcesIn } from "../documents";
import type { LargerRule } from "../dwelling";
import { type Edition, edition } from "../edition";
import { type RoomRow, type RoomRule, roomTable } from "../room";

/** Extract rates of rooms in England, L/s: the same in 2010 and 2021, in Wales and Ireland. */
export const extractRates: readonly RoomRow[] = [
  ["kitchen hood", 30, 13],
  ["kitchen", 60, 13],
  ["utility", 30, 8],
  ["bathroom", 15, 8],
  ["toilet", 6, 6],
];

export const extracts = (
  source: (duty: RoomRule["duty"]) => Source,
  rows = extractRates,
): RoomRule[] => roomTable({ system: "si", is: "delivered" }, source, rows);

type ByBedrooms = Pick<LargerRule, "leastBedrooms" | "byBedrooms" | "eachFurther">;
const dwelling2021 = { leastBedrooms: 0, byBedrooms: [13, 19, 25, 31, 37, 43], eachFurther: 6 };

function adf(
  id: string,
  work: string,
  aliases: readonly string[],
  clauses: Readonly<Record<"demand" | "continuous" | "dwelling" | "area", string>>,
  byBedrooms: ByBedrooms,
): Edition {
  const source = sourcesIn(work);
  return edition(id, `UK ${work}, dwellings`, "si", {
    aliases,
    rooms: extracts((duty) =>
      duty === "continuous"
        ? source(clauses.continuous, "from memory", "ukCourse")
        : source(clauses.demand, "from memory", "ukExam"),
    ),
    dwelling: [
      {
        method: "larger",
        system: "si",
        areaRate: 0.3,
        ...byBedrooms,
        source: source(clauses.dwelling),
        areaSource: source(clauses.area, "from memory", "ukCourse"),
      },
    ],
    notes: ["The larger of the area rate and the bedroom rate counts."],
  });
}

const tables = {
  demand: "table 1.1",
  continuous: "table 1.2",
  dwelling: "table 1.3",
  area: "1.24",
};

export const approvedDocumentF: readonly Edition[] = [
  adf(
    "ADF-2010",
    "Approved Document F 2010 (England)",
    ["ADF 2010", "Approved Document F 2010", "UK Approved Document F 2010, dwellings"],
    {
      demand: "table of intermittent extract rates",
      continuous: "table of continuous extract rates",
      dwelling: "table of whole-dwelling rates",
      area: "table of whole-dwelling rates, note",
    },
    { leastBedrooms: 1, byBedrooms: [13, 17, 21, 25, 29], eachFurther: 4 },
  ),
  adf(
    "ADF-2021",
    "Approved Document F, volume 1, 2021 (England)",
    ["ADF 2021", "Approved Document F 2021", "UK Approved Document F 2021, dwellings"],
    tables,
    dwelling2021,
  ),
  adf(
    "ADF-WALES-2022",
    "Approved Document F, volume 1, 2022 (Wales)",
    ["Wales 2022"],
    tables,
    dwelling2021,
  ),
];
