import { dutch } from "./dutch";
import { english } from "./english";
import { french } from "./french";
import { german } from "./german";
import type { Language } from "./language";
import { spanish } from "./spanish";

export type { Language } from "./language";

/** The languages that are read. Another is one more file. */
export const languages: readonly Language[] = [english, german, french, spanish, dutch];

/** The phrases of a list, without the spaces around its commas. */
export function phrasesOf(list: string): string[] {
  return list.split(",").map((phrase) => phrase.trim());
}
