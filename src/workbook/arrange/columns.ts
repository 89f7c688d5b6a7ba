import { maxCols } from "../../cells";
import { mergedAttributes, type SheetFrame } from "./frame";
import type { Arrangement } from "./spec";

type Attributes = Record<string, string>;

/** Writes widths and hiding of columns; what else the file says of them stays. */
export function arrangeColumns(frame: SheetFrame, changes: Arrangement): void {
  const { widths = new Map(), hiddenCols = new Map() } = changes;
  const touched = [...new Set([...widths.keys(), ...hiddenCols.keys()])].sort((a, b) => a - b);
  if (touched.length === 0) return;
  const wanted = (col: number): Record<string, string | null> => {
    const set: Record<string, string | null> = {};
    const width = widths.get(col);
    if (width === null) Object.assign(set, { width: null, customWidth: null, bestFit: null });
    else if (width !== undefined) Object.assign(set, { width: String(width), customWidth: "1" });
    const hidden = hiddenCols.get(col);
    if (hidden !== undefined) set.hidden = hidden ? "1" : null;
    return set;
  };
  const list = frame.first("cols");
  const pieces: { first: number; xml: string }[] = [];
  const written = new Set<number>();
  for (const element of list?.children ?? []) {
    const first = Number(element.attributes.min) - 1;
    const last = Math.min(maxCols, Number(element.attributes.max)) - 1;
    const inside = touched.filter((col) => col >= first && col <= last && !written.has(col));
    if (inside.length === 0) {
      pieces.push({ first, xml: frame.doc.raw(element) });
      continue;
    }
    let next = first;
    const piece = (from: number, to: number, attributes: Attributes) => {
      if (from > to) return;
      const places = { min: String(from + 1), max: String(to + 1) };
      pieces.push({ first: from, xml: frame.element("col", { ...attributes, ...places }) });
    };
    for (const col of inside) {
      piece(next, col - 1, element.attributes);
      piece(col, col, mergedAttributes(element.attributes, wanted(col)));
      written.add(col);
      next = col + 1;
    }
    piece(next, last, element.attributes);
  }
  for (const col of touched) {
    if (written.has(col)) continue;
    const own = mergedAttributes({}, wanted(col));
    if (Object.keys(own).length === 0) continue;
    const places = { min: String(col + 1), max: String(col + 1) };
    pieces.push({ first: col, xml: frame.element("col", { ...places, ...own }) });
  }
  const inner = pieces.sort((a, b) => a.first - b.first).map(({ xml }) => xml);
  frame.put("cols", inner.length === 0 ? "" : frame.element("cols", {}, inner.join("")));
}
