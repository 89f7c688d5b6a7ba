import { kept } from "../../cells";
import { type Cells, Kind } from "../cells/cells";
import type { Book } from "../formulas/book";
import { bandOf } from "./band";
import { countRows, headingHits, isTotal, isUnitRow, type RowCounts } from "./rows";
import type { LineHeading, Section } from "./section";

/** Finds the tables of a sheet: headings, by words or by where they stand, and the rows under each. */
export function findSections(cells: Cells, book: Book): Section[] {
  const counts = countRows(cells);
  const recurring = recurringTexts(cells, counts);
  const starts = headingRows(cells, counts, recurring);
  const sections: Section[] = [];
  starts.forEach((main, at) => {
    const { band, headings } = bandOf(cells, main, counts, at > 0 ? starts[at - 1]! : -1);
    const next = starts[at + 1];
    const to = next === undefined ? cells.rows : bandOf(cells, next, counts, main).band[0]!;
    const section = rowsUnder(cells, book, counts, band, headings, to);
    if (section.records.length > 0) sections.push(section);
  });
  return sections;
}

/** How often each text stands in each column, in rows that hold numbers: headings do not recur there. */
function recurringTexts(cells: Cells, counts: RowCounts): Map<number, number>[] {
  const recurring: Map<number, number>[] = [];
  const step = Math.max(1, Math.floor(cells.rows / 4000));
  for (let col = 0; col < cells.cols; col++) {
    const map = new Map<number, number>();
    for (let row = 0; row < cells.rows; row += step) {
      if (counts.numbers[row] === 0) continue;
      const id = cells.textId(row, col);
      if (id) map.set(id, (map.get(id) ?? 0) + 1);
    }
    recurring.push(map);
  }
  return recurring;
}

/** Whether a row of texts is a fan without a reading: its words stand in other rows too. */
function looksLikeData(
  cells: Cells,
  row: number,
  recurring: readonly Map<number, number>[],
): boolean {
  let again = 0;
  let texts = 0;
  for (let col = 0; col < cells.cols; col++) {
    const id = cells.textId(row, col);
    if (!id) continue;
    texts++;
    if (recurring[col]!.has(id)) again++;
  }
  return again >= 2 || (again === 1 && texts <= 2);
}

function headingRows(
  cells: Cells,
  counts: RowCounts,
  recurring: readonly Map<number, number>[],
): number[] {
  const found: number[] = [];
  const repeated = repeatedRows(cells, counts);
  for (let row = 0; row < cells.rows; row++) {
    const [texts, numbers] = [counts.texts[row]!, counts.numbers[row]!];
    if (texts < 2 || counts.formulas[row]! > 0 || numbers > texts * 0.5) continue;
    const { hits } = headingHits(cells, row);
    const told = hits >= 2 && hits >= (texts + numbers) * 0.4;
    if ((!told && !repeated.has(row)) || looksLikeData(cells, row, recurring)) continue;
    if (isLabels(cells, row)) continue;
    // Of rows that follow each other the last that is no row of units names the lines.
    const last = found.at(-1);
    if (last === row - 1 && isUnitRow(cells, row)) continue;
    if (last === row - 1) found.pop();
    found.push(row);
  }
  const first = firstRun(cells, counts);
  const nearest = first && found.filter((row) => row < first.row).at(-1);
  if (first) {
    const above = headingAbove(cells, counts, recurring, first.row, found);
    // A fuller row of texts between what was found and the numbers: labels above are no headings.
    const fuller =
      nearest !== undefined &&
      above > nearest &&
      counts.texts[above]! >= Math.max(3, counts.texts[nearest]! * 1.5);
    if (nearest === undefined || fuller) found.push(above);
    found.sort((a, b) => a - b);
  }
  return found;
}

/** Rows of three texts or more that stand word for word in other places of the sheet. */
function repeatedRows(cells: Cells, counts: RowCounts): ReadonlySet<number> {
  const rows = new Map<string, number[]>();
  for (let row = 0; row < cells.rows; row++) {
    if (counts.texts[row]! < 3 || counts.numbers[row]! + counts.formulas[row]! > 0) continue;
    const key = Array.from({ length: cells.cols }, (_, col) => cells.textId(row, col)).join();
    kept(rows, key, () => []).push(row);
  }
  return new Set([...rows.values()].filter((same) => same.length > 1).flat());
}

/** Labels with their values beside them, as at the head of a card: no headings. */
function isLabels(cells: Cells, row: number): boolean {
  const texts: { col: number; text: string }[] = [];
  for (let col = 0; col < cells.cols; col++)
    if (!cells.isBlank(row, col)) texts.push({ col, text: cells.text(row, col).trim() });
  const marked = texts.filter(({ text }) => text.endsWith(":")).length;
  return marked > 0 && marked * 2 >= texts.length - 1;
}

