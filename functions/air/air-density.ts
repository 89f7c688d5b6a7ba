import { call } from "../../src/rules";

/**
 * Density of the air at the fan, from its temperature and what is known of its pressure.
 * @customfunction AIR_DENSITY
 * @helpurl https://localhost:3443/help/air-density.html
 * @param {any[][]} temperature Air temperature, °F (°C for "si"): one cell or a range.
 * @param {any[][]} [humidity] Relative humidity, %; 50 where blank or left out.
 * @param {any[][]} [barometer] Barometer at the place, inHg (hPa for "si"); it wins over the elevation.
 * @param {any[][]} [elevation] Elevation, ft (m for "si"); sea level where blank or left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Density, kg/m³ in both systems; 1.2 kg/m³ is 0.075 lb/ft³.
 */
export function AIR_DENSITY(
  temperature: any[][],
  humidity: any[][],
  barometer: any[][],
  elevation: any[][],
  units: any,
): any[][] {
  return call("AIR_DENSITY", [temperature, humidity, barometer, elevation, units]);
}
