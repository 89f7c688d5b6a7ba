import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Wildcard } from "../../src/sheet/native/wildcard";

/** The same pattern as a regular expression: slow on some patterns, but another's work. */
function reference(pattern: string): string {
  return pattern.replace(/~.?|./gs, (sign) => {
    if (sign === "~") return "";
    if (sign === "*") return ".*";
    if (sign === "?") return ".";
    return (sign.length === 2 ? sign.charAt(1) : sign).replace(/[\\^$.|+()[\]{}*?]/, "\\$&");
  });
}

const short = (letters: string[], maxLength: number) =>
  fc.array(fc.constantFrom(...letters), { maxLength }).map((list) => list.join(""));

describe("A wildcard pattern", () => {
  it("finds what a regular expression finds, whole and within", () => {
    fc.assert(
      fc.property(
        short(["a", "B", "b", "*", "?", "~", "."], 7),
        short(["a", "A", "b", "*", "?", "~", ".", "\n"], 9),
        fc.nat({ max: 3 }),
        (pattern, text, from) => {
          const source = reference(pattern);
          const wildcard = new Wildcard(pattern);
          expect(wildcard.test(text)).toBe(new RegExp(`^${source}$`, "is").test(text));
          const found = text.slice(from).search(new RegExp(source, "is"));
          expect(wildcard.search(text, Math.min(from, text.length))).toBe(
            found < 0 ? -1 : found + Math.min(from, text.length),
          );
        },
      ),
      { numRuns: 3_000 },
    );
  });

  it("of many stars over a long text is through in a moment", () => {
    const start = performance.now();
    const pattern = new Wildcard(`${"*a".repeat(60)}b`);
    const text = "a".repeat(32_000);
    expect(pattern.search(text, 0)).toBe(-1);
    expect(pattern.test(text)).toBe(false);
    expect(performance.now() - start).toBeLessThan(1_000);
  });
});
