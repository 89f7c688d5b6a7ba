import { onceForText } from "../../cells";
import { findUnit, type UnitEntry } from "../../units";
import { type RoleOrOther, rolesAndOther } from "../roles";
import { languages, phrasesOf } from "../words";
import { bestRun, likeness, plain } from "./plain";

/** A heading taken apart. */
export interface HeadingWords {
  readonly unit: UnitEntry | undefined;
  /** The words beside the unit. */
  readonly name: string;
  /** How strongly the words tell each role, and the phrase that told it. */
  readonly told: ReadonlyMap<RoleOrOther, { readonly weight: number; readonly phrase: string }>;
}

interface Phrase {
  readonly role: RoleOrOther;
  readonly weight: number;
  readonly text: string;
  readonly words: readonly string[];
}

const phrases: readonly Phrase[] = languages.flatMap((language) =>
  rolesAndOther.flatMap((role) =>
    Object.entries(language.headings[role] ?? {}).flatMap(([weight, list]) =>
      phrasesOf(list).map((text) => ({
        role,
        weight: Number(weight),
        text,
        words: plain(text).split(" "),
      })),
    ),
  ),
);

const phraseNames = new Set(phrases.map(({ words }) => words.join(" ")));

/** What a heading or a word of a cell says stands in so many characters; the rest is prose. */
export const longestLine = 300;

/** What a heading says, in any of the languages. */
export const readHeading = onceForText(20_000, (text): HeadingWords => {
  const { unit, rest } = takeUnit(text.slice(0, longestLine));
  const name = plain(rest);
  const words = name === "" ? [] : name.split(" ");
  const told = new Map<RoleOrOther, { weight: number; phrase: string }>();
  // A heading that is a phrase word for word is no slip or beginning of another.
  const isPhrase = phraseNames.has(name);
  for (const phrase of phrases) {
    const found = bestRun(words, phrase.words, likeness);
    if (found === 0 || (isPhrase && found < 1)) continue;
    const covered = phrase.words.length / words.length;
    const weight = phrase.weight * found * Math.min(1, covered) ** 0.35;
    if (weight > (told.get(phrase.role)?.weight ?? 0))
      told.set(phrase.role, { weight, phrase: phrase.text });
  }
  return { unit, name, told };
});

/** Letters that are more often a word or a label than a unit, unless they stand in brackets. */
const doubtful = new Set(["in", "m", "a", "ft", "cm", '"']);

/** Finds the unit, in brackets, after a comma, or anywhere among the words; the last one counts. */
export function takeUnit(text: string): { unit: UnitEntry | undefined; rest: string } {
  const flat = text.replace(/\s+/g, " ").trim();
  for (const bracket of flat.matchAll(/[([]([^)\]]+)[)\]]/g)) {
    const unit = findUnit(bracket[1]!.replace(/^in\s+(?=\S{2,})/i, "")) ?? findUnit(bracket[1]!);
    if (unit) return { unit, rest: flat.replace(bracket[0], " ") };
  }
  const whole = findUnit(flat);
  if (whole && flat.length > 1 && flat.toLowerCase() !== "in") return { unit: whole, rest: "" };
  const words = flat.split(/[\s,;:()[\]]+/).filter((word) => word !== "");
  for (let size = Math.min(3, words.length); size > 0; size--)
    for (let at = words.length - size; at >= 0; at--) {
      const candidate = words.slice(at, at + size).join(" ");
      const unit = findUnit(candidate) ?? findUnit(candidate.replace(/\.$/, ""));
      if (!unit || candidate.length < 2) continue;
      const sure = at + size === words.length && /,\s*\S+$/.test(flat);
      if (
        doubtful.has(candidate.toLowerCase()) &&
        !sure &&
        !(at === words.length - 1 && candidate === "cm")
      )
        continue;
      return { unit, rest: [...words.slice(0, at), ...words.slice(at + size)].join(" ") };
    }
  return { unit: undefined, rest: flat };
}
