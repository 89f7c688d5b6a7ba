import { grouped } from "../../cells";
import type { Cells } from "../cells/cells";
import { Kind } from "../cells/cells";
import type { LineHeading, Section } from "./section";

/** Cuts a section whose headings repeat into one a card, so that the cards are judged together. */
export function cutCards(section: Section): Section[] {
  const starts = cardStarts(section.headings);
  if (starts.length < 2) return [section];
  const first = starts[0]!;
  const made = starts.map((start, at) => {
    const end = starts[at + 1] ?? Number.POSITIVE_INFINITY;
    const shift = start - first;
    const headings = new Map<number, LineHeading>();
    for (const [line, heading] of section.headings)
      if (line >= start && line < end) headings.set(line - shift, heading);
    const records = section.records.filter((row) =>
      hasNumber(section.cells, row, start, Math.min(end, section.cells.cols)),
    );
    return { ...section, shift, headings, records, texts: [], totals: [] };
  });
  const [model] = made;
  const alike = made.filter(({ headings }) => sameShare(model!.headings, headings) >= 0.6).length;
  return alike >= made.length * 0.8 ? made.filter(({ records }) => records.length > 0) : [section];
}

/** Where a label that recurs most often stands, first such label first. */
function cardStarts(headings: ReadonlyMap<number, LineHeading>): number[] {
  const nameOf = ({ text }: LineHeading) => text.trim().toLowerCase();
  const own = [...headings].filter(([, each]) => !each.parents.length && nameOf(each) !== "");
  const repeated = [...grouped(own, ([, heading]) => nameOf(heading)).values()]
    .map((same) => same.map(([line]) => line))
    .filter((lines) => lines.length > 1);
  const most = Math.max(0, ...repeated.map((lines) => lines.length));
  if (repeated.filter((lines) => lines.length === most).length < 3) return [];
  return repeated.filter((lines) => lines.length === most).sort((a, b) => a[0]! - b[0]!)[0] ?? [];
}

function sameShare(
  a: ReadonlyMap<number, LineHeading>,
  b: ReadonlyMap<number, LineHeading>,
): number {
  let same = 0;
  for (const [line, { text }] of a)
    if (b.get(line)?.text.trim().toLowerCase() === text.trim().toLowerCase()) same++;
  return same / Math.max(a.size, b.size, 1);
}

function hasNumber(cells: Cells, row: number, from: number, to: number): boolean {
  for (let col = from; col < to; col++) {
    const kind = cells.kind(row, col);
    if ((kind === Kind.number || kind === Kind.textNumber) && !cells.hasFormula(row, col))
      return true;
  }
  return false;
}
