const anchors = [
  /^([A-Z]+)(\d+)$/i,
  /^\$([A-Z]+)\$(\d+)$/i,
  /^([A-Z]+)\$(\d+)$/i,
  /^\$([A-Z]+)(\d+)$/i,
];
const written = ["$1$2", "$$$1$$$2", "$1$$$2", "$$$1$2"] as const;

/** A formula with the reference at the caret held in its next way: A1, $A$1, A$1, $A1; and the caret behind it. */
export function anchored(formula: string, caret: number): { text: string; caret: number } {
  for (const { 0: ref, index } of formula.matchAll(/\$?[A-Z]{1,3}\$?\d+/gi)) {
    const end = index + ref.length;
    if (!formula.startsWith("=") || caret < index || caret > end) continue;
    const way = anchors.findIndex((pattern) => pattern.test(ref));
    const next = ref.replace(anchors[way] as RegExp, written[(way + 1) % 4] as string);
    return {
      text: formula.slice(0, index) + next + formula.slice(end),
      caret: index + next.length,
    };
  }
  return { text: formula, caret };
}
