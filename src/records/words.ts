import { fixed } from "../cells";

/** A number with so many decimals, without those that say nothing. */
export function figure(value: number, digits = 1): string {
  return Number.isFinite(value) ? fixed(value, digits) : "";
}

/** A difference with its sign. */
export function signed(value: number, digits = 1): string {
  if (!Number.isFinite(value)) return "";
  return value > 0 ? `+${figure(value, digits)}` : figure(value, digits);
}

/** "1 fan", "3 fans". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** A number for a cell; null for none. */
export function orNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
