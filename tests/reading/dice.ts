/** Chance from a seed, the same every time. */
export interface Dice {
  number(): number;
  whole(from: number, to: number): number;
  chance(share: number): boolean;
  pick<T>(list: readonly T[]): T;
  shuffle<T>(list: readonly T[]): T[];
  /** The same pick each time for the same seed. */
  seeded<T>(list: readonly T[]): T;
}

export function dice(seed: number): Dice {
  let state = (seed ^ 0x9e3779b9) >>> 0;
  const number = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const whole = (from: number, to: number) => from + Math.floor(number() * (to - from + 1));
  return {
    number,
    whole,
    chance: (share) => number() < share,
    pick: (list) => list[whole(0, list.length - 1)]!,
    shuffle: (list) => {
      const made = [...list];
      for (let at = made.length - 1; at > 0; at--) {
        const other = whole(0, at);
        [made[at], made[other]] = [made[other]!, made[at]!];
      }
      return made;
    },
    seeded: (list) => list[(seed >>> 0) % list.length]!,
  };
}
