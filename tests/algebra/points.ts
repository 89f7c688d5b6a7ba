import type { Formula } from "../../src/formulas";

/** A small seeded generator (mulberry32), so that a failing point is the same on every run. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A seed of its own for each formula, from its id. */
export function seedOf(formula: Formula): number {
  let hash = 2166136261;
  for (const character of formula.id)
    hash = Math.imul(hash ^ character.charCodeAt(0), 16777619) >>> 0;
  return hash;
}

/** Random points inside the valid range of every symbol. */
export function randomPoints(formula: Formula, count: number): Record<string, number>[] {
  const random = seeded(seedOf(formula));
  return Array.from({ length: count }, () =>
    Object.fromEntries(
      formula.symbols.map(({ name, valid: [low, high] }) => [name, low + (high - low) * random()]),
    ),
  );
}

/** The same points as one column a symbol. */
export function asColumns(
  formula: Formula,
  points: readonly Record<string, number>[],
): Record<string, Float64Array> {
  return Object.fromEntries(
    formula.symbols.map(({ name }) => [
      name,
      Float64Array.from(points, (point) => point[name] as number),
    ]),
  );
}
