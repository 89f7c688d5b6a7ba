import { describe, expect, it, vi } from "vitest";
import { counted, grouped, kept, once, onceForText } from "../../src/cells";

describe("what is kept by a key", () => {
  it("is made once, also where it is nothing, false or 0", () => {
    for (const value of [null, false, 0, ""]) {
      const make = vi.fn(() => value);
      const by = new Map<string, unknown>();
      const ask = () => kept(by, "a", make);
      expect([ask(), ask(), make.mock.calls.length]).toEqual([value, value, 1]);
    }
  });

  it("is worked out once for each object", () => {
    const make = vi.fn((of: readonly number[]) => of.length);
    const size = once(make);
    const [a, b] = [[1, 2], [3]];
    expect([a, a, b, a].map(size)).toEqual([2, 2, 1, 2]);
    expect(make).toHaveBeenCalledTimes(2);
  });

  it("is forgotten once so many texts were asked for", () => {
    const make = vi.fn((text: string) => text.toUpperCase());
    const upper = onceForText(2, make);
    expect(["a", "b", "a", "c", "a"].map(upper)).toEqual(["A", "B", "A", "C", "A"]);
    expect(make.mock.calls.flat()).toEqual(["a", "b", "c", "a"]);
  });

  it("groups and counts in the order in which keys are met", () => {
    expect([...grouped([3, 1, 5, 2], (n) => (n % 2 ? "odd" : "even"))]).toEqual([
      ["odd", [3, 1, 5]],
      ["even", [2]],
    ]);
    expect([...counted("banana")]).toEqual([
      ["b", 1],
      ["a", 3],
      ["n", 2],
    ]);
  });
});
