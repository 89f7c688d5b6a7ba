import { onceForText } from "../../cells";
import type { RoomKind } from "../types";
import { type Language, languages, phrasesOf } from "../words";
import { longestLine } from "./heading";
import { bestRun, likeness, plain } from "./plain";

/** What a word in a cell may mean, whatever its column. */
interface CellWord {
  readonly room: RoomKind | undefined;
  readonly duty: "continuous" | "on demand" | undefined;
  readonly verdict: "pass" | "fail" | "neither" | undefined;
  /** Begins as a dwelling's name does: "Lot 7". */
  readonly dwelling: boolean;
  /** A label of a total, a mean or a count. */
  readonly total: boolean;
}

type Listed<T = unknown> = readonly {
  readonly words: readonly string[];
  readonly text: string;
  readonly value: T;
}[];

function listed<T>(pick: (language: Language) => readonly (readonly [string, T])[]): Listed<T> {
  return languages.flatMap((language) =>
    pick(language).flatMap(([list, value]) =>
      phrasesOf(list).map((phrase) => ({
        text: plain(phrase),
        words: plain(phrase).split(" "),
        value,
      })),
    ),
  );
}

const roomWords = listed((language) =>
  Object.entries(language.rooms).map(([kind, list]) => [list, kind as RoomKind] as const),
);
const dutyWords = listed(({ duties }) => [
  [duties.continuous, "continuous" as const],
  [duties["on demand"], "on demand" as const],
]);
const verdictWords = listed(({ verdicts }) => [
  [verdicts.fail, "fail" as const],
  [verdicts.neither, "neither" as const],
  [verdicts.pass, "pass" as const],
]);
const dwellingWords = new Set(
  languages.flatMap(({ dwellings }) => phrasesOf(dwellings).map(plain)),
);
const totalWords = new Set(languages.flatMap(({ totals }) => phrasesOf(totals).map(plain)));
const otherTests = listed(({ otherTests }) => [[otherTests, true]]);
const retests = listed(({ retest }) => [[retest, true]]);
const fanTests = listed(({ fanTests }) => [[fanTests, true]]);

/** Looks a cell's text up in every language's lists. */
export const cellWord = onceForText(50_000, (text) => lookUp(text.slice(0, longestLine)));

function lookUp(text: string): CellWord {
  const name = plain(text) || text.trim();
  const words = name.split(" ");
  const first = words[0] ?? "";
  return {
    room: find(name, words, roomWords, true),
    duty: find(name, words, dutyWords, true),
    verdict: find(name, words, verdictWords, false),
    dwelling:
      (dwellingWords.has(first) && (words.length > 1 || /\d/.test(name))) ||
      /^(we|whg|apt|lot|log)\d+/.test(first),
    total: totalWords.has(name) || (totalWords.has(first) && words.length <= 3),
  };
}

/** The longest phrase that stands among the words; with `within` off, the words must be just it. */
function find<T>(
  name: string,
  words: readonly string[],
  list: Listed<T>,
  within: boolean,
): T | undefined {
  let best: T | undefined;
  let score = 0;
  for (const entry of list) {
    if (entry.text === name) return entry.value;
    if (entry.words.length > words.length) continue;
    if (!within && entry.words.length !== words.length) continue;
    // A lone letter counts only where it is the whole text.
    if (entry.text.length < 2) continue;
    const found = standsIn(words, entry.words);
    const value = found * (entry.text.length + entry.words.length * 2);
    if (found > 0 && value > score) {
      score = value;
      best = entry.value;
    }
  }
  return best;
}

function standsIn(words: readonly string[], phrase: readonly string[]): number {
  return bestRun(words, phrase, (word, listed) => {
    const like = likeness(word.replace(/(?<=\D)\d+$/, ""), listed);
    // Short words are too often other words to be taken by halves.
    return listed.length < 4 && like < 0.95 ? 0 : like;
  });
}

/** Whether a title or a sheet's name speaks of another test than one of exhaust fans. */
export function ofOtherTest(text: string): boolean {
  return speaksOf(text, otherTests);
}

export function ofFanTest(text: string): boolean {
  return speaksOf(text, fanTests);
}

export function ofRetest(text: string): boolean {
  return speaksOf(text, retests);
}

function speaksOf(text: string, list: Listed): boolean {
  const words = plain(text).split(" ");
  return list.some(
    ({ words: phrase, text: listed }) =>
      standsIn(words, phrase) >= (listed.length < 8 ? 0.95 : 0.7),
  );
}
