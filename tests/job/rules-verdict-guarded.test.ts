import { describe, expect, it } from "vitest";
import { verdictColumn, verdicts } from "../../src/job";

describe("the verdict by guarded acceptance", () => {
  const guard = { spread: 2, chance: 0.95 };

  it("meets, is short, or is too close to call by the chance that the rate is met", () => {
    // 1.645 standard spreads each way of 50: 46.71 and 53.29.
    const flows = Float64Array.of(46.7, 46.72, 50, 53.28, 53.3);
    expect(verdictColumn(flows, 50, 5, undefined, guard)).toEqual([
      "short",
      "too close to call",
      "too close to call",
      "too close to call",
      "meets",
    ]);
  });

  it("leaves rows without a spread to simple acceptance", () => {
    const spread = Float64Array.of(2, Number.NaN, Number.NaN);
    const flows = Float64Array.of(51, 51, 49.9);
    expect(verdictColumn(flows, 50, 3, undefined, { spread, chance: 0.95 })).toEqual([
      "too close to call",
      "meets",
      "short",
    ]);
  });

  it("is simple acceptance at a chance of one half or a spread of 0", () => {
    const flows = Float64Array.of(49.99, 50, 50.01);
    const simple = verdictColumn(flows, 50, 3);
    expect(verdictColumn(flows, 50, 3, undefined, { spread: 2, chance: 0.5 })).toEqual(simple);
    expect(verdictColumn(flows, 50, 3, undefined, { spread: 0, chance: 0.95 })).toEqual(simple);
  });

  it("takes 0.95 where a row names no chance", () => {
    const chance = Float64Array.of(Number.NaN, 0.7);
    const flows = Float64Array.of(52, 52);
    expect(verdictColumn(flows, 50, 2, undefined, { spread: 2, chance })).toEqual([
      "too close to call",
      "meets",
    ]);
  });

  it("still says out of range, and not measured without a flow", () => {
    const flows = Float64Array.of(60, Number.NaN);
    expect(verdictColumn(flows, 50, 2, ["above", "in range"], guard)).toEqual([
      "out of range",
      "not measured",
    ]);
    expect(verdictColumn(60, Number.NaN, 1, undefined, guard)).toEqual([undefined]);
    expect(verdicts).toContain("too close to call");
  });
});
