import { InputError } from "../cells";
import { findRule, makeupAirRules, type System } from "../editions";
import { flowUnit } from "./room-rate";
import { type Ruling, statedIn } from "./ruling";

/**
 * Whether exhaust of this flow needs makeup air.
 *
 * `appliance`: a fuel appliance that is neither direct-vent nor mechanical-draft stands inside;
 * undefined where that is not known.
 */
export function makeupAir(
  code: string,
  flow: number,
  appliance: boolean | undefined,
  system: System,
): Ruling<"needed" | "not needed"> {
  const rule = findRule("rule for makeup air", makeupAirRules, code);
  const { source } = rule;
  if (!(flow > 0)) throw new InputError(`flow ${flow}: give a number above 0`);
  const without = appliance === false && rule.aboveWithout;
  const above = statedIn(without || rule.above, system, rule.code);
  const stands = `${flow} of ${above} ${flowUnit(system)}`;
  if (flow <= above) return { value: "not needed", source, working: `${stands}: not above it` };
  if (!rule.onlyWithAppliance) return { value: "needed", source, working: `${stands}: above it` };
  if (appliance === undefined)
    throw new InputError(
      `above ${above} ${flowUnit(system)} ${rule.code} asks for makeup air only beside a fuel appliance inside that is neither direct-vent nor mechanical-draft: give appliance "yes" or "no"`,
    );
  return {
    value: appliance ? "needed" : "not needed",
    source,
    working: `${stands}: above it, ${appliance ? "beside" : "without"} such an appliance inside`,
  };
}
