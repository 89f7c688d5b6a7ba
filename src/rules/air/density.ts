import { optional, orElse } from "../contract/argument";
import type { Need } from "../contract/need";
import { densityRange, usualAir } from "./air";

const { low, high, unit } = densityRange;
const standard = usualAir.reference.value;

/** Densities that air can have. */
export const densityNeed: Need = {
  from: low,
  to: high,
  say: `give ${unit} from ${low} to ${high}; 0.075 lb/ft³ is ${standard} ${unit}`,
};

/** The density that a constant or a rating is stated for. */
export const reference = optional(orElse(standard, densityNeed));
