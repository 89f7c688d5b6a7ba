import type { Formula } from "./formula";

export const expansibility: Formula = {
  id: "orifice-expansibility",
  title: "Expansibility factor of a sharp plate in a pipe",
  result: { name: "eps", shown: "ε", meaning: "expansibility factor", unit: "1" },
  symbols: [
    {
      name: "beta",
      shown: "β",
      meaning: "hole diameter over pipe diameter",
      unit: "1",
      valid: [0.1, 0.75],
    },
    {
      name: "p1",
      shown: "p₁",
      meaning: "absolute pressure before the plate",
      unit: "Pa",
      valid: [90000, 110000],
    },
    {
      name: "p2",
      shown: "p₂",
      meaning: "absolute pressure behind the plate",
      unit: "Pa",
      valid: [80000, 89000],
    },
    {
      name: "kappa",
      shown: "κ",
      meaning: "isentropic exponent, 1.4 for air",
      unit: "1",
      valid: [1.2, 1.67],
    },
  ],
  text: "1 - (0.351 + 0.256 * beta ^ 4 + 0.93 * beta ^ 8) * (1 - (p2 / p1) ^ (1 / kappa))",
  validity: "p₂ ≥ 0.75·p₁. At the 8 Pa of a box it differs from 1 by 0.00002 and is left out.",
  source: {
    work: "ISO 5167-2:2003",
    clause: "5.3.2.2",
    mark: "two sources",
  },
  example: {
    given: { beta: 0.3, p1: 100000, p2: 89000, kappa: 1.4 },
    gives: 0.9718,
    digits: 5,
    note: "a plate across which a tenth of the pressure falls",
  },
};
