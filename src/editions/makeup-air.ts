import type { Source } from "../formulas";
import type { Rate } from "./rate";

/** Above this exhaust the dwelling needs makeup air. */
export interface MakeupAirRule {
  readonly code: string;
  readonly above: Rate;
  /** Only where a fuel appliance inside is neither direct-vent nor mechanical-draft. */
  readonly onlyWithAppliance: boolean;
  readonly source: Source;
}

const rule = (year: number, clause: string, onlyWithAppliance: boolean): MakeupAirRule => ({
  code: `IRC-${year}`,
  above: { ip: 400, si: 190 },
  onlyWithAppliance,
  source: { work: `IRC ${year}`, clause, mark: "read" },
});

export const makeupAirRules: readonly MakeupAirRule[] = [
  rule(2015, "M1503.4", false),
  rule(2018, "M1503.6", true),
  rule(2021, "M1503.6", true),
];
