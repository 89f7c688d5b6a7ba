import type { Mark, Source } from "../formulas";
import type { DeficitRule, EquationRule } from "./edition";
import type { CreditRule, InfiltrationRule } from "./infiltration";
import type { CycleRule } from "./run-time";

export type AshraeYear = "2010" | "2013" | "2016" | "2019" | "2022";

const source = (year: AshraeYear, clause: string, mark: Mark = "from memory"): Source => ({
  work: `ASHRAE 62.2-${year}`,
  clause,
  mark,
});

export const furtherPerson = (year: AshraeYear): NonNullable<EquationRule["furtherPerson"]> => ({
  each: { ip: 7.5, si: 3.5 },
  source: source(year, "4.1, persons above bedrooms + 1"),
});

/** The height's reference and exponent are from memory in every edition, and so is each rule. */
export function infiltrationOf(year: AshraeYear): InfiltrationRule {
  const height = { referenceHeight: { ip: 8.2, si: 2.5 }, exponent: 0.4 };
  if (year === "2019" || year === "2022")
    return {
      form: "short",
      // A flow from a flow: the same in both systems.
      factor: { ip: 0.052, si: 0.052 },
      ...height,
      source: source(year, "4.1.2, infiltration from the leakage at 50 Pa"),
    };
  const clause = {
    "2010": "4.1.3, with normalized leakage",
    "2013": "4.1.2, with normalized leakage",
    "2016": "4.1.2 (factors 7.3 and 1.44: read; height and exponent: from memory)",
  }[year];
  return {
    form: "normalized leakage",
    factor: { ip: 7.3, si: 1.44 },
    ...height,
    source: source(year, clause),
  };
}

export function creditOf(year: AshraeYear): CreditRule {
  if (year === "2010") {
    const own = source(year, "4.1.3, existing dwellings");
    return {
      excess: { share: 0.5, byDefault: { ip: 0.02, si: 0.1 }, source: own },
      source: own,
    };
  }
  const newWork = { mostOfTotal: 2 / 3, source: source(year, "4.1.2, new dwellings") };
  if (year === "2013") return { newWork, source: source(year, "4.1.2") };
  const outside = source(
    year,
    "4.1.2, exterior share of the envelope",
    year === "2016" ? "read" : "from memory",
  );
  if (year === "2016") return { newWork, exposure: { source: outside }, source: outside };
  const whole = source(year, "4.1.2, with the factor for unbalanced fans");
  return {
    newWork,
    exposure: { source: outside },
    unbalanced: { source: whole },
    source: whole,
  };
}

/** The later editions' table by share and turnover is not here: the older one stands in for it. */
export const cycleOf = (year: AshraeYear): CycleRule => ({
  averageHours: 3,
  source: source(year, year === "2010" ? "4.4" : "4.5.1", year === "2016" ? "read" : "from memory"),
  longer: {
    mostHours: 24,
    rows: [
      { upTo: 0.35, edge: "inside", effectiveness: 0.33 },
      { upTo: 0.6, edge: "inside", effectiveness: 0.5 },
      { upTo: 0.8, edge: "outside", effectiveness: 0.75 },
      { upTo: 1, edge: "inside", effectiveness: 1 },
    ],
    source: {
      work: "ASHRAE 62.2-2004 and 2007",
      clause: `table of effectiveness by share of time, as in Washington State M1508.3; check it against the table of 62.2-${year}`,
      mark: "read",
    },
  },
});

export const deficitsOf = (year: AshraeYear): DeficitRule => ({
  rooms: [
    { room: "bathroom", rate: { ip: 50, si: 25 } },
    { room: "kitchen hood", rate: { ip: 100, si: 50 } },
    { room: "kitchen", rate: { ip: 100, si: 50 } },
  ],
  window: { ip: 20, si: 10 },
  share: 0.25,
  source: source(year, "appendix on existing buildings, alternative for weak local fans"),
});
