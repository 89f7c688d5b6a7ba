import { describe, expect, it } from "vitest";
import { readStatus, verdictColumn } from "../../src/job";

describe("the verdict on a flow", () => {
  it("meets at the required rate and is short by any amount below it", () => {
    expect(verdictColumn(Float64Array.of(50, 49.9999, 50.0001), 50, 3)).toEqual([
      "meets",
      "short",
      "meets",
    ]);
  });

  it("is not measured without a flow, even out of range", () => {
    expect(verdictColumn(Number.NaN, 50, 2, ["in range", "above"])).toEqual([
      "not measured",
      "not measured",
    ]);
  });

  it("is out of range outside the window, whatever the flow", () => {
    expect(
      verdictColumn(100, 50, 5, ["above", "below", "reversed", "in range", undefined]),
    ).toEqual(["out of range", "out of range", "out of range", "meets", "meets"]);
  });
});

describe("a range status as text", () => {
  it("is read in any case, and blank as none", () => {
    expect(readStatus(" In Range ")).toBe("in range");
    expect(readStatus("  ")).toBeUndefined();
  });

  it("is refused with the known ones where it is another", () => {
    expect(() => readStatus("ok")).toThrow(
      'unknown range status "ok": use one of reversed, below, in range, above',
    );
  });
});
