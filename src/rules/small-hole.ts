import { oneValue } from "../algebra";
import { constantIp, plenumCoefficient } from "../formulas";

/** Dry air of 20 °C: kg/m³ and m²/s. */
const [density, viscosity] = [1.204, 1.51e-5];

/**
 * How far a constant reads off through a sharp round hole of this diameter (m) at this pressure (Pa),
 * as a share of the flow: −0.03 reads 3 % low. The coefficient of a hole in a plenum, extrapolated
 * from Reader-Harris and Gallagher to small holes: a guide for designing, no calibration.
 */
export function holeError(diameter: number, pressure: number, constant: number): number {
  const ideal = Math.sqrt((2 * pressure) / density);
  let C = 0.61;
  // The Reynolds number follows from the coefficient; a handful of rounds settles both.
  for (let i = 0; i < 8; i++)
    C = oneValue(plenumCoefficient, { Re: (C * ideal * diameter) / viscosity });
  return constant / oneValue(constantIp, { C, rho: density }) - 1;
}
