import { type Duty, findDuty, findRule, type System, soundRules } from "../../editions";
import { code, units, yesNo } from "../arguments";
import { ifGiven, nameToCome, optional } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import { flowUnits, Ruling, statedIn } from "../contract/ruling";
import type { NativeForm } from "../native/native";
import { soundLimits } from "../native/tables/equipment";
import { wrong } from "../native/text";

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
    return new Ruling("no limit" as const, source, system, [
      `mounted away with at least ${rule.remoteDuct.ip} ft of duct: exempt`,
    ]);
  if (flow !== undefined) {
    const exempt = statedIn(rule.exemptAbove, system, rule.code);
    if (flow > exempt)
      return new Ruling("no limit" as const, rule.exemptSource ?? source, system, [
        `${flow} ${flowUnits[system]}, above ${exempt}: exempt`,
      ]);
  }
  const value = rule.limits[duty];
  return new Ruling(value, source, system, [`${value} ${value === 1 ? "sone" : "sones"}, ${duty}`]);
}

export const rule = ruleOf({
  id: "MAX_SONE",
  title: "Loudest rating allowed",
  arguments: {
    edition: { ...code, ask: "name one, such as 62.2-2016" },
    duty: nameToCome(findDuty, "duty"),
    flow: optional(ifGiven(aboveZero)),
    remote: yesNo,
    units,
  },
  work: ({ edition, duty, flow, remote = false, units }) =>
    loudest(edition, duty, flow, remote, units).answer("sone"),
});

export const native: NativeForm = (native) => {
  const rule = native.rowWhere(soundLimits, { "Edition no.": native.number("edition") });
  const duty = native.number("duty");
  const flow = native.far("flow");
  const exempt = `IF(${native.system}="si",${rule.of("Exempt above, si")},${rule.of("Exempt above, ip")})`;
  const limit = `IF(${duty}=1,${rule.of("On demand, sones")},${rule.of("Continuous, sones")})`;
  const byFlow = `IF(${native.given("flow", "far")},IF(${exempt}=0,${wrong("not stated in these units")},IF(${flow}>${exempt},"no limit",${limit})),${limit})`;
  return rule.orNone(
    `IF(${duty}=0,${wrong("duty: say on demand or continuous")},IF(${native.yesNo("remote")}=1,"no limit",${byFlow}))`,
  );
};

export const help: Help = {
  computes: [
    "1 sone for fans that run all the time, 3 for fans on demand, as rated at 0.1 in w.c. or more.",
    "Fans of more than 400 cfm (under 62.2 from memory), and fans mounted outside the rooms with at least 4 ft of duct, are exempt. Verify against your own copy of the code that applies.",
  ],
  result: 'Sones, or "no limit".',
  source: {
    work: "ASHRAE 62.2-2010, 2013, 2016",
    clause: "7.2, sound ratings, as told by Building America guides",
    mark: "read",
  },
  examples: [
    {
      words: "A bath fan that runs all the time.",
      args: ["62.2-2016", "continuous"],
      gives: 1,
    },
  ],
  troubles: [
    { when: "The edition sets no sound limit.", args: ["IRC-2021", "continuous"] },
    { when: "The duty is not known.", args: ["62.2-2016", "often"] },
    {
      when: "The edition's exemption is in cfm only.",
      args: ["ENERGY-STAR-3.1", "continuous", 190, "no", "si"],
    },
  ],
  related: ["MIN_EFFICACY", "ROOM_RATE"],
};
