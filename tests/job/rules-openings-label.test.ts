import { describe, expect, it } from "vitest";
import { areaOf, OpeningsError, openingsNamed, splitLabels } from "../../src/job";

const box = [
  { label: "A", area: 4 },
  { label: "B", area: 8 },
  { label: "C", area: 16 },
];

describe("a text of openings in use", () => {
  it.each(["A+C", "a + c", "A, C", "A;C", "A & C", "A and C", "+A++C+"])(
    "%j names A and C",
    (text) => {
      const open = openingsNamed(text, box);
      expect(open.map(({ label }) => label)).toEqual(["A", "C"]);
      expect(areaOf(open)).toBe(20);
    },
  );

  it("keeps a label that only contains the word and", () => {
    expect(splitLabels("Sand+B")).toEqual(["Sand", "B"]);
  });

  it.each([
    ["", "empty", "no opening named: give its label, such as A or A+C"],
    ["+", "empty", "no opening named"],
    ["A+a", "repeated", "opening a is named twice: name each open one once"],
    ["A+D", "unknown", 'unknown opening "D": this box has A, B, C'],
  ] as const)("%j is refused as %s", (text, reason, message) => {
    try {
      openingsNamed(text, box);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(OpeningsError);
      expect((error as OpeningsError).flaw).toBe(reason);
      expect((error as OpeningsError).message).toContain(message);
    }
  });

  it("says that a box without openings has none", () => {
    expect(() => openingsNamed("A", [])).toThrow("this box has none");
  });
});
