import { InputError } from "../../cells";
import { findRule, makeupAirRules, type System } from "../../editions";
import { code, flowToCome, units, yesNo } from "../arguments";
import type { Help } from "../contract/help";
import { aboveZero, must } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import { flowUnits, Ruling, statedIn } from "../contract/ruling";
import type { NativeForm } from "../native/native";
import { makeupLimits } from "../native/tables/equipment";
import { wrong } from "../native/text";

export type Makeup = "needed" | "not needed";

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
): Ruling<Makeup> {
  const rule = findRule("rule for makeup air", makeupAirRules, code);
  const { source } = rule;
  must("flow", flow, aboveZero);
  const without = appliance === false && rule.aboveWithout;
  const above = statedIn(without || rule.above, system, rule.code);
  const stands = `${flow} of ${above} ${flowUnits[system]}`;
  const ruled = (value: Makeup, why: string) =>
    new Ruling(value, source, system, [`${stands}: ${why}`]);
  if (flow <= above) return ruled("not needed", "not above it");
  if (!rule.onlyWithAppliance) {
    const isOpen = appliance === undefined && flow <= (rule.aboveWithout?.[system] ?? 0);
    const counted = ", counted as beside an open-flue appliance, which is not said";
    return ruled("needed", `above it${isOpen ? counted : ""}`);
  }
  if (appliance === undefined)
    throw new InputError(
      `above ${above} ${flowUnits[system]} ${rule.code} asks for makeup air only beside a fuel appliance inside that is neither direct-vent nor mechanical-draft: give appliance "yes" or "no"`,
    );
  const beside = appliance ? "beside" : "without";
  return ruled(appliance ? "needed" : "not needed", `above it, ${beside} such an appliance inside`);
}

export const rule = ruleOf({
  id: "MAKEUP_AIR",
  title: "Whether makeup air is needed",
  arguments: { edition: code, flow: flowToCome, appliance: yesNo, units },
  work: ({ edition, flow, appliance, units }) =>
    makeupAir(edition, flow, appliance, units).answer(),
});

export const native: NativeForm = (native) => {
  const rule = native.rowWhere(makeupLimits, {
    "Edition no.": native.number("edition"),
    System: native.system,
  });
  const answer = native.yesNo("appliance");
  const ask = wrong("say whether such an appliance is inside");
  const beside = `IF(${answer}=1,"needed",IF(${answer}=0,"not needed",${ask}))`;
  const above = `IF(${rule.of("Only with an appliance")}=1,${beside},"needed")`;
  const limit = `IF(${answer}=0,${rule.of("Without an appliance")},${rule.of("Above, cfm or L/s")})`;
  // The answer is read even where the flow settles it.
  return rule.orNone(`IF(AND(${answer}<9,${native.near("flow")}<=${limit}),"not needed",${above})`);
};

export const help: Help = {
  computes: [
    "Exhaust above 400 cfm (190 L/s) needs makeup air. IRC-2015 asks for it in every dwelling; 2018 and 2021 only where a fuel appliance inside is neither direct-vent nor mechanical-draft.",
    "States may ask for more, at lower flows. Verify against your own copy of the code that applies.",
  ],
  result: '"needed" or "not needed".',
  source: { work: "IRC 2018 and 2021", clause: "M1503.6 (2015: M1503.4)", mark: "read" },
  examples: [
    {
      words: "A hood of 600 cfm, and no open-draft appliance inside.",
      args: ["IRC-2021", 600, "no"],
      gives: "not needed",
    },
  ],
  troubles: [
    { when: "It depends on an appliance.", args: ["IRC-2021", 600] },
    { when: "The edition has no such rule here.", args: ["62.2-2016", 600] },
  ],
  related: ["ROOM_RATE"],
};
