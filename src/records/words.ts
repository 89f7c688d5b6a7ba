import { fixed } from "../cells";
import type { Job } from "../job";

export function nameOf({ settings: { name } }: Job): string {
  return name === "" ? "Job without a name" : name;
}

export { count as counted } from "../job";

/** A number with so many decimals, without those that say nothing. */
export function figure(value: number, digits = 1): string {
  return Number.isFinite(value) ? fixed(value, digits) : "";
}

/** A difference with its sign. */
export function signed(value: number, digits = 1): string {
  if (!Number.isFinite(value)) return "";
  return value > 0 ? `+${figure(value, digits)}` : figure(value, digits);
}

/** A number for a cell; null for none. */
export function orNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