/** The first rows in a run of three or more that hold two numbers or formulas each, or the longest. */
function firstRun(cells: Cells, counts: RowCounts): { row: number; length: number } | undefined {
  let best: { row: number; length: number } | undefined;
  let start = -1;
  let filled = 0;
  const close = () => {
    if (start >= 0 && filled >= 2 && (!best || (best.length < 3 && filled > best.length)))
      best = { row: start, length: filled };
    start = -1;
    filled = 0;
  };
  for (let row = 0; row < cells.rows; row++) {
    const amounts = counts.numbers[row]! + counts.formulas[row]!;
    if (amounts >= 2 && counts.numbers[row]! > 0) {
      if (start < 0) start = row;
      filled++;
    } else if (amounts === 0 && counts.texts[row]! === 0 && start >= 0) continue;
    else close();
  }
  close();
  return best;
}

/** The row of texts above a run of numbers; the row before the run itself where there is none. */
function headingAbove(
  cells: Cells,
  counts: RowCounts,
  recurring: readonly Map<number, number>[],
  first: number,
  found: readonly number[],
): number {
  for (let row = first - 1; row >= Math.max(0, first - 5); row--) {
    if (found.includes(row)) break;
    if (
      counts.texts[row]! >= 2 &&
      counts.numbers[row]! <= counts.texts[row]! * 0.5 &&
      counts.formulas[row] === 0 &&
      !looksLikeData(cells, row, recurring) &&
      !isUnitRow(cells, row)
    )
      return row;
  }
  return first - 1;
}

function rowsUnder(
  cells: Cells,
  book: Book,
  counts: RowCounts,
  band: readonly number[],
  headings: ReadonlyMap<number, LineHeading>,
  to: number,
): Section {
  const last = band.at(-1)!;
  const records: number[] = [];
  const texts: number[] = [];
  const totals: number[] = [];
  const doubted: number[] = [];
  const take = (row: number) => {
    if (isRecord(cells, counts, row, headings)) records.push(row);
    else if (counts.texts[row]! > 0) texts.push(row);
  };
  // Between a blank row and the next headings stands the title of what they head.
  const isBlank = (row: number) =>
    row > last && counts.texts[row]! + counts.numbers[row]! + counts.formulas[row]! === 0;
  const end = to < cells.rows && isBlank(to - 2) ? to - 1 : to;
  for (let row = last + 1; row < end; row++) {
    if (counts.texts[row]! + counts.numbers[row]! === 0) {
      if (counts.formulas[row]! > 0 && isTotal(cells, row, book)) totals.push(row);
      continue;
    }
    const sums = mayBeTotal(counts, row) && isTotal(cells, row, book);
    if (sums === "perhaps") doubted.push(row);
    else if (sums) totals.push(row);
    else take(row);
  }
  if (areRecords(doubted, records, counts)) for (const row of doubted) take(row);
  else totals.push(...doubted);
  for (const rows of [records, texts, totals]) rows.sort((a, b) => a - b);
  return { cells, shift: 0, band, headings, records, texts, totals, from: band[0]!, to };
}

/** Rows that call themselves totals in passing are none where most hold as many typed numbers as others. */
function areRecords(
  doubted: readonly number[],
  records: readonly number[],
  { numbers }: RowCounts,
): boolean {
  const usual = records.map((row) => numbers[row]!).sort((a, b) => a - b)[records.length >> 1];
  if (usual === undefined) return false;
  const full = doubted.filter((row) => numbers[row]! >= usual).length;
  return full * 2 > doubted.length;
}

/** Looking for totals costs; a row of a long sheet that is filled like a fan's is none. */
function mayBeTotal(counts: RowCounts, row: number): boolean {
  return counts.texts[row]! <= 6;
}

/** A row with a typed number under a heading, and two cells or more filled under headings. */
function isRecord(
  cells: Cells,
  counts: RowCounts,
  row: number,
  headings: ReadonlyMap<number, LineHeading>,
): boolean {
  if (counts.numbers[row] === 0) return false;
  if (headings.size === 0)
    return counts.numbers[row]! + counts.texts[row]! + counts.formulas[row]! >= 2;
  let filled = 0;
  let numbers = 0;
  for (const line of headings.keys()) {
    const kind = cells.kind(row, line);
    if (kind === Kind.blank) continue;
    filled++;
    if ((kind === Kind.number || kind === Kind.textNumber) && !cells.hasFormula(row, line))
      numbers++;
  }
  return numbers >= 1 && filled >= Math.min(2, headings.size);
}
