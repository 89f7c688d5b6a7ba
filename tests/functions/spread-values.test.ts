import { describe, expect, it } from "vitest";
import { flowBudget, unboxedBudget } from "../../src/job";
import { call, cellOf, column, failureOf } from "./call";

const meter = [2, 1, 0.25] as const;
const given = { area: 24, areaLimit: 0.2, constant: 1.07, constantSpread: 2 };
const known = { ...given, meterPercent: 1, meterFloor: 0.25 };

describe("what the functions of spread give", () => {
  it("AREA_LIMIT: half of what sizes within the tolerance may differ by", () => {
    // ((d + t)² − (d − t)²)·π/8 and ((w + t)(h + t) − (w − t)(h − t))/2.
    expect(cellOf("AREA_LIMIT", 0.25, 4) as number).toBeCloseTo(
      (Math.PI / 8) * (4.25 ** 2 - 3.75 ** 2),
      12,
    );
    expect(cellOf("AREA_LIMIT", 0.25, 3, 8) as number).toBeCloseTo(
      (3.25 * 8.25 - 2.75 * 7.75) / 2,
      12,
    );
    const mixed = call("AREA_LIMIT", 0.1, column(4, 4), column("", 5)).flat() as number[];
    expect(mixed).toEqual([expect.closeTo(0.2 * Math.PI, 12), expect.closeTo(0.9, 12)]);
  });

  it("FLOW_SPREAD: a row of repeats a fan, blanks among them passed over", () => {
    const readings = [
      [3.9, "", 4.1],
      [4, null, ""],
      ["", "", ""],
      [3.9, 4, 4.1],
    ];
    const rows = call("FLOW_SPREAD", readings, 24, 0.2, 1.07, ...meter);
    const budgets = [[3.9, 4.1], [4], [], [3.9, 4, 4.1]].map((each) =>
      each.length > 0 ? flowBudget({ ...known, readings: each }) : undefined,
    );
    expect(rows[0]).toEqual([budgets[0]?.u, budgets[0]?.dof, budgets[0]?.expanded]);
    expect(rows[1]).toEqual([budgets[1]?.u, "infinite", budgets[1]?.expanded]);
    expect(rows[2]).toEqual(["", "", ""]);
    expect(rows[3]).toEqual([budgets[3]?.u, budgets[3]?.dof, budgets[3]?.expanded]);
  });

  it("FLOW_SPREAD: one bad reading spoils its own row and says which", () => {
    const readings = [
      [4, "4 Pa"],
      [4, -1],
      [4, 4.2],
    ];
    const rows = call("FLOW_SPREAD", readings, 24, 0.2, 1.07, ...meter);
    for (const cell of rows[0] ?? [])
      expect(cell).toMatchObject({ message: 'readings "4 Pa" is text: type it as a number' });
    for (const cell of rows[1] ?? [])
      expect(cell).toMatchObject({ message: expect.stringContaining("swap the hoses") });
    expect(rows[2]?.[0]).toBeCloseTo(flowBudget({ ...known, readings: [4, 4.2] }).u, 12);
  });

  it("FLOW_SPREAD: the constant left out is the usual one of the units", () => {
    expect(call("FLOW_SPREAD", 4, 24, 0.2, null, ...meter)).toEqual(
      call("FLOW_SPREAD", 4, 24, 0.2, 1.07, ...meter),
    );
    const square = 2.54 ** 2;
    const litres = call(
      "FLOW_SPREAD",
      4,
      24 * square,
      0.2 * square,
      null,
      ...meter,
      null,
      null,
      "si",
    );
    const cfm = cellOf("FLOW_SPREAD", 4, 24, 0.2, null, ...meter) as number;
    expect(litres[0]?.[0]).toBeCloseTo((cfm * 0.3048 ** 3 * 1000) / 60, 12);
  });

  it("CHANCE_MET and ACCEPT_FROM undo each other", () => {
    const limit = cellOf("ACCEPT_FROM", 50, 1.5, 0.9);
    expect(cellOf("CHANCE_MET", limit, 1.5, 50) as number).toBeCloseTo(0.9, 12);
    expect(cellOf("ACCEPT_FROM", 50, 1.5)).toBe(cellOf("ACCEPT_FROM", 50, 1.5, 0.95));
    expect(cellOf("CHANCE_MET", 50, 1.5, 50)).toBe(0.5);
  });

  // One-sided 95 % quantiles of Student's t: 2.920 for 2 degrees of freedom, 1.860 for 8 (JCGM 100, table G.2 at 90 %).
  it("CHANCE_MET, ACCEPT_FROM and VERDICT ask for more where the spread rests on few readings", () => {
    expect(cellOf("ACCEPT_FROM", 50, 1, 0.95, 2) as number).toBeCloseTo(52.92, 3);
    expect(cellOf("ACCEPT_FROM", 50, 1, 0.95, 8.9) as number).toBeCloseTo(51.86, 3);
    expect(cellOf("ACCEPT_FROM", 50, 1, 0.95, "infinite")).toBe(cellOf("ACCEPT_FROM", 50, 1, 0.95));
    expect(cellOf("CHANCE_MET", 52.92, 1, 50, 2) as number).toBeCloseTo(0.95, 4);
    expect(cellOf("CHANCE_MET", 52.92, 1, 50, "")).toBe(cellOf("CHANCE_MET", 52.92, 1, 50));
    expect(cellOf("VERDICT", 52, 50, null, 1, 0.95)).toBe("meets");
    expect(cellOf("VERDICT", 52, 50, null, 1, 0.95, 2)).toBe("too close to call");
  });

  it("VERDICT: guarded where there is a spread, simple where it is blank", () => {
    const verdicts = call("VERDICT", column(51, 51, 60, 40, ""), 50, null, column(2, "", 2, 2, 2));
    expect(verdicts).toEqual(
      column("too close to call", "meets", "meets", "short", "not measured"),
    );
    expect(cellOf("VERDICT", 51, 50, null, 2, 0.6)).toBe("meets");
    expect(cellOf("VERDICT", 51, 50, "above", 2)).toBe("out of range");
  });

  it("UNBOXED_FLOW and UNBOXED_SPREAD: the line through two readings and its spread", () => {
    const { value, u } = unboxedBudget({
      first: { area: 32.71, areaLimit: 0.2, pressure: 3.859 },
      second: { area: 16, areaLimit: 0.3, pressure: 14.537 },
      constant: 1.07,
      constantSpread: 2,
      meterPercent: 1,
      meterFloor: 0.25,
      resolution: 0.1,
      zeroLimit: 0.2,
    });
    const readings = [32.71, 3.859, 16, 14.537] as const;
    expect(cellOf("UNBOXED_FLOW", ...readings) as number).toBeCloseTo(value, 12);
    const spread = cellOf("UNBOXED_SPREAD", ...readings, 1.07, 1, 0.25, 0.2, 0.3, 2, 0.1, 0.2);
    expect(spread as number).toBeCloseTo(u, 12);
    expect(cellOf("UNBOXED_FLOW", 24, 4, 12, "")).toBe("");
    expect(cellOf("UNBOXED_FLOW", 24, 4, 12, 4)).toMatchObject({
      message:
        "pressures of 4 and 4 Pa are too near each other: read again with an opening that gives twice the pressure of the other, or more",
    });
  });

  it("UNBOXED_ESTIMATE: what the rating says, or why it says nothing", () => {
    // Worked by hand: s = 1.87, P0 = 174.6, a duct without loss: 174.6/1.87.
    expect(cellOf("UNBOXED_ESTIMATE", 80, 25, 80, 25, 60, 62.4) as number).toBeCloseTo(
      174.6 / 1.87,
      9,
    );
    expect(cellOf("UNBOXED_ESTIMATE", 80, 25, 60, 25, 80, 62.4)).toMatchObject({ code: "#VALUE!" });
  });
});

