import { describe, expect, it } from "vitest";
import { balanceRules, type Duty, findEdition, findRule, type RoomKind } from "../../src/editions";
import { dwellingRate, roomRate } from "../../src/job";
import { cellOf } from "../functions/call";

// Whole numbers as printed: no tolerance. What is from memory says so beside its lines.
describe("rates of rooms, on demand and continuous", () => {
  const none = null;
  it.each<[string, RoomKind, number | null, number | null]>([
    // Read in adopted texts: IRC 2015 (Alabama), 2018 (Tennessee), 2021 (Pennsylvania), 2024
    // (federal buildings). IMC 2024: pages on section 403. 2012 and IMC 2021 from memory.
    ...["IRC-2012", "IRC-2015", "IRC-2018", "IRC-2021", "IRC-2024", "IMC-2021", "IMC-2024"].flatMap(
      (id): [string, RoomKind, number, number][] => [
        [id, "bathroom", 50, 20],
        [id, "toilet", 50, 20],
        [id, "kitchen", 100, 25],
        [id, "kitchen hood", 100, 25],
      ],
    ),
    // Read: Washington table M1505.4.4.1; Oregon 2023; Florida, North Carolina and New York.
    ["WA-2021", "bathroom", 50, 20],
    ["WA-2021", "kitchen", 300, none],
    ["OR-2023", "kitchen hood", 150, none],
    ["OR-2023", "bathroom", 80, 20],
    ["OR-2023", "toilet", 50, none],
    ["FL-2023", "kitchen", 100, 25],
    ["NC-2024", "bathroom", 50, 20],
    ["NY-2025", "toilet", 50, 20],
    // From memory, a Building America guide agrees.
    ["ENERGY-STAR-3.1", "bathroom", 50, 20],
    ["ZERH-2", "kitchen hood", 100, none],
    // L/s. From memory; England: examination questions and course text agree.
    ["ADF-2021", "kitchen hood", 30, 13],
    ["ADF-WALES-2022", "kitchen", 60, 13],
    ["SCOTLAND-3.14", "utility", 30, 8],
    ["TBK-2012", "toilet", 6, 6],
    ["TGDF-2019", "bathroom", 15, 8],
    ["NBC-2020", "kitchen", 50, none],
    ["OBC-2024", "bathroom", 25, none],
    ["BCBC-2024", "kitchen hood", 47, none],
    ["CSA-F326", "bathroom", 25, 15],
    ["NZ-G4", "kitchen", 50, none],
    // Read: NCC 2019, 3.8.7.3, quoted by a building surveyor.
    ["NCC-2019", "bathroom", 25, none],
    ["NCC-2019", "kitchen", 40, none],
    ["NL-BBL", "kitchen", none, 21],
    ["SE-BBR", "kitchen", none, 10],
    ["FI-1009-2017", "bathroom", 15, 10],
    ["DK-BR18", "bathroom", none, 15],
    // m³/h ÷ 3.6. Passive House: read; the others from memory.
    ["PASSIVE-HOUSE", "kitchen", none, 60 / 3.6],
    ["PASSIVE-HOUSE", "bathroom", none, 40 / 3.6],
    ["TEK17", "bathroom", 30, 15],
    ["DIN-1946-6", "bathroom", none, 12.5],
    ["DIN-18017-3", "toilet", 30 / 3.6, 20 / 3.6],
    ["FR-1982", "kitchen", 37.5, none],
  ])("%s: %s has %s and %s", (id, room, onDemand, continuous) => {
    const edition = findEdition(id);
    const rate = (duty: Duty) => {
      if (!edition.rooms.some((rule) => rule.room === room && rule.duty === duty)) return none;
      const { rate: own } = roomRate(edition, room, duty, edition.systems[0] ?? "ip", {
        volume: 1e6,
        enclosed: true,
      });
      return own > 1e3 ? none : own;
    };
    expect([rate("on demand"), rate("continuous")]).toEqual([onDemand, continuous]);
  });

  // Read: Washington, hoods over electric and over fuel-burning ranges.
  it("Washington: 160 cfm or 65 % over an electric range, 250 cfm or 80 % over one that burns", () => {
    const { rooms } = findEdition("WA-2021");
    const hoods = rooms.filter(({ room }) => room === "kitchen hood");
    expect(
      hoods.map(({ rate, captures, when, is }) => [when?.cooking, rate?.ip, captures, is]),
    ).toEqual([
      ["fuel", 250, 80, "model check"],
      ["electric", 160, 65, "model check"],
    ]);
  });
});

