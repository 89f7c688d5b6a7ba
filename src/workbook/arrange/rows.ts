import { scanSheet } from "../sheet-scan";
import { applySplices, type Splice } from "../splice";
import { openingTag } from "../tree";
import { mergedAttributes } from "./frame";
import type { Arrangement } from "./spec";

/** The sheet's text with rows shown, hidden or made as high as asked; their cells stay as they are. */
export function arrangeRows(
  part: string,
  text: string,
  depth: number,
  { hiddenRows = new Map(), heights = new Map() }: Arrangement,
): string {
  const rows = [...new Set([...hiddenRows.keys(), ...heights.keys()])].sort((a, b) => a - b);
  if (rows.length === 0) return text;
  const wanted = (row: number): Record<string, string | null> => {
    const set: Record<string, string | null> = {};
    const height = heights.get(row);
    if (height === null) Object.assign(set, { ht: null, customHeight: null });
    else if (height !== undefined) Object.assign(set, { ht: String(height), customHeight: "1" });
    const hidden = hiddenRows.get(row);
    if (hidden !== undefined) set.hidden = hidden ? "1" : null;
    return set;
  };
  const asked = new Set(rows);
  const scan = scanSheet(part, text, depth, (row) => asked.has(row));
  const splices: Splice[] = [];
  const met = new Set<number>();
  for (const { row, tag, start, openEnd } of scan.rows) {
    met.add(row);
    const attributes = mergedAttributes(tag.attributes, wanted(row));
    splices.push({
      start,
      end: openEnd,
      text: openingTag(tag.name, attributes, tag.isSelfClosing),
    });
  }
  const { prefix, rowNumbers, rowStarts, sheetData } = scan;
  const added = rows.flatMap((row) => {
    const own = mergedAttributes({}, wanted(row));
    if (met.has(row) || Object.keys(own).length === 0) return [];
    const xml = openingTag(`${prefix}row`, { r: String(row + 1), ...own }, true);
    return [{ row, xml }];
  });
  if (sheetData.tag.isSelfClosing && added.length > 0) {
    const { name, attributes } = sheetData.tag;
    const inner = added.map(({ xml }) => xml).join("");
    const opened = `${openingTag(name, attributes, false)}${inner}</${name}>`;
    splices.push({ start: sheetData.start, end: sheetData.openEnd, text: opened });
  } else
    for (const { row, xml } of added) {
      const next = rowNumbers.findIndex((number) => number > row);
      const at = rowStarts[next] ?? sheetData.closeStart;
      splices.push({ start: at, end: at, text: xml });
    }
  return applySplices(text, splices);
}
