import { call } from "../../src/rules";

/**
 * Factor that makes the actual flow of a flow worked out with a constant for reference air.
 * @customfunction AIR_FACTOR
 * @helpurl https://localhost:3443/help/air-factor.html
 * @param {any[][]} density Density of the air, kg/m³, as AIR_DENSITY gives it: one cell or a range.
 * @param {any[][]} [reference] Density behind the constant, kg/m³; 1.2 where left out.
 * @returns {any[][]} Factor to multiply the flow by: √(reference ÷ density).
 */
export function AIR_FACTOR(density: any[][], reference: any[][]): any[][] {
  return call("AIR_FACTOR", [density, reference]);
}
