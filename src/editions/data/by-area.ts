import type { Source } from "../../formulas";
import type { LargerRule } from "../dwelling";

/** A dwelling rate by floor area alone, L/s for each m². */
export const byArea = (areaRate: number, source: Source): LargerRule => ({
  method: "larger",
  system: "si",
  areaRate,
  leastBedrooms: 0,
  byBedrooms: [0],
  eachFurther: 0,
  source,
  areaSource: source,
});
