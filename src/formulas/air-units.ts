import type { Formula, Source } from "./formula";
import { quantity, symbol } from "./quantities";

/** Inch-pound readings of the air, brought to what the air formulas take. */
const exact = (clause: string): Source => ({
  work: "definition of the unit",
  clause,
  mark: "by definition",
});

export const celsiusFromFahrenheit: Formula = {
  id: "celsius-from-fahrenheit",
  title: "Temperature in °C from °F",
  result: quantity("t", "t", "air temperature", "°C"),
  symbols: [symbol("F", "t_F", "air temperature", "°F", [-40, 140])],
  text: "(F - 32) / 1.8",
  validity: "Any temperature.",
  source: exact("1 °F is 5/9 K; 32 °F is 0 °C"),
};

export const pascalsFromMercury: Formula = {
  id: "pascals-from-mercury",
  title: "Barometric pressure in Pa from inches of mercury",
  result: quantity("p", "p", "barometric pressure", "Pa"),
  symbols: [symbol("B", "p_Hg", "barometric pressure", "inHg", [14.8, 32.5])],
  text: "B * 25.4 * 133.322387415",
  validity: "Conventional mercury of 13 595.1 kg/m³ at standard gravity.",
  source: exact("25.4 mm of mercury of 133.322387415 Pa each"),
};

export const metresFromFeet: Formula = {
  id: "metres-from-feet",
  title: "Elevation in m from ft",
  result: quantity("z", "z", "elevation", "m"),
  symbols: [symbol("f", "z_ft", "elevation", "ft", [-1640, 16404])],
  text: "f * 0.3048",
  validity: "Any elevation.",
  source: exact("1 ft is 0.3048 m"),
};
