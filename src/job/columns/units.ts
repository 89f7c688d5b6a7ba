import type { System } from "../../editions";

/** What a number field measures; its unit follows from the job's system. */
export type Measure =
  | "pressure"
  | "flow"
  | "opening"
  | "length"
  | "distance"
  | "floor"
  | "volume"
  | "temperature";

const unitsOf: Record<Measure, Record<System, string>> = {
  pressure: { ip: "Pa", si: "Pa" },
  flow: { ip: "cfm", si: "L/s" },
  opening: { ip: "in²", si: "cm²" },
  length: { ip: "in", si: "cm" },
  distance: { ip: "ft", si: "m" },
  floor: { ip: "ft²", si: "m²" },
  volume: { ip: "ft³", si: "m³" },
  temperature: { ip: "°F", si: "°C" },
};

/** The unit in which a job of this system keeps a measure. */
export function unitOf(measure: Measure, system: System): string {
  return unitsOf[measure][system];
}
