import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Invented, invent } from "./invent";
import { misses } from "./misses";
import { type Spoiling, spoil } from "./spoil";

/** Two thousand were read while this was made; each run reads a part, always the same. */
const seeds = (count: number, seed: number) =>
  fc.sample(fc.noBias(fc.integer({ min: 1, max: 2 ** 31 - 1 })), { numRuns: count, seed });

/** The share of roles and counts of readings that come out right; what does not is printed with its seed. */
function shareRight(books: readonly { seed: number; made: Invented }[]): number {
  let [right, all] = [0, 0];
  for (const { seed, made } of books) {
    const found = misses(made);
    right += found.right;
    all += found.all;
    if (found.wrong.length) console.log(`seed ${seed}, ${made.about}: ${found.wrong.join("; ")}`);
  }
  return right / all;
}

test("of workbooks of random layout, language, units and order at least 99 % of the roles are read right", () => {
  expect(
    shareRight(seeds(150, 4).map((seed) => ({ seed, made: invent(seed) }))),
  ).toBeGreaterThanOrEqual(0.99);
});

describe("a workbook from which something was taken is still read", () => {
  const base = seeds(40, 9).map((seed) => ({ seed, made: invent(seed) }));
  const spoiled = (how: Spoiling, books = base) =>
    shareRight(books.map(({ seed, made }) => ({ seed, made: spoil(made, how, seed) })));

  test.each<[string, Spoiling, number]>([
    ["formulas turned into values", "values", 0.99],
    ["headings made nonsense", "headings", 0.88],
    ["both", "both", 0.79],
    ["words in the cells made nonsense", "words", 0.92],
  ])("with %s", (_, how, least) => {
    expect(spoiled(how)).toBeGreaterThanOrEqual(least);
  });

  test("with its first four rows alone", () => {
    expect(
      spoiled(
        "four rows",
        base.filter(({ made }) => made.first !== undefined),
      ),
    ).toBeGreaterThanOrEqual(0.95);
  });
});