describe("rates of whole dwellings", () => {
  // Read: Washington table M1505.4.3(1). Recomputed: the equation at the upper edge, rounded up to
  // the next 5, and 30 at least: all 50 cells.
  it("Washington: the table is its equation at the upper edge, rounded up to 5, from 30 on", () => {
    for (let edge = 500; edge <= 5000; edge += 500)
      for (const bedrooms of [1, 2, 3, 4, 5]) {
        const equation = 0.01 * edge + 7.5 * (bedrooms + 1);
        const cell = Math.max(30, Math.ceil(equation / 5 - 1e-9) * 5);
        expect(cellOf("DWELLING_RATE", "WA-2021", edge, bedrooms, "table")).toBe(cell);
      }
    expect(cellOf("DWELLING_RATE", "WA-2021", 400, 1)).toBe(30);
  });

  // Read: IRC 2015 has the table alone; 2018 on the equation too. Alaska: 0.03 · A + 10 · (N + 1).
  it("IRC: no equation before 2018", () => {
    expect(cellOf("DWELLING_RATE", "IRC-2015", 1800, 3)).toBe(60);
    expect(cellOf("DWELLING_RATE", "IRC-2015", 1800, 3, "equation")).toMatchObject({
      message: expect.stringContaining("use one of table"),
    });
    expect(cellOf("DWELLING_RATE", "IRC-2024", 1800, 3, "equation")).toBe(48);
    expect(cellOf("DWELLING_RATE", "AK-2018", 1000, 2)).toBe(60);
  });

  // Read: Residential Code of New York State 2025, which prints the equation in words.
  it("IRC: the equation counts no bedroom as none", () => {
    expect(cellOf("DWELLING_RATE", "NY-2025", 400, 0, "equation")).toBe(11.5);
    expect(cellOf("DWELLING_RATE", "IRC-2018", 400, 0, "equation")).toBe(11.5);
  });

  // Read: a page on IMC 2024, at least one hour in every four.
  it("IMC: a fan that runs less than a quarter of the time is refused", () => {
    expect(cellOf("ON_RATE", "IMC-2024", 50, 0.25, 4)).toBe(200);
    expect(cellOf("ON_RATE", "IMC-2024", 50, 0.2, 4)).toMatchObject({ code: "#VALUE!" });
  });

  // From memory: NBC 9.32.3.3, a least and a most by bedrooms; more than 5 by CSA F326.
  it("NBC: a band by bedrooms that ends at five", () => {
    const at = (bedrooms: number) => dwellingRate(findEdition("NBC-2020"), 100, bedrooms, "si");
    expect([1, 2, 3, 4, 5].map((n) => at(n).rate)).toEqual([16, 18, 22, 26, 30]);
    expect(at(3).working).toContain("at most 32 L/s");
    expect(() => at(6)).toThrow("ends at 5 bedrooms");
  });

  // Read: TEK17 § 13-2, 1.2 m³/h for each m²; Passive House: 30 m³/h for each person or 0.30 1/h.
  it("Norway by floor area, Passive House by the larger of persons and air changes", () => {
    const rate = (id: string, area: number, bedrooms: number) =>
      dwellingRate(findEdition(id), area, bedrooms, "si").rate;
    expect(rate("TEK17", 90, 3)).toBeCloseTo(30, 10);
    expect(rate("PASSIVE-HOUSE", 150, 3) * 3.6).toBeCloseTo(120, 10);
    expect(rate("PASSIVE-HOUSE", 200, 3) * 3.6).toBeCloseTo(150, 10);
    const six = cellOf("DWELLING_RATE", "PASSIVE-HOUSE", 150, 3, null, "si", 6) as number;
    expect(six * 3.6).toBeCloseTo(180, 10);
  });

  // Read: 5 L/s and 4 for each person, whose example has four persons: 21 L/s.
  it("Ireland: four persons have 21 L/s", () => {
    expect(dwellingRate(findEdition("TGDF-2019"), 50, 3, "si").rate).toBe(21);
    // The example itself: two bedrooms of two persons each.
    expect(cellOf("DWELLING_RATE", "TGDF-2019", 50, 2, null, "si", 4)).toBe(21);
    expect(cellOf("DWELLING_RATE", "TGDF-2019", 50, 2, null, "si", 2)).toBe(17);
  });
});

