import { parseRange, toRef } from "../../workbook";
import type { Area } from "../book";

/** Where a typed address leads. */
export type Place = Omit<Area, "sheet"> & { readonly sheet: string | null };

/** "C5", "B2:C9" or "Fans!C5" as a place, or null for any other text. The case does not matter. */
export function readPlace(text: string): Place | null {
  const match =
    /^(?:(?:'((?:[^']|'')+)'|([^'!]+))!)?(\$?[a-z]{1,3}\$?\d{1,7}(?::\$?[a-z]{1,3}\$?\d{1,7})?)$/i.exec(
      text.trim(),
    );
  if (!match) return null;
  const [, quoted, plain, cells] = match;
  try {
    const range = parseRange((cells as string).toUpperCase());
    return { sheet: quoted?.replaceAll("''", "'") ?? plain ?? null, ...range };
  } catch {
    return null;
  }
}

/** "C5" for one cell, "C5:D9" for more. */
export function placeName({ top, left, bottom, right }: Omit<Area, "sheet">): string {
  const first = toRef(top, left);
  return top === bottom && left === right ? first : `${first}:${toRef(bottom, right)}`;
}
