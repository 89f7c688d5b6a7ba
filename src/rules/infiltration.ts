import { oneValue } from "../algebra";
import { InputError } from "../cells";
import type { Edition, System } from "../editions";
import { infiltrationByLeakageIp, infiltrationByLeakageSi, infiltrationShort } from "../formulas";
import { type RequiredRate, requireSystem } from "./room-rate";
import { ruleOf, statedIn, worked } from "./ruling";

export interface Envelope {
  /** Leakage at 50 Pa, cfm or L/s. */
  readonly leak50: number;
  /** ft² or m². */
  readonly floorArea: number;
  /** From the lowest to the highest point of the pressure boundary above ground, ft or m. */
  readonly height: number;
  /** Weather and shielding factor of the place. */
  readonly weather: number;
}

/** The infiltration of a dwelling over a year, cfm (ip) or L/s (si), before any cap or credit. */
export function infiltration(edition: Edition, of: Envelope, system: System): RequiredRate {
  requireSystem(edition, system);
  const rule = ruleOf(edition, "infiltration", "infiltration from a leakage at 50 Pa");
  for (const [name, value] of Object.entries(of))
    if (!(value > 0)) throw new InputError(`${name} ${value}: give a number above 0`);
  const factor = statedIn(rule.factor, system, edition.id);
  const shared = {
    Q50: of.leak50,
    w: of.weather,
    H: of.height,
    Hr: statedIn(rule.referenceHeight, system, edition.id),
    z: rule.exponent,
  };
  const short = rule.form === "short";
  const byLeakage = system === "ip" ? infiltrationByLeakageIp : infiltrationByLeakageSi;
  const formula = short ? infiltrationShort : byLeakage;
  const given = short ? { ...shared, c: factor } : { ...shared, A: of.floorArea, k: factor };
  return {
    rate: oneValue(formula, given),
    source: rule.source,
    working: worked(formula, given, system),
  };
}
