import type { System } from "../editions";

export type UnitBySystem = Readonly<Record<System, string>>;
const flow: UnitBySystem = { ip: "cfm", si: "L/s" };
const length: UnitBySystem = { ip: "ft", si: "m" };
const perArea: UnitBySystem = { ip: "cfm/ft²", si: "L/s/m²" };

/** Units by key, or by list and key, where the data state none beside the number. */
const unitByKey: Readonly<Record<string, string | UnitBySystem>> = {
  rate: flow,
  cells: flow,
  byBedrooms: flow,
  eachFurther: flow,
  personRate: flow,
  each: flow,
  least: flow,
  most: flow,
  window: flow,
  within: flow,
  above: flow,
  from: flow,
  below: flow,
  exemptFrom: flow,
  floorFlow: flow,
  areaRate: perArea,
  byDefault: perArea,
  areas: { ip: "ft²", si: "m²" },
  referenceHeight: length,
  remoteDuct: length,
  airChanges: "1/h",
  bedrooms: "bedrooms",
  leastBedrooms: "bedrooms",
  segmentHours: "h",
  averageHours: "h",
  mostHours: "h",
  percent: "%",
  upToPercent: "%",
  floorPressure: "Pa",
  factor: "1",
  exponent: "1",
  constant: "1",
  share: "1",
  reduction: "1",
  mostOfTotal: "1",
  upTo: "1",
  effectiveness: "1",
  rows: "1",
  "efficacyRules.least": { ip: "cfm/W", si: "L/s/W" },
  "efficacyRules.from": "cfm",
  "efficacyRules.below": "cfm",
  "ductRules.diameter": "in",
  "ductRules.lengths": "ft",
  "ductRules.elbow": "ft",
  "ductRules.ratedFlows": "cfm",
  "soundRules.on demand": "sone",
  "soundRules.continuous": "sone",
};

/** The unit of what stands under a key in a list; "" where nothing says. */
export function statedUnit(list: string, key: string): string | UnitBySystem {
  return unitByKey[`${list}.${key}`] ?? unitByKey[key] ?? "";
}
