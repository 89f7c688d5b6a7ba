import { spend } from "../work";

/** One character of a pattern; null stands for any character. */
type Sign = string | null;

/**
 * A pattern with * for any characters, ? for one and ~ before either to mean it itself, whatever
 * the case. Each stretch between two * is looked for once, from left to right: no text makes a
 * search go back, so that the time grows with text × pattern at most.
 */
export class Wildcard {
  /** What stands between the *. */
  private readonly stretches: readonly (readonly Sign[])[];

  constructor(pattern: string) {
    const stretches: Sign[][] = [[]];
    for (let i = 0; i < pattern.length; i++) {
      const sign = pattern.charAt(i);
      const next = pattern.charAt(i + 1);
      if (sign === "~") {
        // What follows means itself; at the end it means nothing.
        if (next !== "") stretches.at(-1)?.push(next.toLowerCase());
        i++;
      } else if (sign === "*") stretches.push([]);
      else stretches.at(-1)?.push(sign === "?" ? null : sign.toLowerCase());
    }
    this.stretches = stretches;
  }

  /** Whether the whole text is of the pattern. */
  test(text: string): boolean {
    spend(6 + text.length);
    const lower = lowered(text);
    const [first = [], ...others] = this.stretches;
    if (!standsAt(first, lower, 0)) return false;
    const last = others.pop();
    if (last === undefined) return first.length === lower.length;
    const at = after(others, lower, first.length);
    return (
      at >= 0 &&
      at + last.length <= lower.length &&
      standsAt(last, lower, lower.length - last.length)
    );
  }

  /** Where a text of the pattern begins, from a place on; -1 where there is none. */
  search(text: string, from: number): number {
    spend(6 + text.length);
    const lower = lowered(text);
    const [first = [], ...others] = this.stretches;
    const start = find(first, lower, from);
    return start < 0 || after(others, lower, start + first.length) < 0 ? -1 : start;
  }
}

/** A pattern with * ? or ~ in it; undefined for a text without them. */
export function wildcard(text: string): Wildcard | undefined {
  return /[*?~]/.test(text) ? new Wildcard(text) : undefined;
}

/** Lower case character by character, so that places stay. */
function lowered(text: string): string {
  const lower = text.toLowerCase();
  if (lower.length === text.length) return lower;
  return Array.from(text, (sign) =>
    sign.toLowerCase().length === sign.length ? sign.toLowerCase() : sign,
  ).join("");
}

/** The place after the last of some stretches, each found after the one before; -1 where one is not. */
function after(stretches: readonly (readonly Sign[])[], text: string, from: number): number {
  let at = from;
  for (const stretch of stretches) {
    const found = find(stretch, text, at);
    if (found < 0) return -1;
    at = found + stretch.length;
  }
  return at;
}

function find(stretch: readonly Sign[], text: string, from: number): number {
  if (!stretch.includes(null)) return text.indexOf(stretch.join(""), from);
  for (let at = from; at + stretch.length <= text.length; at++)
    if (standsAt(stretch, text, at)) return at;
  return -1;
}

function standsAt(stretch: readonly Sign[], text: string, at: number): boolean {
  return (
    at + stretch.length <= text.length &&
    stretch.every((sign, i) => sign === null || sign === text.charAt(at + i))
  );
}