describe("what stands around the rates", () => {
  // Read: IRC 2021 R202, the wider of its two definitions; Washington M1505.4.1.4.
  it("balance: 10 % of the sum in the IRC, 10 % of the supply or 5 cfm in Washington", () => {
    const of = (id: string) => findRule("balance", balanceRules, id);
    for (const id of ["IRC-2021", "IRC-2024"])
      expect(of(id)).toMatchObject({ of: "sum", within: 0.1 });
    expect(of("WA-2021")).toMatchObject({ of: "supply", within: 0.1, orFlow: { ip: 5 } });
  });

  // Read: Oregon asks 50 cfm of a toilet room only where no window opens.
  it("Oregon asks nothing of a toilet room with a window that opens", () => {
    const toilet = (window: string | null) =>
      cellOf("ROOM_RATE", "OR-2023", "toilet", "on demand", null, "ip", null, null, window);
    expect([toilet("yes"), toilet("no"), toilet(null)]).toEqual(["none", 50, 50]);
  });

  // Read: Washington table M1505.4.4.3. Over electric cooking 160 cfm or 65 %, over fuel 250 or 80 %.
  it("Washington asks no flow of a hood that is listed to catch enough", () => {
    const hood = (cooking: string | null, capture: number | null) =>
      cellOf(
        "ROOM_RATE",
        "WA-2021",
        "kitchen hood",
        "on demand",
        null,
        "ip",
        null,
        cooking,
        null,
        null,
        capture,
      );
    expect([hood("electric", null), hood("fuel", null), hood(null, null)]).toEqual([160, 250, 250]);
    expect([hood("electric", 65), hood("fuel", 80), hood(null, 80)]).toEqual([
      "none",
      "none",
      "none",
    ]);
    expect([hood("electric", 64), hood("fuel", 79), hood(null, 79)]).toEqual([160, 250, 250]);
  });

  // Read: R202 of the IRC has two definitions in 2021 and one in 2024. 100 in, 85 out: 15 apart,
  // where 10 % of the supply is 10 and 10 % of the average, each way, 18.5.
  it("balance: IRC 2021 lets through by one definition what it does not by the other", () => {
    expect(cellOf("BALANCE", "IRC-2021", 100, 85)).toBe("by one definition");
    expect(cellOf("BALANCE", "IRC-2024", 100, 85)).toBe("balanced");
    expect(cellOf("BALANCE", "IRC-2021", 100, 91)).toBe("balanced");
    expect(cellOf("BALANCE", "IRC-2021", 100, 80)).toBe("not balanced");
    expect(cellOf("BALANCE", "WA-2021", 40, 45)).toBe("balanced");
    expect(cellOf("BALANCE", "WA-2021", 40, 45.5)).toBe("not balanced");
    expect(cellOf("BALANCE", "62.2-2016", 40, 80)).toBe("no rule");
    // Read: R202 of Florida 2023 (of the supply), of Oregon 2023 and New York 2025 (of the average).
    expect(cellOf("BALANCE", "FL-2023", 100, 89)).toBe("not balanced");
    expect(cellOf("BALANCE", "FL-2023", 100, 91)).toBe("balanced");
    for (const state of ["OR-2023", "NY-2025"])
      expect([100, 89, 80].map((exhaust) => cellOf("BALANCE", state, 100, exhaust))).toEqual([
        "balanced",
        "balanced",
        "not balanced",
      ]);
  });

  // Read: 1, 1.25 and 1.5 by the table of system coefficients; 0.70 in IRC 2021 and 2024.
  // Read: WAC 51-51-1505, table M1505.4.3(2).
  it("Washington raises the rate by half where a system is neither balanced nor distributed", () => {
    expect(cellOf("BALANCED_RATE", "WA-2021", 60, "one")).toBe(75);
    expect(cellOf("BALANCED_RATE", "WA-2021", 60, "yes")).toBe(60);
    expect(cellOf("BALANCED_RATE", "WA-2021", 60, "no")).toBe(90);
    expect(cellOf("BALANCED_RATE", "IRC-2024", 60, "yes")).toBeCloseTo(42, 10);
    expect(cellOf("BALANCED_RATE", "IRC-2018", 60, "yes")).toMatchObject({
      message: expect.stringContaining("sets no reduction"),
    });
  });

  // Read: Washington M1505.4.4.2 and Oregon M1504.2; three elbows are free, each more takes 10 ft.
  it("ducts in Washington, Oregon and Florida", () => {
    const limit = (id: string, ...rest: unknown[]) => cellOf("DUCT_LIMIT", id, ...rest);
    expect(limit("WA-2021", "flex", 4, 50)).toBe(25);
    expect(limit("WA-2021", "flex", 4, 50, 3)).toBe(25);
    expect(limit("WA-2021", "flex", 4, 50, 4)).toBe(15);
    expect(limit("WA-2021", "flex", 4, 80)).toBe("not allowed");
    expect(limit("WA-2021", "smooth", 5, 100)).toBe(50);
    expect(limit("OR-2023", "flex", 7, 160)).toBe(50);
    expect(limit("OR-2023", "smooth", 6, 160)).toBe(40);
    // Read: Florida's table M1506.2 is that of the IRC.
    expect(limit("FL-2023", "flex", 4, 50)).toBe(56);
    expect(limit("FL-2023", "smooth", 7, 300)).toBe(54);
  });

  // Read: M1503.4 of Florida 2023 and North Carolina, M1503.6 of Oregon 2023 and South Carolina.
  it("makeup air by state", () => {
    const makeup = (id: string, flow: number, appliance?: string) =>
      cellOf("MAKEUP_AIR", id, flow, appliance ?? null);
    expect(makeup("OR-2023", 401)).toBe("needed");
    expect(makeup("NC-2024", 500)).toBe("needed");
    expect(makeup("NC-2024", 500, "no")).toBe("not needed");
    expect(makeup("NC-2024", 601, "no")).toBe("needed");
    expect(makeup("FL-2023", 800, "no")).toBe("not needed");
    expect(makeup("FL-2023", 801, "no")).toBe("needed");
    expect(makeup("FL-2023", 600)).toBe("needed");
    expect(makeup("SC-2021", 401)).toBe("needed");
    expect(makeup("IRC-2024", 600, "no")).toBe("not needed");
  });
});
