import { onceForText } from "../../cells";
import { findUnit, type UnitEntry } from "../../units";

/** A heading taken apart: what it names, and the unit written in it. */
export interface Heading {
  readonly text: string;
  /** Lower case, without unit and punctuation. */
  readonly name: string;
  readonly unit: UnitEntry | undefined;
}

/** What is longer is prose. */
const longest = 300;

/**
 * Takes "Pressure (Pa)", "Rated flow [L/s]", "Area, sq in" or "Nameplate CFM" apart. A unit may
 * stand in brackets, after a comma or as the last words.
 */
export function readHeading(text: string): Heading {
  const flat = text.slice(0, longest).replace(/\s+/g, " ").trim();
  const bracketed = /^(.*?)[([]([^)\]]+)[)\]]\s*$/.exec(flat);
  if (bracketed) {
    const unit = findUnit(bracketed[2] ?? "");
    if (unit) return { text: flat, name: plainName(bracketed[1] ?? ""), unit };
  }
  const words = flat.split(/[\s,]+/);
  for (let count = Math.min(3, words.length); count > 0; count--) {
    const unit = findUnit(words.slice(-count).join(" "));
    // A lone letter such as "m" is more often a word than a unit.
    if (unit && words.slice(-count).join("").length > 1)
      return { text: flat, name: plainName(words.slice(0, -count).join(" ")), unit };
  }
  return { text: flat, name: plainName(flat), unit: undefined };
}

/** Lower case words with single spaces; "#" kept, since "Fan #" means something. */
export const plainName = onceForText(50_000, (text) =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}#]+/gu, " ")
    .trim(),
);
