import { describe, expect, it } from "vitest";
import { oneValue } from "../../src/algebra";
import { ductRules, findRule } from "../../src/editions";
import { fanEfficacy } from "../../src/formulas";
import { designMatch, longestDuct } from "../../src/job";
import { cellOf } from "../functions/call";

describe("least fan efficacy, cfm/W", () => {
  // Read: 10 CFR 460.204 table 1, whole, and IRC 2021 N1103.6.2, the same rows of the IECC 2021.
  it.each([
    ["heat recovery", null, 1.2],
    ["in-line", null, 3.8],
    ["bath or utility", 89, 2.8],
    ["bath or utility", 90, 3.5],
  ])("10 CFR 460.204 and IECC 2021: %s of %s cfm has %d", (kind, flow, expected) => {
    for (const code of ["10-CFR-460", "IECC-2021", "10 CFR 460.204"])
      expect(cellOf("MIN_EFFICACY", code, kind, flow)).toBe(expected);
  });

  // Read: IECC 2021 and 2024 as IRC N1103.6.2, which keep a range hood at 2.8; the federal rule has none.
  it.each([
    ["IECC-2021", "range hood", 300, 2.8],
    ["IECC-2021", "air handler", 300, 1.2],
    ["IECC-2024", "range hood", 300, 2.8],
    ["IECC-2024", "in-line", 150, 3.8],
    ["IECC-2024", "bath", 89, 2.8],
    ["IECC-2024", "bath", 90, 3.5],
    ["IECC-2024", "bath", 199, 3.5],
    ["IECC-2024", "bath", 200, 4],
  ])("%s: %s of %d cfm has %d", (code, kind, flow, expected) => {
    expect(cellOf("MIN_EFFICACY", code, kind, flow)).toBe(expected);
  });
  it("the federal rule of manufactured homes has no row for hoods", () => {
    expect(cellOf("MIN_EFFICACY", "10-CFR-460", "range hood", 300)).toMatchObject({
      message: expect.stringContaining("sets no efficacy of a range hood"),
    });
  });

  // Read: the table of 2018 in Tennessee and in a Washington State rule; 2015 from memory.
  it.each([
    ["HRV", null, 1.2],
    ["range hood", null, 2.8],
    ["in-line", null, 2.8],
    ["bath", 10, 1.4],
    ["bath", 89.9, 1.4],
    ["bath", 90, 2.8],
  ])("IECC 2015 and 2018: %s of %s cfm has %d", (kind, flow, expected) => {
    for (const code of ["IECC-2015", "IECC-2018"])
      expect(cellOf("MIN_EFFICACY", code, kind, flow)).toBe(expected);
  });

  // Worked by hand: 50 cfm on 25 W are 2.0 cfm/W.
  it("50 cfm on 25 W pass in 2018 and fail in 2021", () => {
    const own = oneValue(fanEfficacy, { Q: 50, P: 25 });
    expect(own).toBe(2);
    expect(own).toBeGreaterThanOrEqual(cellOf("MIN_EFFICACY", "IECC-2018", "bath", 50) as number);
    expect(own).toBeLessThan(cellOf("MIN_EFFICACY", "IECC-2021", "bath", 50) as number);
  });
});

// Two sources: guides of two national laboratories; "above 400 cfm" from memory.
describe("the sound limits of ASHRAE 62.2 and ENERGY STAR homes", () => {
  it.each(["62.2-2010", "62.2-2016", "ENERGY-STAR-3.1"])(
    "%s: 1 sone continuous, 3 on demand",
    (code) => {
      expect(cellOf("MAX_SONE", code, "continuous")).toBe(1);
      expect(cellOf("MAX_SONE", code, "on demand", 110, "no")).toBe(3);
    },
  );

  it("do not bind fans of more than 400 cfm, nor remote ones", () => {
    expect(cellOf("MAX_SONE", "62.2-2016", "continuous", 401)).toBe("no limit");
    expect(cellOf("MAX_SONE", "62.2-2016", "continuous", 400)).toBe(1);
    expect(cellOf("MAX_SONE", "62.2-2016", "continuous", 80, "yes")).toBe("no limit");
  });
});

