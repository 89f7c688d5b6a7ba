import type { Mark, Source } from "../formulas";
import { creditOf, cycleOf, deficitsOf, furtherPerson, infiltrationOf } from "./ashrae-credits";
import type { Edition, EquationRule, RoomRule, TableRule } from "./edition";

const source = (edition: string, clause: string, mark: Mark): Source => ({
  work: `ASHRAE 62.2-${edition}`,
  clause,
  mark,
});

/** Bath and hood rates, the same in IP in every edition since 2003; SI rounded apart. */
function rooms(edition: string, table: { demand: string; continuous: string }): RoomRule[] {
  return [
    {
      room: "bathroom",
      duty: "on demand",
      rate: { ip: 50, si: 25 },
      source: source(edition, table.demand, "two sources"),
    },
    {
      room: "bathroom",
      duty: "continuous",
      rate: { ip: 20, si: 10 },
      source: source(edition, table.continuous, "two sources"),
    },
    {
      room: "kitchen hood",
      duty: "on demand",
      rate: { ip: 100, si: 50 },
      source: source(edition, table.demand, "two sources"),
    },
    {
      room: "kitchen hood",
      duty: "continuous",
      airChanges: 5,
      note: "of the kitchen's own volume",
      source: source(edition, table.continuous, "read"),
    },
    {
      room: "kitchen",
      duty: "continuous",
      airChanges: 5,
      note: "of the kitchen's own volume",
      source: source(edition, table.continuous, "read"),
    },
  ];
}

const equation2010: EquationRule = {
  method: "equation",
  areaRate: { ip: 0.01, si: 0.05 },
  personRate: { ip: 7.5, si: 3.5 },
  leastBedrooms: 1,
  furtherPerson: furtherPerson("2010"),
  source: source("2010", "4.1, eq. 4.1a (IP: two sources; SI: from memory)", "from memory"),
};

export const ashrae2010: Edition = {
  id: "62.2-2010",
  title: "ASHRAE 62.2-2010",
  aliases: ["62.2 2010"],
  systems: ["ip", "si"],
  rooms: [
    ...rooms("2010", { demand: "table 5.1", continuous: "table 5.2" }),
    {
      room: "kitchen",
      duty: "on demand",
      rate: { ip: 100, si: 50 },
      note: "a vented hood is asked for where the exhaust is below 5 air changes an hour",
      source: source("2010", "table 5.1", "from memory"),
    },
  ],
  dwelling: [equation2010],
  infiltration: infiltrationOf("2010"),
  credit: creditOf("2010"),
  cycle: cycleOf("2010"),
  deficits: deficitsOf("2010"),
  notes: [
    "The default infiltration of 2 cfm for each 100 ft² is already inside the rate.",
    "A toilet room without a bath or shower has no local rate.",
  ],
};

function later(year: "2013" | "2016" | "2019" | "2022"): Edition {
  const equation: EquationRule = {
    method: "equation",
    areaRate: { ip: 0.03, si: 0.15 },
    personRate: { ip: 7.5, si: 3.5 },
    leastBedrooms: 1,
    furtherPerson: furtherPerson(year),
    source: source(year, "4.1.1, eq. 4.1a (IP: read; SI eq. 4.1b: from memory)", "from memory"),
  };
  const table: TableRule = {
    method: "table",
    system: "ip",
    areas: [500, 1000, 1500, 2000, 2500, 3000, 3500, 4000, 4500],
    bedrooms: [1, 2, 3, 4, 5],
    leastBedrooms: 1,
    cells: [
      [30, 38, 45, 53, 60],
      [45, 53, 60, 68, 75],
      [60, 68, 75, 83, 90],
      [75, 83, 90, 98, 105],
      [90, 98, 105, 113, 120],
      [105, 113, 120, 128, 135],
      [120, 128, 135, 143, 150],
      [135, 143, 150, 158, 165],
      [150, 158, 165, 173, 180],
    ],
    source: source(year, "table 4.1a", "two sources"),
  };
  const metricTable: TableRule = {
    method: "table",
    system: "si",
    areas: [47, 93, 139, 186],
    bedrooms: [1, 2, 3, 4, 5],
    leastBedrooms: 1,
    cells: [
      [14, 18, 21, 25, 28],
      [21, 24, 28, 31, 35],
      [28, 31, 35, 38, 42],
      [35, 38, 42, 45, 49],
    ],
    source: source(year, "table 4.1b, first four rows", "from memory"),
  };
  return {
    id: `62.2-${year}`,
    title: `ASHRAE 62.2-${year}`,
    aliases: [`62.2 ${year}`],
    systems: ["ip", "si"],
    rooms: [
      ...rooms(year, { demand: "table 5.1", continuous: "table 5.2" }),
      {
        room: "kitchen",
        duty: "on demand",
        rate: { ip: 300, si: 150 },
        airChanges: 5,
        note: "5 air changes an hour may stand instead in an enclosed kitchen",
        source: source(year, "table 5.1", "from memory"),
      },
    ],
    dwelling: [equation, table, metricTable],
    infiltration: infiltrationOf(year),
    credit: creditOf(year),
    cycle: cycleOf(year),
    deficits: deficitsOf(year),
    notes: [
      "The rate before any infiltration credit.",
      "Equation and table both count; the equation at the true area is never more than the table.",
      "A toilet room without a bath or shower has no local rate.",
    ],
  };
}

export const ashrae2013 = later("2013");
export const ashrae2016 = later("2016");
export const ashrae2019 = later("2019");
export const ashrae2022 = later("2022");
