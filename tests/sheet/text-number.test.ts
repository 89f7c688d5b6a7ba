import fc from "fast-check";
import { parseValue } from "numfmt";
import { expect, it } from "vitest";
import { textNumber } from "../../src/sheet/coerce";

it("reads words as numbers just where the format reader does: where a month opens a date", () => {
  const words = "January|Sept|may|monday|tue|am|PM|e5|E+3|TRUE|USD|kr|x|Lot|Fri|Dec|mars".split(
    "|",
  );
  const text = fc
    .tuple(
      fc.oneof(fc.constantFrom(...words), fc.string({ minLength: 1, maxLength: 2 })),
      fc.string({ unit: fc.constantFrom(..."0123456789 .,/-:$%()'eEapm+"), maxLength: 9 }),
    )
    .map((parts) => parts.join("").trim())
    .filter((written) => /^[a-z]/i.test(written));
  let dates = 0;
  fc.assert(
    fc.property(text, (written) => {
      const read = parseValue(written)?.value;
      const wanted = typeof read === "number" ? read : undefined;
      if (wanted !== undefined) dates++;
      expect(textNumber(written)).toBe(wanted);
    }),
    { numRuns: 20_000 },
  );
  expect(dates).toBeGreaterThan(50);
});
