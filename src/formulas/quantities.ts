import type { Quantity } from "./formula";

/** The symbols that several formulas share, so that one name means one thing everywhere. */
export const area: Quantity = {
  name: "A",
  shown: "A",
  meaning: "open area",
  unit: { ip: "in²", si: "cm²" },
  valid: [0.1, 1000],
};

export const constant: Quantity = {
  name: "K",
  shown: "K",
  meaning: "flow constant",
  unit: { ip: "cfm/(in²·√Pa)", si: "L/s/(cm²·√Pa)" },
  valid: [0.05, 1.8],
};

export const pressure: Quantity = {
  name: "P",
  shown: "ΔP",
  meaning: "pressure across the opening, room minus box",
  unit: "Pa",
  valid: [0.5, 10],
};

export const flow: Quantity = {
  name: "Q",
  shown: "Q",
  meaning: "air flow",
  unit: { ip: "cfm", si: "L/s" },
  valid: [1, 2000],
};

export const density: Quantity = {
  name: "rho",
  shown: "ρ",
  meaning: "air density",
  unit: "kg/m³",
  valid: [0.7, 1.5],
};

export const floorArea: Quantity = {
  name: "A",
  shown: "A_floor",
  meaning: "floor area",
  unit: { ip: "ft²", si: "m²" },
  valid: [100, 12000],
};

export const infiltration = {
  name: "Qinf",
  shown: "Q_inf",
  meaning: "infiltration over a year",
  unit: flow.unit,
};
