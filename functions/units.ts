import type { System } from "../src/editions";
import { invalid } from "./problem";
import { isBlank, toMatrix } from "./rows";

/** The `units` argument: "ip" where it is left out or blank. */
export function readUnits(argument: unknown): System {
  const cell = toMatrix(argument)[0]?.[0];
  if (isBlank(cell)) return "ip";
  const text = String(cell).trim().toLowerCase();
  if (text === "ip" || text === "si") return text;
  throw invalid(`units "${String(cell)}": use "ip" (in², Pa, cfm, ft²) or "si" (cm², Pa, L/s, m²)`);
}

/** A number above zero, as most sizes must be. */
export function aboveZero(value: number): string | undefined {
  return value > 0 ? undefined : "give a number above 0";
}

/** A pressure that can be turned into a flow. */
export function notNegative(value: number): string | undefined {
  return value >= 0
    ? undefined
    : "negative: exhaust makes the box negative to the room; read room minus box, or swap the hoses";
}
