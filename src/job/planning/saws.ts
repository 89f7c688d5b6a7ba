import type { System } from "../../editions";

const eighths = (from: number, to: number, step: number) =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);

/** Diameters of hole saws as they are commonly sold, in inches and in centimetres (common practice). */
export const holeSaws: Record<System, readonly number[]> = {
  ip: [...eighths(0.75, 4.25, 0.125), 4.5, 5, 6],
  si: [
    ...[1.9, 2.2, 2.5, 2.9, 3.2, 3.5, 3.8, 4.4, 5.1, 5.7, 6.4, 6.8, 7.6, 8.3, 8.9],
    ...[10.2, 11.4, 12.7, 15.2],
  ],
};

/** Inches as a workshop writes them: 4 3/16. Rounded to the nearest sixteenth. */
export function inSixteenths(inches: number): string {
  const sixteenths = Math.round(inches * 16);
  const whole = Math.floor(sixteenths / 16);
  let top = sixteenths % 16;
  let bottom = 16;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return String(whole);
  return whole > 0 ? `${whole} ${top}/${bottom}` : `${top}/${bottom}`;
}