describe.each(["IRC-2015", "IRC-2018", "IRC-2021", "IRC-2024"])("the duct table of %s", (code) => {
  const flows = [50, 80, 100, 125, 150, 200, 250, 300];
  const limit = (...args: readonly unknown[]) => cellOf("DUCT_LIMIT", code, ...args);

  // Read: IRC table M1504.2 (2015: M1506.2) in adopted texts of all four editions, every row.
  it.each([
    ["flex", 3, "X X X X X X X X"],
    ["flex", 4, "56 4 X X X X X X"],
    ["flex", 5, "NL 81 42 16 2 X X X"],
    ["flex", 6, "NL NL 158 91 55 18 1 X"],
    ["smooth", 3, "5 X X X X X X X"],
    ["smooth", 4, "114 31 10 X X X X X"],
    ["smooth", 5, "NL 152 91 51 28 4 X X"],
    ["smooth", 6, "NL NL NL 168 112 53 25 9"],
    ["flex", 7, "NL NL NL NL 161 78 40 19"],
    ["smooth", 7, "NL NL NL NL NL 148 88 54"],
    ["flex", 8, "NL NL NL NL NL 189 111 69"],
    ["smooth", 8, "NL NL NL NL NL NL 198 133"],
  ])("%s of %d in: %s (read)", (kind, diameter, row) => {
    const cells = row
      .split(" ")
      .map((cell) => ({ X: "not allowed", NL: "no limit" })[cell] ?? Number(cell));
    expect(flows.map((flow) => limit(kind, diameter, flow))).toEqual(cells);
    const rule = findRule("duct lengths", ductRules, code);
    const own = rule.rows.find((each) => each.duct === kind && each.diameter === diameter);
    expect(own?.source.mark).toBe("read");
  });

  it("reads a flow between two columns in the higher one, a diameter in the smaller row", () => {
    expect(limit("flex", 5, 90)).toBe(42);
    expect(limit("flex", 5, 30)).toBe("no limit");
    expect(limit("flex", 5.5, 80)).toBe(81);
    expect(limit("flex", 2.9, 50)).toBe("not allowed");
    expect(limit("smooth", 10, 250)).toBe(198);
  });

  // Read: 15 ft for each elbow; worked by hand.
  it("takes 15 ft off for each elbow, and allows nothing once none is left", () => {
    expect([0, 1, 2, 3, 4].map((elbows) => limit("flex", 4, 50, elbows))).toEqual([
      56,
      41,
      26,
      11,
      "not allowed",
    ]);
    expect(limit("smooth", 7, 80, 9)).toBe("no limit");
  });

  // Read: the exception for a flow that is verified.
  it("does not apply once the flow is measured", () => {
    const duct = { kind: "flex", diameter: 3, ratedFlow: 300, elbows: 4 } as const;
    expect(longestDuct(code, duct, "ip").value).toBe("not allowed");
    expect(longestDuct(code, duct, "ip", true)).toMatchObject({
      value: "no limit",
      source: { mark: "read" },
    });
  });
});

// Read: IRC 2015 M1503.4; the text of M1503.6 as adopted from the later editions.
describe("makeup air", () => {
  it("is needed above 400 cfm, not at it", () => {
    expect(cellOf("MAKEUP_AIR", "IRC-2015", 400)).toBe("not needed");
    expect(cellOf("MAKEUP_AIR", "IRC-2015", 401)).toBe("needed");
    expect(cellOf("MAKEUP_AIR", "IRC-2015", 190, null, "si")).toBe("not needed");
    expect(cellOf("MAKEUP_AIR", "IRC-2015", 191, null, "si")).toBe("needed");
  });

  it.each(["IRC-2018", "IRC-2021"])("%s: only beside an open-draft appliance", (code) => {
    expect(cellOf("MAKEUP_AIR", code, 600, "yes")).toBe("needed");
    expect(cellOf("MAKEUP_AIR", code, 600, "no")).toBe("not needed");
    expect(cellOf("MAKEUP_AIR", code, 400)).toBe("not needed");
    expect(cellOf("MAKEUP_AIR", code, 401)).toMatchObject({ code: "#VALUE!" });
  });
});

// From memory: rater field checklist, item 7.1: within 15 cfm or 15 %.
describe("a programme's tolerance to the design (from memory)", () => {
  it("reaches down to 40.3 for 55.3 cfm and up to 148.1 for 128.8 cfm", () => {
    expect(designMatch("ENERGY-STAR-3.1", 55.3, 50, "ip").lowest).toBeCloseTo(40.3, 10);
    expect(designMatch("ENERGY-STAR-3.1", 128.8, 130, "ip").highest).toBeCloseTo(148.1, 1);
  });

  it.each([
    [55.3, 40.3, "matches"],
    [55.3, 40.2, "low"],
    [128.8, 148.1, "matches"],
    [128.8, 148.2, "high"],
    [80, 95, "matches"],
    [80, 95.1, "high"],
  ])("a design of %d and %d measured: %s", (design, measured, expected) => {
    expect(cellOf("DESIGN_MATCH", "ENERGY-STAR-3.1", design, measured)).toBe(expected);
  });
});

// IMC: 30 % read; IRC from memory.
describe("the reduction for balanced and ducted systems", () => {
  it.each(["IRC-2021", "IMC-2021"])("%s: 30 % off", (code) => {
    expect(cellOf("BALANCED_RATE", code, 60, "yes")).toBeCloseTo(42, 10);
    expect(cellOf("BALANCED_RATE", code, 60, "no")).toBe(60);
  });
});
