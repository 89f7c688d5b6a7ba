/** How many lines a text takes in a width of so many characters, broken at its words. */
export function linesOf(text: string, width: number): number {
  const most = Math.max(1, Math.floor(width));
  return text.split("\n").reduce((sum, part) => sum + linesOfPart(part, most), 0);
}

function linesOfPart(text: string, most: number): number {
  let lines = 1;
  let used = 0;
  for (const word of text.split(" ")) {
    const needed = used === 0 ? word.length : used + 1 + word.length;
    if (needed <= most) {
      used = needed;
      continue;
    }
    if (used > 0) lines++;
    lines += Math.ceil(word.length / most) - 1;
    used = word.length > most ? word.length % most : word.length;
  }
  return lines;
}
