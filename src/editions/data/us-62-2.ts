import type { Mark } from "../../formulas";
import { type DocumentId, sourcesIn } from "../documents";
import type { EquationRule, TableRule } from "../dwelling";
import { type Edition, edition } from "../edition";
import type { SoundLimit } from "../equipment";
import type { RoomKind, RoomRule } from "../room";
import { credits, type Year } from "./us-62-2-credits";

/** The guides that give room rates and sound limits date from the editions of 2010 to 2016. */
const ofGuides = (year: number): Mark => (year <= 2016 ? "two sources" : "from memory");

/** Rates of rooms: baths and hoods the same in every edition, SI rounded apart from IP. */
function rooms(year: Year | 2025): RoomRule[] {
  const source = sourcesIn(`ASHRAE 62.2-${year}`);
  const early = year === 2010;
  const rated = (clause: string, ...documents: DocumentId[]) =>
    source(clause, ofGuides(year), ...(year <= 2016 ? documents : []));
  const demand = early
    ? rated("table 5.1", "leed")
    : rated("table 5.1", "ashraeJournal", "construction");
  const continuous = rated("table 5.2", "lbl", "construction");
  const bath = year === 2025 ? (["bathroom", "toilet"] as const) : (["bathroom"] as const);
  const changed = (room: RoomKind): RoomRule => ({
    room,
    duty: "continuous",
    airChanges: 5,
    ...(early ? {} : { enclosedOnly: true }),
    is: "delivered",
    note: "of the kitchen's own volume",
    source: continuous,
  });
  return [
    ...bath.flatMap((room): RoomRule[] => [
      { room, duty: "on demand", rate: { ip: 50, si: 25 }, is: "delivered", source: demand },
      { room, duty: "continuous", rate: { ip: 20, si: 10 }, is: "delivered", source: continuous },
    ]),
    {
      room: "kitchen hood",
      duty: "on demand",
      rate: { ip: 100, si: 50 },
      is: "delivered",
      source: demand,
    },
    changed("kitchen hood"),
    changed("kitchen"),
    early
      ? {
          room: "kitchen",
          duty: "on demand",
          rate: { ip: 100, si: 50 },
          is: "delivered",
          note: "a vented hood is asked for where the exhaust is below 5 air changes an hour",
          source: demand,
        }
      : {
          room: "kitchen",
          duty: "on demand",
          rate: { ip: 300, si: 150 },
          airChanges: 5,
          enclosedOnly: true,
          is: "delivered",
          note: "5 air changes an hour may stand instead in an enclosed kitchen: one with openings of 60 ft² (6 m²) at most to other rooms",
          source: source("table 5.1", "from memory", "yesKitchen"),
        },
  ];
}

function sound(year: Year): SoundLimit {
  const source = sourcesIn(`ASHRAE 62.2-${year}`);
  const guides: readonly DocumentId[] = year <= 2016 ? ["lbl", "basc"] : [];
  return {
    limits: { "on demand": 3, continuous: 1 },
    exemptAbove: { ip: 400, si: 190 },
    exemptSource: source("7.2, fans above that flow"),
    remoteDuct: { ip: 4 },
    source: source("7.2, as guides give it", ofGuides(year), ...guides),
  };
}

/** One in each system: each has been traced apart. */
function equations(year: Year): EquationRule[] {
  const source = sourcesIn(`ASHRAE 62.2-${year}`);
  const persons = source("4.1, persons above bedrooms + 1");
  const ip = {
    2010: source("4.1, eq. 4.1a", "two sources", "imc2024", "construction"),
    2016: source("4.1.1, eq. 4.1a", "read", "upc2021"),
  };
  const area = year === 2010 ? { ip: 0.01, si: 0.05 } : { ip: 0.03, si: 0.15 };
  const shared = { method: "equation", leastBedrooms: 1 } as const;
  return [
    {
      ...shared,
      areaRate: { ip: area.ip },
      personRate: { ip: 7.5 },
      furtherPerson: { each: { ip: 7.5 }, source: persons },
      source: ip[year as keyof typeof ip] ?? source("4.1.1, eq. 4.1a"),
    },
    {
      ...shared,
      areaRate: { si: area.si },
      personRate: { si: 3.5 },
      furtherPerson: { each: { si: 3.5 }, source: persons },
      source: source(year === 2010 ? "4.1, eq. 4.1b" : "4.1.1, eq. 4.1b"),
    },
  ];
}

function tables(year: Year): TableRule[] {
  const source = sourcesIn(`ASHRAE 62.2-${year}`);
  const shared = { method: "table", bedrooms: [1, 2, 3, 4, 5], leastBedrooms: 1 } as const;
  return [
    {
      ...shared,
      system: "ip",
      areas: [500, 1000, 1500, 2000, 2500, 3000, 3500, 4000, 4500],
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
      source: year === 2016 ? source("table 4.1a", "two sources", "upc2021") : source("table 4.1a"),
    },
    {
      ...shared,
      system: "si",
      areas: [47, 93, 139, 186],
      cells: [
        [14, 18, 21, 25, 28],
        [21, 24, 28, 31, 35],
        [28, 31, 35, 38, 42],
        [35, 38, 42, 45, 49],
      ],
      source: source("table 4.1b, first four rows"),
    },
  ];
}

const named = (year: number) => ({
  id: `62.2-${year}`,
  title: `ASHRAE 62.2-${year}`,
  aliases: [`62.2 ${year}`],
  systems: ["ip", "si"] as const,
});

const toilets = "A toilet room without a bath or shower has no local rate (from memory).";

const whole = (year: Year, ...notes: string[]): Edition => ({
  ...named(year),
  rooms: rooms(year),
  dwelling: [...equations(year), ...(year === 2010 ? [] : tables(year))],
  ...credits(year),
  sound: sound(year),
  notes: [...notes, toilets],
});

const before = "The rate before any infiltration credit.";
const both =
  "Equation and table both count; the equation at the true area is never more than the table.";

export const ashrae: readonly Edition[] = [
  whole(2010, "The default infiltration of 2 cfm for each 100 ft² is already inside the rate."),
  whole(2013, before, both),
  whole(2016, before, both),
  whole(2019, before, both),
  whole(2022, before, both),
  edition("62.2-2025", "ASHRAE 62.2-2025, local exhaust only", "ip", {
    ...named(2025),
    rooms: rooms(2025),
    notes: ["Known from memory only: the rate of the whole dwelling is not held here."],
  }),
];
