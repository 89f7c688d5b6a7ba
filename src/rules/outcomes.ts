/** The words that rules answer with or choose between, where no rule is needed to know them. */

export const verdicts = [
  "meets",
  "short",
  "too close to call",
  "out of range",
  "not measured",
  "none required",
] as const;
export type Verdict = (typeof verdicts)[number];

export const rangeStatuses = ["reversed", "below", "in range", "above"] as const;
export type RangeStatus = (typeof rangeStatuses)[number];

export const balances = ["balanced", "not balanced", "by one definition", "no rule"] as const;
export type Balance = (typeof balances)[number];

export const works = ["new", "existing"] as const;
export type Work = (typeof works)[number];

export const matches = ["matches", "low", "high"] as const;
export type Match = (typeof matches)[number];

/** The closed box held over a register as a pressure pan, the house held at a pressure. */
export const panStatuses = ["tight", "leaks", "repeat"] as const;
export type PanStatus = (typeof panStatuses)[number];
