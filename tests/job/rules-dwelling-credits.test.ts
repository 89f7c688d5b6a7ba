import { describe, expect, it } from "vitest";
import { findEdition } from "../../src/editions";
import {
  deficitOf,
  dwellingRate,
  fanRate,
  infiltration,
  rateIfBalanced,
  rateWhileOn,
  withDeficits,
} from "../../src/job";

const of = (id: string) => findEdition(id);
const house = { leak50: 1500, floorArea: 1800, height: 16, weather: 0.6 };
const credit = {
  total: 84,
  infiltration: 61.146,
  exposedShare: 1,
  balanced: false,
  work: "existing",
} as const;

describe("the infiltration of a dwelling", () => {
  it("shows its sum: leakage area, normalized leakage, infiltration", () => {
    const { working, source } = infiltration(of("62.2-2016"), house, "ip");
    expect(working.split("; ")).toHaveLength(3);
    expect(working).toMatch(/^ELA = 1500 .*; NL = .*; Q_inf = 0\.41552\d? · 0\.6 · 1800 \/ 7\.3$/);
    expect(source).toMatchObject({ work: "ASHRAE 62.2-2016", mark: "from memory" });
  });

  it("refuses a size that cannot be, by its name", () => {
    expect(() => infiltration(of("62.2-2016"), { ...house, height: 0 }, "ip")).toThrow(
      "height 0: give a number above 0",
    );
  });
});

describe("the rate after the credit", () => {
  it("shows each step, and says where it stands", () => {
    const { working, source } = fanRate(of("62.2-2019"), { ...credit, work: "new" }, "ip");
    expect(working.split("; ")).toHaveLength(4);
    expect(working).toContain("Q = 84 − 0.666667 · 56 · 1");
    expect(source.clause).toContain("unbalanced");
    const capped = fanRate(of("62.2-2016"), { ...credit, work: "new" }, "ip");
    expect(capped.source.clause).toContain("new dwellings");
  });

  it("says why new work under 2010 has none", () => {
    expect(fanRate(of("62.2-2010"), { ...credit, work: "new" }, "ip").working).toContain(
      "default inside the rate",
    );
  });

  it("refuses a share outside 0 to 1 and infiltration below 0", () => {
    const edition = of("62.2-2016");
    expect(() => fanRate(edition, { ...credit, exposedShare: 1.2 }, "ip")).toThrow("from 0 to 1");
    expect(() => fanRate(edition, { ...credit, infiltration: -1 }, "ip")).toThrow("0 or more");
  });

  it("is never above the total where more leaks in than is needed", () => {
    expect(fanRate(of("62.2-2019"), { ...credit, infiltration: 200 }, "ip").rate).toBe(0);
    const attached = { ...credit, infiltration: 200, exposedShare: 0.25 };
    expect(fanRate(of("62.2-2019"), attached, "ip").rate).toBeCloseTo(84 - 50, 10);
  });
});

describe("the flow while on", () => {
  it("shows that it averages plainly, and refuses what goes by a table that is not held", () => {
    const plain = rateWhileOn(of("62.2-2016"), 72, 0.5);
    expect(plain.working).toBe("plain average over cycles of 3 h; Q_on = 72 / (1 · 0.5)");
    expect(plain.source).toMatchObject({ clause: "4.5.1", mark: "read" });
    expect(() => rateWhileOn(of("62.2-2016"), 72, 0.5, 8)).toThrow("work from your copy");
  });

  it("shows the two columns it reads between", () => {
    const { working } = rateWhileOn(of("IRC-2021"), 60, 0.58);
    expect(working).toContain("0.58 − 0.5");
    expect(working).toContain("60 · 1.75");
    expect(rateWhileOn(of("IRC-2021"), 60, 0.5).working).toBe("Q_on = 60 · 2");
  });
});

describe("deficits", () => {
  it("show their sums", () => {
    expect(deficitOf(of("62.2-2016"), "bathroom", 0, true, "ip").working).toContain("50 − 0 − 20");
    expect(withDeficits(of("62.2-2016"), 84, 130).working).toContain("84 + 0.25 · 130");
  });

  it("are of no use below 0", () => {
    expect(() => deficitOf(of("62.2-2016"), "bathroom", -1, false, "ip")).toThrow('or "none"');
    expect(() => withDeficits(of("62.2-2016"), 84, -1)).toThrow("0 or more");
  });
});

describe("a reduction and further persons", () => {
  it("show their sums and their own clauses", () => {
    expect(rateIfBalanced("IRC-2021", 60, true).working).toBe("Q_bal = 60 · (1 − 0.3)");
    const { rate, working, source } = dwellingRate(of("62.2-2016"), 1800, 3, "ip", undefined, 6);
    expect(rate).toBe(99);
    expect(working).toMatch(/; .*84 \+ 7\.5 · \(6 − 3 − 1\)/);
    expect(source).toMatchObject({ mark: "from memory" });
  });

  it("take a manufactured home's rate between its bounds", () => {
    const { rate, working } = dwellingRate(of("HUD-3280"), 1200, 2, "ip");
    expect(rate).toBe(50);
    expect(working).toContain("0.035 · 1200");
  });
});
