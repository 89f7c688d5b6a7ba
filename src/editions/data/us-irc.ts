import { type DocumentId, sourcesIn } from "../documents";
import type { DwellingRule } from "../dwelling";
import { type Edition, edition } from "../edition";
import type { BalanceLimit } from "../equipment";
import { type RoomRow, type RoomRule, roomTable } from "../room";
import { irc as ducts } from "./us-ducts";

export type Year = 2012 | 2015 | 2018 | 2021 | 2024;

const clauses = {
  2012: { rooms: "table M1507.4", whole: "M1507.3.3", makeup: "M1503.4", ducts: "M1506.2" },
  2015: { rooms: "table M1507.4", whole: "M1507.3.3", makeup: "M1503.4", ducts: "M1506.2" },
  2018: { rooms: "table M1505.4.4", whole: "M1505.4.3", makeup: "M1503.6", ducts: "M1504.2" },
  2021: { rooms: "table M1505.4.4", whole: "M1505.4.3", makeup: "M1503.6", ducts: "M1504.2" },
  2024: { rooms: "table M1505.5", whole: "M1505.4.3", makeup: "M1503.6", ducts: "M1504.2" },
} as const;

/** How the code of a year, or a state's amendment of it, was traced. */
function tracing(year: Year, work = `IRC ${year}`, document?: DocumentId) {
  const source = sourcesIn(work);
  const own = document ?? (year === 2012 ? undefined : (`irc${year}` as const));
  return {
    source,
    read: (clause: string) => (own ? source(clause, "read", own) : source(clause)),
  };
}

const rates: readonly RoomRow[] = [
  ["bathroom", 50, 20],
  ["toilet", 50, 20],
  ["kitchen hood", 100, 25],
  ["kitchen", 100, 25],
];

/** A fan of a bath or toilet room is listed at its rate at 0.25 in w.c. */
export const listedAtQuarterInch = (rules: readonly RoomRule[]): RoomRule[] =>
  rules.map((rule) => (rule.room.startsWith("kitchen") ? rule : { ...rule, listedAt: 0.25 }));

function ircRooms(year: Year, work?: string, document?: DocumentId, as = year): RoomRule[] {
  const source = tracing(year, work, document).read(clauses[as].rooms);
  return roomTable({ system: "ip", is: "capacity" }, () => source, rates);
}

export function ircDwelling(
  year: Year,
  work?: string,
  document?: DocumentId,
  as = year,
): DwellingRule[] {
  const { read } = tracing(year, work, document);
  const { whole } = clauses[as];
  const table: DwellingRule = {
    method: "table",
    system: "ip",
    areas: [1500, 3000, 4500, 6000, 7500, Number.POSITIVE_INFINITY],
    bedrooms: [1, 3, 5, 7, Number.POSITIVE_INFINITY],
    leastBedrooms: 0,
    cells: [
      [30, 45, 60, 75, 90],
      [45, 60, 75, 90, 105],
      [60, 75, 90, 105, 120],
      [75, 90, 105, 120, 135],
      [90, 105, 120, 135, 150],
      [105, 120, 135, 150, 165],
    ],
    source: read(`${whole}, table ${whole}(1)`),
  };
  if (year < 2018) return [table];
  const equation: DwellingRule = {
    method: "equation",
    areaRate: { ip: 0.01 },
    personRate: { ip: 7.5 },
    leastBedrooms: 0,
    source: read(`${whole}, eq. 15-1`),
  };
  return [table, equation];
}

export function ircRunTime(year: Year, work?: string, document?: DocumentId, as = year) {
  const { read } = tracing(year, work, document);
  return {
    segmentHours: 4,
    rows: [
      [0.25, 4],
      [0.33, 3],
      [0.5, 2],
      [0.66, 1.5],
      [0.75, 1.3],
      [1, 1],
    ],
    source: read(`${clauses[as].whole}, table ${clauses[as].whole}(2)`),
  } as const;
}

export const ircBalanced = (year: Year, work?: string, document?: DocumentId) => ({
  reduction: 0.3,
  source: tracing(year, work, document).read("M1505.4.3, exception 1"),
});

/** What a state keeps of the code that it adopts, in the clauses of the year `as`. */
export const adoptedIrc = (year: Year, work: string, document: DocumentId, as = year) => ({
  rooms: ircRooms(year, work, document, as),
  dwelling: ircDwelling(year, work, document, as),
  runTime: ircRunTime(year, work, document, as),
});

/** The 2021 edition has two definitions; this one lets about twice as much through as the other. */
function balance(year: Year): BalanceLimit {
  const { read } = tracing(year);
  if (year !== 2021) return { of: "sum", within: 0.1, source: read("R202") };
  const also = { of: "supply", within: 0.1, source: read('R202, "balanced ventilation"') } as const;
  return { of: "sum", within: 0.1, also, source: read('R202, "balanced ventilation system"') };
}

/** A state's own definition of balanced ventilation: within a tenth of the supply, or of the two's average. */
export const adoptedBalance = (
  work: string,
  document: DocumentId,
  of: BalanceLimit["of"] = "sum",
): BalanceLimit => ({ of, within: 0.1, source: sourcesIn(work)("R202", "read", document) });

function irc(year: Year): Edition {
  const { read } = tracing(year);
  const withAppliance = year >= 2018;
  return edition(`IRC-${year}`, `International Residential Code ${year}`, "ip", {
    aliases: [
      `IRC ${year}`,
      `IRC ${year} ${year < 2018 ? "M1507" : "M1505"}`,
      `International Residential Code ${year}, ${year < 2018 ? "M1507" : "M1505"}`,
    ],
    rooms: year >= 2021 ? listedAtQuarterInch(ircRooms(year)) : ircRooms(year),
    dwelling: ircDwelling(year),
    runTime: ircRunTime(year),
    ...(year >= 2021 ? { balanced: ircBalanced(year), balance: balance(year) } : {}),
    ...(year >= 2015
      ? {
          ducts: ducts(`IRC ${year}`, clauses[year].ducts, `irc${year}` as DocumentId),
          makeupAir: {
            above: { ip: 400, si: 190 },
            onlyWithAppliance: withAppliance,
            source: read(`${clauses[year].makeup}${withAppliance ? "" : ", exhaust hoods"}`),
          },
        }
      : {}),
    notes: [
      "The column above 7 bedrooms is the equation at 9 bedrooms, not at 8.",
      "A room's own exhaust is asked for only where no window that opens serves it.",
      ...(year >= 2021
        ? [
            "A balanced system ducted to every bedroom and a living, dining or kitchen room takes 30 % off; the rate here is the one before it.",
          ]
        : []),
    ],
  });
}

export const internationalResidential: readonly Edition[] = (
  [2012, 2015, 2018, 2021, 2024] as const
).map(irc);
