const slots = 4096;
/** Longer texts rarely repeat. */
const longest = 40;

/** Gives the same string again for a text met before, so that a column of the same few words is one. */
export class TextPool {
  readonly #known: string[] = new Array(slots).fill("");

  /** text.slice(from, to), without making it anew where it was made lately. */
  slice(text: string, from: number, to: number): string {
    const length = to - from;
    if (length === 0) return "";
    if (length > longest) return apart(text, from, to);
    const middle = text.charCodeAt((from + to) >> 1);
    const mixed = (text.charCodeAt(from) * 31 + middle) * 31 + text.charCodeAt(to - 1) * 7 + length;
    const slot = mixed & (slots - 1);
    const known = this.#known[slot] as string;
    if (known.length === length && holds(text, from, known)) return known;
    const made = apart(text, from, to);
    this.#known[slot] = made;
    return made;
  }
}

/** text.slice(from, to) as a copy: the engine's own slice keeps the whole text in memory. */
export function apart(text: string, from: number, to: number): string {
  const start = text.slice(from, from + 1);
  return to - from < 13 ? text.slice(from, to) : [start, text.slice(from + 1, to)].join("");
}

/** Whether a short text stands at a place; text.startsWith takes several times as long for a few signs. */
export function holds(text: string, at: number, short: string): boolean {
  for (let i = 0; i < short.length; i++)
    if (text.charCodeAt(at + i) !== short.charCodeAt(i)) return false;
  return true;
}
