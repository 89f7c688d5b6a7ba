import { longestSheetName } from "../cells";

/** The name with a number behind it, within the length that a name can have. */
function numbered(name: string, number: number): string {
  const tail = ` ${number}`;
  return `${name.slice(0, longestSheetName - tail.length).trimEnd()}${tail}`;
}

/** A sheet as it matters to where a plan goes. */
interface KnownSheet {
  readonly name: string;
  /** What stands in A1. */
  readonly first: unknown;
}

/** Where a plan goes: into the sheet made from it before, or under a name that is free. */
export function placeOf(
  plan: { readonly name: string; readonly mark: string },
  sheets: readonly KnownSheet[],
): { readonly name: string; readonly isThere: boolean } {
  const byName = new Map(sheets.map((sheet) => [sheet.name.toLowerCase(), sheet]));
  let name = plan.name;
  for (let number = 2; ; number++) {
    const known = byName.get(name.toLowerCase());
    if (known === undefined) return { name, isThere: false };
    if (known.first === plan.mark) return { name: known.name, isThere: true };
    name = numbered(plan.name, number);
  }
}