describe("what the functions of pairs give", () => {
  it("PAIR_CONSTANT: the slope through the origin, its spread and n − 1", () => {
    // x = 2, 4: slope (2·3 + 4·5)/20 = 1.3, residuals 0.4 and −0.2, s = √0.2, s/√20 = 0.1.
    const [row] = call("PAIR_CONSTANT", column(1, 2), column(4, 4), column(3, 5));
    expect(row).toEqual([expect.closeTo(1.3, 12), expect.closeTo(0.1, 12), 1]);
    expect(call("PAIR_CONSTANT", 1, 4, 3)).toEqual([[1.5, "", 0]]);
  });

  it("pass over pairs without a reading, and give blanks where there is none", () => {
    const areas = column(1, 1, 2, 2, "");
    const [row] = call("PAIR_CONSTANT", areas, column(4, "", 4, 9, ""), column(3, 7, 5, "", ""));
    expect(row).toEqual([expect.closeTo(1.3, 12), expect.closeTo(0.1, 12), 1]);
    const flows = call("PAIR_BIAS", column(50.5, "", 78.4, 104), column(50, 10, 80, 100));
    expect(flows).toEqual([[expect.closeTo(1, 12), expect.closeTo(3, 12), 3]]);
    for (const id of ["PAIR_BIAS", "PAIR_LIMITS"])
      expect(call(id, column("", ""), column("", 5))).toEqual([["", "", ""]]);
    expect(call("PAIR_BIAS", 51, 50)).toEqual([[expect.closeTo(2, 12), "", 1]]);
  });

  it("name the pair whose cell will not do, in every cell of the row", () => {
    const hostError = { code: "#DIV/0!", message: "from a cell" };
    for (const [bad, message] of [
      ["26 cfm", 'referenceFlows, pair 2: "26 cfm" is text: type it as a number'],
      [-1, "referenceFlows, pair 2: -1: give a number above 0"],
      [true, "referenceFlows, pair 2: true is not a number"],
      [hostError, "from a cell"],
    ] as const) {
      const [row] = call("PAIR_LIMITS", column(25, 52), column(26, bad));
      expect(row).toHaveLength(3);
      for (const cell of row ?? []) expect(cell).toMatchObject({ message });
    }
    // A 0 may be a blank cell: the pair is passed over, as for a blank.
    const blanks = call("PAIR_BIAS", column(25, 52), column(26, ""));
    expect(call("PAIR_BIAS", column(25, 52), column(26, 0))).toEqual(blanks);
    const [row] = call("PAIR_CONSTANT", column(1, ""), column(4, 4), column(3, 5));
    expect(row?.[0]).toMatchObject({ code: "#N/A", message: "areas, pair 2 is blank" });
    expect(failureOf("PAIR_BIAS", column(1, 2), column(1)).message).toBe(
      "2 boxFlows, 1 referenceFlows: give ranges of one length",
    );
  });
});
