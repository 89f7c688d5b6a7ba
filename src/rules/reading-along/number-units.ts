import type { System } from "../../editions";

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
  new: flow,
  existing: flow,
  leastShare: "1",
  first: "dwellings",
  reduction: "1",
  mostOfTotal: "1",
  upTo: "1",
  rows: "1",
  mostByBedrooms: flow,
  exemptAbove: flow,
  aboveWithout: flow,
  orFlow: flow,
  floorAbove: { ip: "ft²", si: "m²" },
  floorTo: { ip: "ft²", si: "m²" },
  captures: "%",
  listedAt: "in w.c.",
  ratedAt: "in w.c.",
  freeElbows: "elbows",
  one: "1",
  neither: "1",
  "balance.within": "1",
  "efficacy.least": { ip: "cfm/W", si: "L/s/W" },
  "efficacy.from": "cfm",
  "efficacy.below": "cfm",
  "ducts.diameter": "in",
  "ducts.lengths": "ft",
  "ducts.elbow": "ft",
  "ducts.ratedFlows": "cfm",
  "sound.on demand": "sone",
  "sound.continuous": "sone",
};

/** The unit of what stands under a key in a part of an edition; "" where nothing says. */
export function statedUnit(part: string, key: string): string | UnitBySystem {
  return unitByKey[`${part}.${key}`] ?? unitByKey[key] ?? "";
}
