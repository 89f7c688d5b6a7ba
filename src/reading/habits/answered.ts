import { plain } from "../text/plain";
import type { Meaning, Role } from "../types";

/** What the user has said that a word of a role means; undefined where nothing was said. */
export type Answered = (role: Role, word: string) => string | undefined;

export function answeredBy(meanings: readonly Meaning[]): Answered {
  const said = new Map<string, string>();
  const key = (role: Role, word: string) => `${role} ${plain(word) || word.trim()}`;
  for (const { role, word, means } of meanings)
    if (!said.has(key(role, word))) said.set(key(role, word), means);
  return (role, word) => (said.size === 0 ? undefined : said.get(key(role, word)));
}
