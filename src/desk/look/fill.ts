import { luminance } from "./contrast";
import type { ThemeName } from "./theme-name";

/** Fills above this luminance glare on a dark page. */
const glaring = 0.3;
/** Ground of the dark theme, and the part of a glaring fill that is mixed into it. */
const darkGround = "#292929";
const share = 0.1;
/** Brightest channel of a glaring mark in the dark theme. */
const deepest = 135;

/** A fill of the workbook as a theme shows it: dimmed where it would glare, none in strong contrast. */
export function fillIn(theme: ThemeName, fill: string | null): string | null {
  if (fill === null || theme === "contrast") return null;
  if (theme === "light" || luminance(fill) <= glaring) return fill;
  return each(fill, (part, at) => part * share + channel(darkGround, at) * (1 - share));
}

/** The fill of a mark likewise: in the dark its hue is deepened, so that kinds of marks stay apart. */
export function markIn(theme: ThemeName, fill: string): string | null {
  if (theme === "contrast") return null;
  if (theme === "light" || luminance(fill) <= glaring) return fill;
  return each(fill, (part) => (part / 255) ** 3 * deepest);
}

const channel = (color: string, at: number) => Number.parseInt(color.slice(at, at + 2), 16);

function each(color: string, change: (part: number, at: number) => number): string {
  const parts = [1, 3, 5].map((at) =>
    Math.round(change(channel(color, at), at))
      .toString(16)
      .padStart(2, "0"),
  );
  return `#${parts.join("")}`;
}
