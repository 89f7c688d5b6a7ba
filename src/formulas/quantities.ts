import type { Quantity, Step, Unit } from "./formula";

/** A quantity of a formula: its name in the text, how people write it, what it is and its unit. */
/* @__NO_SIDE_EFFECTS__ */
export function quantity(name: string, shown: string, meaning: string, unit: Unit) {
  return { name, shown, meaning, unit };
}

/** A symbol: a quantity and the values between which the formula is valid for it. */
/* @__NO_SIDE_EFFECTS__ */
export function symbol(
  name: string,
  shown: string,
  meaning: string,
  unit: Unit,
  valid: Quantity["valid"],
): Quantity {
  return { name, shown, meaning, unit, valid };
}

/* @__NO_SIDE_EFFECTS__ */
export function step(name: string, shown: string, meaning: string, unit: Unit, text: string): Step {
  return { name, shown, meaning, unit, text };
}

/** The symbols that several formulas share, so that one name means one thing everywhere. */
export const area = symbol("A", "A", "open area", { ip: "in²", si: "cm²" }, [0.1, 1000]);

export const constant = symbol(
  "K",
  "K",
  "flow constant",
  { ip: "cfm/(in²·√Pa)", si: "L/s/(cm²·√Pa)" },
  [0.05, 1.8],
);

export const pressure = symbol(
  "P",
  "ΔP",
  "pressure across the opening, room minus box",
  "Pa",
  [0.5, 10],
);

export const flow = symbol("Q", "Q", "air flow", { ip: "cfm", si: "L/s" }, [1, 2000]);

export const density = symbol("rho", "ρ", "air density", "kg/m³", [0.7, 1.5]);

export const floorArea = symbol(
  "A",
  "A_floor",
  "floor area",
  { ip: "ft²", si: "m²" },
  [100, 12000],
);

export const infiltration = quantity("Qinf", "Q_inf", "infiltration over a year", flow.unit);
