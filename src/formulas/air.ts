import type { Formula, Source } from "./formula";
import { density, flow, quantity, step, symbol } from "./quantities";

const temperature = symbol("t", "t", "air temperature", "°C", [1, 50]);
const barometer = symbol("p", "p", "barometric pressure", "Pa", [60000, 110000]);
const humidity = symbol("h", "φ", "relative humidity, 0 to 1", "1", [0, 1]);
const result = quantity("rho", "ρ", "air density", "kg/m³");
const kelvin = step("T", "T", "absolute temperature", "K", "t + 273.15");
const ashrae: Source = {
  work: "ASHRAE Handbook of Fundamentals 2017",
  clause: "ch. 1, eq. 6, 20, 26 and 28",
  mark: "read",
};

const humidityRatio = step(
  "W",
  "W",
  "humidity ratio",
  "kg/kg",
  "0.621945 * h * pws / (p - h * pws)",
);

export const densityMoistAir: Formula = {
  id: "density-moist-air",
  title: "Density of moist air",
  result,
  symbols: [temperature, { ...barometer, valid: [50000, 110000] }, humidity],
  steps: [
    kelvin,
    step(
      "pws",
      "p_ws",
      "saturation pressure over water",
      "Pa",
      "exp(-5.8002206e3 / T + 1.3914993 - 4.8640239e-2 * T + 4.1764768e-5 * T ^ 2 - 1.4452093e-8 * T ^ 3 + 6.5459673 * log(T))",
    ),
    humidityRatio,
  ],
  text: "(1 + W) * p / (287.042 * T * (1 + 1.607858 * W))",
  validity: "Above 0.01 °C; ideal-gas mixture, within 0.05 % of the metrology formula.",
  source: ashrae,
};

/** The same below freezing, where the vapour is in balance with ice. */
export const densityOverIce: Formula = {
  ...densityMoistAir,
  id: "density-over-ice",
  title: "Density of moist air below freezing",
  symbols: [
    { ...temperature, valid: [-40, 0.01] },
    { ...barometer, valid: [50000, 110000] },
    humidity,
  ],
  steps: [
    kelvin,
    step(
      "pws",
      "p_ws",
      "saturation pressure over ice",
      "Pa",
      "exp(-5.6745359e3 / T + 6.3925247 - 9.677843e-3 * T + 6.2215701e-7 * T ^ 2 + 2.0747825e-9 * T ^ 3 - 9.484024e-13 * T ^ 4 + 4.1635019 * log(T))",
    ),
    humidityRatio,
  ],
  validity: "0.01 °C and below; ideal-gas mixture.",
  source: { ...ashrae, clause: "ch. 1, eq. 5, 20, 26 and 28" },
};

const atmosphere: Source = { ...ashrae, clause: "ch. 1, eq. 3", mark: "two sources" };

export const pressureAtElevation: Formula = {
  id: "pressure-at-elevation",
  title: "Barometric pressure of the standard atmosphere",
  result: quantity("p", "p", "barometric pressure", "Pa"),
  symbols: [symbol("z", "z", "elevation", "m", [-500, 11000])],
  text: "101325 * (1 - 2.25577e-5 * z) ^ 5.2559",
  validity: "−500 to 11 000 m.",
  source: atmosphere,
};

export const densityFactor: Formula = {
  id: "density-factor",
  title: "Factor from the flow at the density behind the constant to that of the air at hand",
  result: quantity("F", "F", "air factor", "1"),
  symbols: [
    symbol("rho0", "ρ₀", "density behind the constant", "kg/m³", [0.7, 1.5]),
    symbol("rho", "ρ", "density at the fan", "kg/m³", [0.7, 1.5]),
  ],
  text: "sqrt(rho0 / rho)",
  validity: "Same opening and pressure. Some standards correct for air, some do not.",
  source: { work: "orifice equation", clause: "Q ∝ 1/√ρ", mark: "by definition" },
};

export const standardFlow: Formula = {
  id: "standard-flow",
  title: "The same mass of air as a flow of reference air",
  result: quantity("Q0", "Q₀", "flow at the reference density", flow.unit),
  symbols: [
    { ...flow, meaning: "actual flow" },
    { ...density, meaning: "density at the fan" },
    {
      ...density,
      name: "rho0",
      shown: "ρ₀",
      meaning: "reference density",
      valid: [1, 1.4],
    },
  ],
  text: "Q * rho / rho0",
  validity: "Fan ratings are at reference air; required rates are volumes of the air at hand.",
  source: { work: "conservation of mass", clause: "Q₀·ρ₀ = Q·ρ", mark: "by definition" },
};
