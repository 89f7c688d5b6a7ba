import { type Duty, findRule, type System, soundRules } from "../editions";
import { flowUnit } from "./room-rate";
import { type Ruling, statedIn } from "./ruling";

/**
 * The loudest rating that a fan may have, sones, or "no limit".
 *
 * `remote`: mounted outside the rooms with the length of duct between that the code states.
 */
export function loudest(
  code: string,
  duty: Duty,
  flow: number | undefined,
  remote: boolean,
  system: System,
): Ruling<number | "no limit"> {
  const rule = findRule("sound limit", soundRules, code);
  const { source } = rule;
  if (remote)
    return {
      value: "no limit",
      source,
      working: `mounted away with at least ${rule.remoteDuct.ip} ft of duct: exempt`,
    };
  if (flow !== undefined) {
    const exempt = statedIn(rule.exemptAbove, system, rule.code);
    if (flow > exempt)
      return {
        value: "no limit",
        source,
        working: `${flow} ${flowUnit(system)}, above ${exempt}: exempt`,
      };
  }
  const value = rule.limits[duty];
  return { value, source, working: `${value} sone, ${duty}` };
}
