import { kept } from "../../cells";
import type { Book } from "../formulas/book";
import { testsOf } from "../formulas/tests";
import type { Label } from "../tables/labels";
import { readHeading } from "../text/heading";
import { dayIn, looksLikeDay } from "../text/number";
import { cellWord } from "../text/vocabulary";
import type { FieldValue, Role } from "../types";
import type { SheetBlock, Told } from "./block";

/** Finds what is told for a field that has no line: headings, lines above, labels, the sheet's name. */
export function tellerOf(block: SheetBlock, book: Book, manySheets: boolean): Told {
  const { from, listing, cells, labels } = block;
  const memo = new Map<string, FieldValue | null>();
  const known = (key: string, make: () => FieldValue | null) => kept(memo, key, make);
  return (index, role) => {
    const row = block.fans[index]!;
    if (role === "room") {
      const { room } = from.part;
      if (!room) return null;
      const top = listing.sections[0]!.band.at(-1) ?? 0;
      return {
        value: room.text,
        place: cells.place(Math.max(0, top), room.line + listing.shifts[index]!),
        from: "heading",
      };
    }
    if (role === "required")
      return (
        known(`required ${row}`, () => inVerdict(block, index, book)) ??
        known("required above", () => aboveHeadings(block))
      );
    if (role !== "dwelling" && role !== "tester" && role !== "date") return null;
    const group = listing.groups[index]!;
    if (group >= 0) {
      const above = known(`${role} above ${group}`, () => inLine(block, group, role));
      if (above) return above;
    }
    const section = listing.sections.find(
      (part) => part.from <= row && row < part.to && part.shift === listing.shifts[index],
    );
    const label = known(`${role} label ${section?.from} ${section?.shift}`, () =>
      nearestLabel(labels, role, section?.from ?? row),
    );
    if (label) return label;
    const title =
      role === "dwelling" && section
        ? known(`title ${section.from}`, () => titleAbove(block, section.from))
        : null;
    if (title) return title;
    return role === "dwelling" && manySheets
      ? { value: cells.grid.name, place: { sheet: cells.grid.name, row: 0, col: 0 }, from: "sheet" }
      : null;
  };
}

/** A line over a group of fans: its first text names the dwelling; a day may stand beside, with a name. */
function inLine({ cells }: SheetBlock, row: number, role: Role): FieldValue | null {
  let first = true;
  for (let col = 0; col < cells.cols; col++) {
    if (cells.isBlank(row, col)) continue;
    const text = cells.text(row, col).trim();
    const [place, from] = [cells.place(row, col), "above"] as const;
    if (role === "dwelling" && first) return { value: text, place, from };
    const found = first ? undefined : dayIn(text);
    if (role === "date" && found) return { value: found.day, place, from };
    if (role === "tester" && found && /\p{L}/u.test(found.beside))
      return { value: found.beside, place, from };
    first = false;
  }
  return null;
}

/** So many rows above its headings the name of a card's dwelling may stand. */
const mostTitles = 3;

/** The title over a card's headings, where it begins as the name of a dwelling does. */
function titleAbove({ cells }: SheetBlock, from: number): FieldValue | null {
  for (let row = from - 1; row >= Math.max(0, from - mostTitles); row--)
    for (let col = 0; col < cells.cols; col++) {
      const text = cells.text(row, col).trim();
      if (text === "") continue;
      if (cellWord(text).dwelling)
        return { value: text, place: cells.place(row, col), from: "above" };
      break;
    }
  return null;
}

/** The label of this role that stands nearest above the section, or else first in the sheet. */
function nearestLabel(labels: readonly Label[], role: Role, row: number): FieldValue | null {
  let best: Label | undefined;
  let near = Number.POSITIVE_INFINITY;
  for (const label of labels) {
    const told = readHeading(label.text).told;
    const weight = told.get(role)?.weight ?? 0;
    if (weight < 2.5 || weight < (told.get("other")?.weight ?? 0)) continue;
    if (role === "date" && typeof label.value === "string" && !looksLikeDay(label.value)) continue;
    if (role === "tester" && typeof label.value !== "string") continue;
    const away = label.row <= row ? row - label.row : (label.row - row) * 3;
    if (away >= near) continue;
    best = label;
    near = away;
  }
  return best ? { value: best.value, place: best.place, from: "label" } : null;
}

/** So many rows above its headings a block's rate may stand. */
const mostAbove = 3;

/** Fans side by side: a row above the headings gives each its rate, and says so at its head. */
function aboveHeadings({ cells, from, listing }: SheetBlock): FieldValue | null {
  const { own, shared } = from.part;
  const [section] = listing.sections;
  if (shared.length === 0 || !section) return null;
  for (let row = section.from - 1; row >= Math.max(0, section.from - mostAbove); row--) {
    const head = Array.from({ length: cells.cols }, (_, col) => cells.text(row, col)).find(
      (text) => text !== "",
    );
    const { told } = readHeading(head ?? "");
    if ((told.get("required")?.weight ?? 0) < Math.max(2.5, told.get("other")?.weight ?? 0))
      continue;
    const col = own.map((line) => line + section.shift).find((at) => cells.isNumber(row, at));
    if (col !== undefined)
      return { value: cells.number(row, col), place: cells.place(row, col), from: "heading" };
  }
  return null;
}

/** IF(F5>=50,…): the required rate stands in the verdict's formula. */
function inVerdict(block: SheetBlock, index: number, book: Book): FieldValue | null {
  const place = block.place(index, "verdict");
  const line = block.from.given.get("verdict");
  if (!place || line === undefined) return null;
  const col = line + block.listing.shifts[index]!;
  const shape = block.cells.shape(block.fans[index]!, col);
  if (!shape) return null;
  const found = testsOf(shape, block.cells, block.fans[index]!, col, book).comparisons.find(
    ({ number }) => number !== undefined,
  );
  return found ? { value: found.number!, place, from: "formula" } : null;
}
