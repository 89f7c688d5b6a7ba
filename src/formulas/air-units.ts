import type { Formula, Source } from "./formula";

/** Inch-pound readings of the air, brought to what the air formulas take. */
const exact = (clause: string): Source => ({
  work: "definition of the unit",
  clause,
  mark: "by definition",
});

export const celsiusFromFahrenheit: Formula = {
  id: "celsius-from-fahrenheit",
  title: "Temperature in °C from °F",
  result: { name: "t", shown: "t", meaning: "air temperature", unit: "°C" },
  symbols: [{ name: "F", shown: "t_F", meaning: "air temperature", unit: "°F", valid: [-40, 140] }],
  text: "(F - 32) / 1.8",
  validity: "Any temperature.",
  source: exact("1 °F is 5/9 K; 32 °F is 0 °C"),
  example: { given: { F: 68 }, gives: 20, digits: 6, note: "a room" },
};

export const pascalsFromMercury: Formula = {
  id: "pascals-from-mercury",
  title: "Barometric pressure in Pa from inches of mercury",
  result: { name: "p", shown: "p", meaning: "barometric pressure", unit: "Pa" },
  symbols: [
    { name: "B", shown: "p_Hg", meaning: "barometric pressure", unit: "inHg", valid: [14.8, 32.5] },
  ],
  text: "B * 25.4 * 133.322387415",
  validity: "Conventional mercury of 13 595.1 kg/m³ at standard gravity.",
  source: exact("25.4 mm of mercury of 133.322387415 Pa each"),
  example: { given: { B: 29.92 }, gives: 101321, digits: 0, note: "sea level" },
};

export const metresFromFeet: Formula = {
  id: "metres-from-feet",
  title: "Elevation in m from ft",
  result: { name: "z", shown: "z", meaning: "elevation", unit: "m" },
  symbols: [{ name: "f", shown: "z_ft", meaning: "elevation", unit: "ft", valid: [-1640, 16404] }],
  text: "f * 0.3048",
  validity: "Any elevation.",
  source: exact("1 ft is 0.3048 m"),
  example: { given: { f: 5000 }, gives: 1524, digits: 6, note: "a mile, nearly" },
};
