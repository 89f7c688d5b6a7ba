import type { Mark, Source } from "../formulas";
import type { Duty } from "./edition";
import type { Rate } from "./rate";

/** The loudest rating, in sones, that a fan may have. */
export interface SoundRule {
  readonly code: string;
  readonly limits: Readonly<Record<Duty, number>>;
  /** A fan of this flow or more is exempt. */
  readonly exemptFrom: Rate;
  /** A fan mounted outside the rooms is exempt if at least this much duct (ft) lies between. */
  readonly remoteDuct: Rate;
  readonly source: Source;
}

const rule = (code: string, work: string, clause: string, mark: Mark): SoundRule => ({
  code,
  limits: { "on demand": 3, continuous: 1 },
  exemptFrom: { ip: 400 },
  remoteDuct: { ip: 4 },
  source: { work, clause, mark },
});

const ashrae = (year: number, mark: Mark) =>
  rule(`62.2-${year}`, `ASHRAE 62.2-${year}`, "7.2, sound ratings", mark);

export const soundRules: readonly SoundRule[] = [
  ashrae(2010, "read"),
  ashrae(2013, "read"),
  ashrae(2016, "read"),
  ashrae(2019, "from memory"),
  ashrae(2022, "from memory"),
  rule("ENERGY-STAR-3.1", "ENERGY STAR homes 3.1", "rater field checklist, fan sound", "read"),
];
