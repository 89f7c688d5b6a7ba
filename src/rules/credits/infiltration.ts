import { oneValue, plain } from "../../algebra";
import type { Edition, System } from "../../editions";
import {
  infiltrationByLeakageIp,
  infiltrationByLeakageSi,
  infiltrationShort,
  leakageAreaIp,
} from "../../formulas";
import { area, edition, flowToCome, units } from "../arguments";
import type { Help } from "../contract/help";
import { aboveZero, must } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import {
  flowUnits,
  ruleOf as part,
  RequiredRate,
  requireSystem,
  statedIn,
  sum,
} from "../contract/ruling";
import type { NativeForm } from "../native/native";
import { infiltrationRules } from "../native/tables/credits";

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
  const rule = part(edition, "infiltration", "infiltration from a leakage at 50 Pa");
  for (const [name, value] of Object.entries(of)) must(name, value, aboveZero);
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
  return new RequiredRate(oneValue(formula, given), rule.source, system, [sum(formula, given)]);
}

export const rule = ruleOf({
  id: "INFILTRATION",
  title: "Infiltration of a dwelling over a year",
  arguments: { edition, leak50: flowToCome, floorArea: area, height: area, weather: area, units },
  work: ({ edition, units, ...envelope }) =>
    infiltration(edition, envelope, units).answer(flowUnits),
});

export const native: NativeForm = (native) => {
  const rule = native.rowWhere(infiltrationRules, {
    "Edition no.": native.number("edition"),
    System: native.system,
  });
  const factor = rule.of("Factor");
  const [Q50, A, H, w] = native.all("near", "leak50", "floorArea", "height", "weather");
  const shared = { Q50, w, H, Hr: rule.of("Reference height"), z: rule.of("Exponent") };
  const short = plain(infiltrationShort, { ...shared, c: factor });
  const byLeakage = native.bySystemFar(
    plain(infiltrationByLeakageIp, { ...shared, A, k: factor }),
    plain(infiltrationByLeakageSi, { ...shared, A, k: factor }),
  );
  return rule.orNone(`IF(${rule.of("Form")}="short",${short},${byLeakage})`);
};

export const help: Help = {
  computes: [
    "A leakage measured at 50 Pa becomes the flow that leaks in over a year. ASHRAE 62.2 to 2016 goes by normalized leakage, 2019 and 2022 by a short form; the two differ by about half a percent.",
    "The weather and shielding factor stands in the edition's table of stations, which is not here: look it up for the place.",
    "The effective leakage area at 4 Pa is about the leakage divided by 18, in² and cfm. The equivalent leakage area at 10 Pa is another number. Verify against your own copy of the edition that applies.",
  ],
  result: 'Infiltration before any cap, cfm (L/s with units "si").',
  formulas: [infiltrationByLeakageIp, infiltrationByLeakageSi, infiltrationShort, leakageAreaIp],
  examples: [
    {
      words: "1500 cfm at 50 Pa, 1800 ft², 16 ft high, a weather factor of 0.60, under 62.2-2016.",
      args: ["62.2-2016", 1500, 1800, 16, 0.6],
      gives: 61.4753,
    },
  ],
  troubles: [
    { when: "The edition has no such credit.", args: ["IRC-2021", 1500, 1800, 16, 0.6] },
    { when: "The weather factor is missing.", args: ["62.2-2016", 1500, 1800, 16, ""] },
  ],
  related: ["FAN_RATE", "DWELLING_RATE"],
};
