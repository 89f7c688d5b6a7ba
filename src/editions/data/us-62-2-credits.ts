import { sourcesIn } from "../documents";
import type { DeficitRule } from "../dwelling";
import type { Edition } from "../edition";
import type { CreditRule, InfiltrationRule } from "../infiltration";
import type { CycleRule } from "../run-time";

export type Year = 2010 | 2013 | 2016 | 2019 | 2022;

const of = (year: Year) => sourcesIn(`ASHRAE 62.2-${year}`);

/** The height's reference and exponent are from memory in every edition, and so is each rule. */
function infiltration(year: Year): InfiltrationRule {
  const source = of(year);
  const height = { referenceHeight: { ip: 8.2, si: 2.5 }, exponent: 0.4 };
  if (year >= 2019)
    return {
      form: "short",
      // A flow from a flow: the same in both systems.
      factor: { ip: 0.052, si: 0.052 },
      ...height,
      source: source("4.1.2, infiltration from the leakage at 50 Pa"),
    };
  return {
    form: "normalized leakage",
    factor: { ip: 7.3, si: 1.44 },
    ...height,
    source:
      year === 2016
        ? source(
            "4.1.2 (factors 7.3 and 1.44: read; height and exponent: from memory)",
            "from memory",
            "upc2021",
          )
        : source(`${year === 2010 ? "4.1.3" : "4.1.2"}, with normalized leakage`),
  };
}

function credit(year: Year): CreditRule {
  const source = of(year);
  if (year === 2010) {
    const own = source(
      "4.1.3 (default and half: read; existing dwellings only: from memory)",
      "from memory",
      "acrNews",
    );
    return { excess: { share: 0.5, byDefault: { ip: 0.02, si: 0.1 }, source: own }, source: own };
  }
  const noFan = {
    new: { ip: 10, si: 5 },
    existing: { ip: 15, si: 7 },
    source: source("4.1 and the appendix on existing buildings (doubtful)"),
  };
  const newWork = { mostOfTotal: 2 / 3, source: source("4.1.2, new dwellings") };
  if (year === 2013)
    return { newWork, noFan, source: source("4.1.2", "two sources", "acrNews", "acca") };
  const outside =
    year === 2016
      ? source("4.1.2, exterior share of the envelope", "read", "upc2021")
      : source("4.1.2, exterior share of the envelope", "read", "abstract2020");
  if (year === 2016) return { newWork, noFan, exposure: { source: outside }, source: outside };
  const own = source("4.1.2, with the factor for unbalanced fans");
  return {
    newWork,
    noFan,
    exposure: { source: outside },
    unbalanced: { source: own },
    source: own,
  };
}

/** Cycles longer than 3 hours go by a table of share and turnover that is not held here. */
const cycle = (year: Year): CycleRule => ({
  averageHours: 3,
  source:
    year === 2016
      ? of(year)("4.5.1", "read", "upc2021")
      : of(year)(year === 2010 ? "4.4" : "4.5.1"),
});

const deficits = (year: Year): DeficitRule => ({
  rooms: [
    { room: "bathroom", rate: { ip: 50, si: 25 } },
    { room: "kitchen hood", rate: { ip: 100, si: 50 } },
    { room: "kitchen", rate: { ip: 100, si: 50 } },
  ],
  window: { ip: 20, si: 10 },
  share: 0.25,
  source: of(year)("appendix on existing buildings, alternative for weak local fans"),
});

/** What runs part of the time, leaks in, or may stay weak in an existing dwelling. */
export const credits = (
  year: Year,
): Pick<Edition, "infiltration" | "credit" | "cycle" | "deficits"> => ({
  infiltration: infiltration(year),
  credit: credit(year),
  cycle: cycle(year),
  deficits: deficits(year),
});
