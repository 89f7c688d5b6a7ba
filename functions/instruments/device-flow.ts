import { call } from "../../src/rules";

/**
 * Flow from the reading of any device: constant × reading ^ exponent.
 * @customfunction DEVICE_FLOW
 * @helpurl https://localhost:3443/help/device-flow.html
 * @param {any[][]} reading What the device shows, above 0; 0 too where the exponent is above 0.
 * @param {any[][]} constant Constant of the device at its setting, above 0.
 * @param {any[][]} [exponent] Exponent of the device; 1 where left out: the reading is a flow.
 * @returns {any[][]} Flow in the unit of the constant.
 */
export function DEVICE_FLOW(reading: any[][], constant: any[][], exponent: any[][]): any[][] {
  return call("DEVICE_FLOW", [reading, constant, exponent]);
}
