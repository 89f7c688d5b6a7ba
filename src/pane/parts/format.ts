import { shown, significant } from "../../cells";

/** A number as people read it, or a dash where there is none. */
export function orDash(value: number, unit = ""): string {
  if (Number.isNaN(value)) return "–";
  return unit === "" ? shown(value) : `${shown(value)} ${unit}`;
}

/** "9.6 to 27.2 cfm" */
export function between(low: number, high: number, unit: string): string {
  return `${shown(low)} to ${shown(high)} ${unit}`;
}

/** A flow constant with the digits that matter: 1.07, 0.07827. */
export function constantWords(value: number): string {
  return significant(value, 4);
}
