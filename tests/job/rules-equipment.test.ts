import { describe, expect, it } from "vitest";
import { designMatch, leastEfficacy, longestDuct, loudest, makeupAir } from "../../src/job";

describe("rules on equipment", () => {
  it("say how the number came about", () => {
    expect(leastEfficacy("IECC-2021", "bath or utility", 95, "ip").working).toBe(
      "3.5 cfm/W, bath or utility fan, from 90 cfm",
    );
    expect(loudest("62.2-2016", "continuous", undefined, false, "ip").working).toBe(
      "1 sone, continuous",
    );
    expect(loudest("62.2-2016", "continuous", 450, false, "ip").working).toContain("exempt");
    const duct = { kind: "flex", diameter: 4, ratedFlow: 45, elbows: 1 } as const;
    expect(longestDuct("IRC-2021", duct, "ip").working).toBe(
      "flex duct of 4 in, column of 50 cfm: 56 ft; L = 56 − 15 · 1",
    );
    expect(makeupAir("IRC-2021", 600, true, "ip").working).toContain("600 of 400 cfm: above it");
    expect(designMatch("ENERGY-STAR-3.1", 80, 90, "ip").working).toContain("15");
  });

  it("say where it stands and how far it was traced", () => {
    const duct = { kind: "flex", diameter: 8, ratedFlow: 200, elbows: 0 } as const;
    expect(longestDuct("IRC-2021", duct, "ip").source).toEqual({
      work: "IRC 2021",
      clause: "table M1504.2, flex, 8 in",
      mark: "read",
      document: expect.stringContaining("IRC 2021 in Pennsylvania"),
      traced: "2026-11-27",
    });
    expect(leastEfficacy("IECC-2015", "in-line", undefined, "ip").source.mark).toBe("from memory");
  });

  it("never compare litres a second with a limit in cfm", () => {
    expect(() => leastEfficacy("IECC-2015", "bath or utility", 5, "si")).toThrow('units to "ip"');
    expect(() => loudest("ENERGY-STAR-3.1", "continuous", 190, false, "si")).toThrow(
      'units to "ip"',
    );
    expect(() => designMatch("ENERGY-STAR-3.1", 40, 40, "si")).toThrow('units to "ip"');
    const duct = { kind: "flex", diameter: 100, ratedFlow: 25, elbows: 0 } as const;
    expect(() => longestDuct("IRC-2021", duct, "si")).toThrow('units to "ip"');
  });

  it("refuse a small fan that the code's rows leave out", () => {
    expect(() => leastEfficacy("IECC-2015", "bath or utility", 5, "ip")).toThrow("from 10 cfm on");
  });
});
