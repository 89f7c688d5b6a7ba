import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellOf } from "../functions/call";

const bedrooms = [1, 2, 3, 4, 5];

describe.each(["62.2-2013", "62.2-2016", "62.2-2019", "62.2-2022"])(
  "ASHRAE %s, table 4.1a (cfm)",
  (edition) => {
    // Two sources: table 4.1a as reprinted in 2021 UPC/UMC appendix E, table E 605.1.3.1, and
    // recomputed. Whole numbers: no tolerance.
    const table: readonly (readonly number[])[] = [
      [500, 30, 38, 45, 53, 60],
      [1000, 45, 53, 60, 68, 75],
      [1500, 60, 68, 75, 83, 90],
      [2000, 75, 83, 90, 98, 105],
      [2500, 90, 98, 105, 113, 120],
      [3000, 105, 113, 120, 128, 135],
      [3500, 120, 128, 135, 143, 150],
      [4000, 135, 143, 150, 158, 165],
      [4500, 150, 158, 165, 173, 180],
    ];
    const rate = (area: number, n: number, method: string) =>
      cellOf("DWELLING_RATE", edition, area, n, method);

    it.each(table)(
      "up to %d ft² is what DWELLING_RATE gives, over the whole band",
      (edge, ...row) => {
        row.forEach((cell, i) => {
          for (const area of [edge, edge - 1, edge - 499])
            expect(rate(area, bedrooms[i] as number, "table")).toBe(cell);
        });
      },
    );

    it.each(table)(
      "up to %d ft² is the equation at the upper edge, rounded half up",
      (edge, ...row) => {
        row.forEach((cell, i) => {
          const n = bedrooms[i] as number;
          expect(Math.floor(0.03 * edge + 7.5 * (n + 1) + 0.5)).toBe(cell);
        });
      },
    );

    it("steps between 500 and 501 ft²", () => {
      expect(rate(500, 2, "table")).toBe(38);
      expect(rate(501, 2, "table")).toBe(53);
    });

    it("ends above 4500 ft² and above 5 bedrooms", () => {
      expect(rate(4501, 2, "table")).toMatchObject({ code: "#VALUE!" });
      expect(rate(4500, 6, "table")).toMatchObject({ code: "#VALUE!" });
    });

    it("is never less than the equation at the true area, nor more than 15.5 cfm above it", () => {
      fc.assert(
        fc.property(
          fc.double({ min: 1, max: 4500, noNaN: true }),
          fc.integer({ min: 0, max: 5 }),
          (area, n) => {
            const byTable = rate(area, n, "table") as number;
            const byEquation = rate(area, n, "equation") as number;
            expect(byEquation).toBeLessThanOrEqual(byTable);
            // One band of 500 ft² at 0.03 cfm/ft², and half a cfm of rounding.
            expect(byTable - byEquation).toBeLessThanOrEqual(15.5);
          },
        ),
        { seed: 62, numRuns: 300 },
      );
    });

    // From memory: table 4.1b, L/s. It is the SI equation at the upper edge, rounded.
    it.each([
      [47, 14, 18, 21, 25, 28],
      [93, 21, 24, 28, 31, 35],
      [139, 28, 31, 35, 38, 42],
      [186, 35, 38, 42, 45, 49],
    ])(
      "has the row of table 4.1b up to %d m², which its SI equation gives when rounded",
      (edge, ...row) => {
        row.forEach((cell, i) => {
          const n = bedrooms[i] as number;
          // A square metre below the edge: whether the edge itself is in the band is not settled.
          expect(cellOf("DWELLING_RATE", edition, edge - 1, n, "table", "si")).toBe(cell);
          expect(Math.floor(0.15 * edge + 3.5 * (n + 1) + 0.5)).toBe(cell);
        });
      },
    );
  },
);

