import type { Formula, Source } from "./formula";
import { area, constant, density, flow, pressure, quantity, symbol } from "./quantities";

const orifice: Source = {
  work: "orifice equation Q = C·A·√(2·ΔP/ρ)",
  clause: "ISO 5167-2:2003, 4 (incompressible, no approach velocity)",
  mark: "two sources",
};

export const flowFromPressure: Formula = {
  id: "flow-from-pressure",
  title: "Flow through an opening",
  result: quantity("Q", "Q", "air flow", flow.unit),
  symbols: [constant, area, pressure],
  text: "K * A * sqrt(P)",
  validity: "One sharp opening at about 1 to 8 Pa, air entering the box (exhaust fans only).",
  source: orifice,
};

export const pressureFromFlow: Formula = {
  id: "pressure-from-flow",
  title: "Pressure across an opening at a given flow",
  result: quantity("P", "ΔP", "pressure across the opening", "Pa"),
  symbols: [flow, constant, area],
  text: "(Q / (K * A)) ^ 2",
  validity: "The flow formula turned round; same validity.",
  source: orifice,
};

export const pressureAtOtherArea: Formula = {
  id: "pressure-at-other-area",
  title: "Pressure to expect after the open area is changed",
  result: quantity("P2", "ΔP₂", "pressure to expect", "Pa"),
  symbols: [
    { ...pressure, valid: [0.1, 100] },
    { ...area, shown: "A₁", meaning: "open area now" },
    { ...area, name: "A2", shown: "A₂", meaning: "open area next" },
  ],
  text: "P * (A / A2) ^ 2",
  validity: "The fan is taken to move the same flow; a weak fan gains a little as the box opens.",
  source: orifice,
};

export const areaAtPressure: Formula = {
  id: "area-at-pressure",
  title: "Open area that brings the box to a wanted pressure",
  result: quantity("A2", "A₂", "open area next", area.unit),
  symbols: [
    { ...area, shown: "A₁", meaning: "open area now" },
    { ...pressure, shown: "ΔP₁", meaning: "pressure now", valid: [0.1, 100] },
    { ...pressure, name: "P2", shown: "ΔP₂", meaning: "wanted pressure" },
  ],
  text: "A * sqrt(P / P2)",
  validity: "The fan is taken to move the same flow; a weak fan gains a little as the box opens.",
  source: orifice,
};

const coefficient = symbol("C", "C", "discharge coefficient", "1", [0.5, 1]);

/** One in² in m²; one cfm in m³/s (0.3048³/60): exact by definition of the inch and the foot. */
export const constantIp: Formula = {
  id: "flow-constant-ip",
  title: "Flow constant for in², Pa and cfm",
  result: quantity("K", "K", "flow constant", "cfm/(in²·√Pa)"),
  symbols: [coefficient, density],
  text: "C * sqrt(2 / rho) * 6.4516e-4 / 4.719474432e-4",
  validity: "Any coefficient and density; 1.07 is C = 0.6063 at 1.2 kg/m³.",
  source: orifice,
};

export const constantSi: Formula = {
  id: "flow-constant-si",
  title: "Flow constant for cm², Pa and L/s",
  result: quantity("K", "K", "flow constant", "L/s/(cm²·√Pa)"),
  symbols: [coefficient, density],
  text: "C * sqrt(2 / rho) * 0.1",
  validity: "Any coefficient and density.",
  source: orifice,
};
