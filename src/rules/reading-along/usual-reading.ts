import { type System, sourcesIn } from "../../editions";
import type { Source } from "../../formulas";
import { usualChance } from "../../spread";
import {
  usualConstant,
  usualConstantSpread,
  usualGuardChance,
  usualInterval,
  usualWindow,
} from "../constants";
import { aimedPressure } from "../flow/aimed-pressure";
import { california } from "../instruments";
import { leastFlows, usualRequirement } from "../proof";
import { mostOfFace } from "../reach";
import type { UnitBySystem } from "./number-units";

interface Stated {
  readonly what: string;
  readonly value: number | Readonly<Record<System, number>>;
  readonly unit: string | UnitBySystem;
  readonly source: Source;
}

const raterPractice = (clause: string) =>
  sourcesIn("rater practice after RESNET standards, chapter 8")(clause, "read", "chapter8");

/** The constants that the rules of a reading share, with where the trade has them from. */
export const usualReading: readonly Stated[] = [
  {
    what: "flow constant",
    value: usualConstant,
    unit: { ip: "cfm/(in²·√Pa)", si: "L/s/(cm²·√Pa)" },
    source: raterPractice("804; the SI value is the same constant in other units"),
  },
  {
    what: "lowest pressure of the window",
    value: usualWindow.low,
    unit: "Pa",
    source: {
      work: "ANSI/RESNET/ICC 380",
      clause: "section 6, airflow resistance device",
      mark: "from memory",
    },
  },
  {
    what: "highest pressure of the window",
    value: usualWindow.high,
    unit: "Pa",
    source: raterPractice("804"),
  },
  {
    what: "pressure aimed at",
    value: aimedPressure,
    unit: "Pa",
    source: {
      work: "middle of the window",
      clause: "where the manometer's limit and the fan's loss are both small",
      mark: "common practice",
    },
  },
  {
    what: "most of a box face that is opened",
    value: mostOfFace,
    unit: "1",
    source: { work: "ISO 5167-1:2003", clause: "3.3.6, β = 0.5", mark: "from memory" },
  },
  {
    what: "standard spread of a constant that no proof has told",
    value: usualConstantSpread,
    unit: "%",
    source: {
      work: "spread of a field-made box",
      clause: "set by the job",
      mark: "common practice",
    },
  },
  {
    what: "days for which a check of a box or an instrument holds",
    value: usualInterval,
    unit: "days",
    source: { work: "yearly check", clause: "set by the job", mark: "common practice" },
  },
  {
    what: "accuracy that a box is to prove",
    value: usualRequirement,
    unit: "%",
    source: california("RA3.7.2.2"),
  },
  {
    what: "least number of flows that prove a box",
    value: leastFlows,
    unit: "flows",
    source: {
      work: "proof of a box against a reference",
      clause: "flows that span the window",
      mark: "common practice",
    },
  },
  {
    what: "chance asked of a guarded verdict",
    value: usualGuardChance,
    unit: "1",
    source: { work: "JCGM 106:2012", clause: "guarded acceptance", mark: "from memory" },
  },
  {
    what: "chance that ± covers",
    value: usualChance,
    unit: "1",
    source: { work: "JCGM 100:2008", clause: "G.6.6", mark: "from memory" },
  },
];