describe("the dwelling equation of ASHRAE 62.2", () => {
  // IP: two sources (IMC equation 4-9; construction reference page) for 2010 and read (2021 UPC/UMC
  // appendix E, E 605.1.3.1) from 2013 on; SI from memory. Worked by hand to the digits shown.
  it.each([
    ["62.2-2010", "ip", 1800, 3, 18 + 30],
    ["62.2-2016", "ip", 1800, 3, 54 + 30],
    ["62.2-2019", "ip", 1800, 3, 54 + 30],
    ["62.2-2013", "ip", 1800, 3, 54 + 30],
    ["62.2-2022", "ip", 1800, 3, 54 + 30],
    ["62.2-2016", "ip", 1800, 0, 54 + 15],
    ["62.2-2010", "si", 200, 3, 10 + 14],
    ["62.2-2016", "si", 200, 3, 30 + 14],
    ["62.2-2019", "si", 200, 3, 30 + 14],
  ])("%s in %s, area %d, %d bedrooms", (edition, units, area, n, expected) => {
    const rate = cellOf("DWELLING_RATE", edition, area, n, null, units) as number;
    expect(rate).toBeCloseTo(expected, 10);
  });

  // From memory: 7.5 cfm (3.5 L/s) for each person above bedrooms + 1, by equation and by table.
  it("counts persons above bedrooms + 1", () => {
    const rate = (people: number | null, method = "equation", units = "ip", n = 3) =>
      cellOf("DWELLING_RATE", "62.2-2016", 1800, n, method, units, people) as number;
    expect(rate(6)).toBeCloseTo(84 + 15, 10);
    expect(rate(6, "table")).toBeCloseTo(90 + 15, 10);
    expect(rate(6, "equation", "si") - rate(null, "equation", "si")).toBeCloseTo(7, 10);
    for (const few of [null, 0, 2, 4]) expect(rate(few)).toBe(84);
    // A dwelling without bedrooms counts as one with one: two persons.
    expect(rate(3, "equation", "ip", 0)).toBeCloseTo(69 + 7.5, 10);
  });

  it("has SI numbers of its own, not converted ones: 0.15 L/s/m² where 0.03 cfm/ft² is 0.1524", () => {
    const litres = cellOf("DWELLING_RATE", "62.2-2016", 167.2, 3, null, "si") as number;
    const cfm = cellOf("DWELLING_RATE", "62.2-2016", 167.2 / 0.09290304, 3) as number;
    expect(Math.abs(litres / (cfm * 0.4719474432) - 1)).toBeGreaterThan(0.01);
  });
});

describe.each(["62.2-2010", "62.2-2013", "62.2-2016", "62.2-2019", "62.2-2022"])(
  "local exhaust of ASHRAE %s",
  (edition) => {
    const rate = (room: string, duty: string, units: string, volume: number | null = null) =>
      cellOf("ROOM_RATE", edition, room, duty, volume, units, "yes");

    // Two sources: ASHRAE Journal article on existing buildings; construction reference page.
    it("has 50 cfm (25 L/s) for a bathroom on demand, 20 cfm (10 L/s) continuous", () => {
      expect(rate("bathroom", "on demand", "ip")).toBe(50);
      expect(rate("bathroom", "on demand", "si")).toBe(25);
      expect(rate("bathroom", "continuous", "ip")).toBe(20);
      expect(rate("bathroom", "continuous", "si")).toBe(10);
    });

    it("has 100 cfm (50 L/s) for a vented hood on demand", () => {
      expect(rate("kitchen hood", "on demand", "ip")).toBe(100);
      expect(rate("kitchen hood", "on demand", "si")).toBe(50);
    });

    it("has 5 air changes an hour for a continuous fan of an enclosed kitchen: 80 cfm for 8 by 10 by 12 ft", () => {
      for (const room of ["kitchen", "kitchen hood"]) {
        expect(rate(room, "continuous", "ip", 960) as number).toBeCloseTo(80, 10);
        expect(rate(room, "continuous", "si", 27) as number).toBeCloseTo(37.5, 10);
      }
    });

    it("has none for a toilet room without bath or shower", () => {
      expect(rate("toilet", "on demand", "ip")).toBe("none");
    });

    // From memory.
    it(`has ${edition === "62.2-2010" ? "100 cfm" : "300 cfm or 5 air changes"} for a kitchen without hood on demand`, () => {
      const [cfm, litres] = edition === "62.2-2010" ? [100, 50] : [300, 150];
      expect(rate("kitchen", "on demand", "ip")).toBe(cfm);
      expect(rate("kitchen", "on demand", "si")).toBe(litres);
    });
  },
);
