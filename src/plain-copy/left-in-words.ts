import type { LeftCell } from "./left";

/** Cells named of one reason; the rest are counted. */
const mostNamed = 3;

/** What could not be replaced, a line for each reason: why, and where. */
export function leftInWords(left: readonly LeftCell[]): string[] {
  const byReason = new Map<string, string[]>();
  for (const { sheet, cell, why } of left) {
    const places = byReason.get(why) ?? [];
    byReason.set(why, places);
    places.push(sheet === "" ? cell : `${sheet}!${cell}`);
  }
  return [...byReason].map(([why, places]) => {
    const rest = places.length - mostNamed;
    const named = places.slice(0, mostNamed).join(", ");
    return `${why}: ${named}${rest > 0 ? ` and ${rest} more` : ""}`;
  });
}
