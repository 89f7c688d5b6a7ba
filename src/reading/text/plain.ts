import { onceForText } from "../../cells";

const marks = /\p{M}/gu;

/** Lower case words without accents and punctuation: "Δp Kasten [Pa]" → "dp kasten pa". */
export const plain = onceForText(50_000, (text) =>
  text
    .toLowerCase()
    .normalize("NFD")
    .replace(marks, "")
    .replaceAll("ß", "ss")
    .replace(/[δ∆]/gu, "d")
    .replace(/[ø⌀]/gu, " diameter ")
    .replaceAll("²", "2")
    .replaceAll("³", "3")
    .replace(/№|\bn[°º]|#/gu, " no ")
    .replace(/[^\p{L}\p{N}%✓✔√✗✘✕×+-]+|(?<=\p{L})-|-(?=\p{L})/gu, " ")
    .replace(/\s+/g, " ")
    .trim(),
);

/** How well a written word stands for a listed one: 1 the same, 0 not at all. */
export function likeness(written: string, listed: string): number {
  if (written === listed) return 1;
  const [a, b] = [written.length, listed.length];
  if (a < 2 || b < 2) return 0;
  // A part of a compound counts: "kastendruck" for "druck".
  if (b >= 4 && a >= b + (b === 4 ? 4 : 2) && written.endsWith(listed)) return b === 4 ? 0.7 : 0.75;
  const letter = written.charCodeAt(0);
  if (letter !== listed.charCodeAt(0) || (letter >= 48 && letter <= 57)) return 0;
  if (
    b >= 3 &&
    a > b &&
    a - b <= 2 &&
    written.startsWith(listed) &&
    /^(s|es|n|en|e|er|ed|d|x)$/.test(written.slice(b))
  )
    return 0.95;
  if (a >= 3 && b > a && listed.startsWith(written)) return a === 3 && b > 8 ? 0.75 : 0.85;
  if (a >= 3 && b >= 5 && isSkeleton(written, listed)) return 0.75;
  const allowed = b >= 8 ? 2 : b >= 5 ? 1 : 0;
  if (allowed && Math.abs(a - b) <= allowed && distance(written, listed, allowed) <= allowed)
    return 0.7;
  return b >= 5 && a >= b + 2 && written.startsWith(listed) ? 0.75 : 0;
}

/** How well the words of a phrase stand in a row among the words; 0 where they do not. */
export function bestRun(
  words: readonly string[],
  phrase: readonly string[],
  like: (word: string, listed: string) => number,
): number {
  let best = 0;
  for (let at = 0; at + phrase.length <= words.length; at++) {
    let least = 1;
    for (let i = 0; i < phrase.length && least > best; i++)
      least = Math.min(least, like(words[at + i]!, phrase[i]!));
    if (least > best) best = least;
  }
  return best;
}

/** "reqd" for "required", "mtr" for "meter": the first and last letter, and letters in order. */
function isSkeleton(written: string, listed: string): boolean {
  if (written[0] !== listed[0] || written.at(-1) !== listed.at(-1)) return false;
  if (written.replace(/[aeiou]/g, "").length < written.length - 1) return false;
  let at = 0;
  for (const letter of listed) if (letter === written[at]) at++;
  return at === written.length && written.length * 3 >= listed.length;
}

/** Letters to change, add, leave out or swap; more than `most` gives any larger number. */
function distance(a: string, b: string, most: number): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, before[j - 2]! + 1);
      row.push(cost);
      if (cost < least) least = cost;
    }
    if (least > most) return least;
    before = last;
    last = row;
  }
  return last[b.length]!;
}
