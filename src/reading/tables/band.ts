import { type Cells, Kind } from "../cells/cells";
import { headingHits, isUnitRow, type RowCounts } from "./rows";
import type { LineHeading } from "./section";

const mostParents = 2;

/** The rows of headings around a main one, and what they say over each line. */
export function bandOf(
  cells: Cells,
  main: number,
  counts: RowCounts,
  after: number,
): { band: number[]; headings: Map<number, LineHeading> } {
  const band = [main];
  for (let row = main - 1; row > after && main - row <= mostParents; row--) {
    if (!isParentRow(cells, row, main, counts)) break;
    band.unshift(row);
  }
  const unitRow =
    main + 1 < cells.rows && counts.numbers[main + 1] === 0 && isUnitRow(cells, main + 1)
      ? main + 1
      : -1;
  if (unitRow >= 0) band.push(unitRow);
  const parents = band.filter((row) => row < main).map((row) => spread(cells, row));
  const headings = new Map<number, LineHeading>();
  for (let col = 0; col < cells.cols; col++) {
    const own = main >= 0 ? labelAt(cells, main, col) : "";
    const above = parents.map((texts) => texts[col] ?? "").filter((text) => text !== "");
    const unit = unitRow >= 0 ? cells.text(unitRow, col).trim() : "";
    if (own === "" && above.length === 0 && unit === "") continue;
    const text = own !== "" ? own : (above.at(-1) ?? "");
    headings.set(col, { text, parents: own !== "" ? above : above.slice(0, -1), unit });
  }
  // Over a line without a heading of its own a parent counts only where it spans it.
  return { band, headings };
}

function labelAt(cells: Cells, row: number, col: number): string {
  const text = cells.text(row, col).trim();
  if (text !== "") return text;
  const number = cells.number(row, col);
  return Number.isNaN(number) ? "" : String(number);
}

/** A row of texts that stands over several lines each, or names them in part. */
function isParentRow(cells: Cells, row: number, main: number, counts: RowCounts): boolean {
  const texts = counts.texts[row]!;
  if (texts === 0 || counts.numbers[row]! > 0 || counts.formulas[row]! > 0) return false;
  const merged = cells.merges.some(
    ({ top, bottom, left, right }) =>
      top <= row && row <= bottom && right > left && right - left + 1 < counts.texts[main]!,
  );
  if (merged) return true;
  if (texts < 2) return false;
  let longest = 0;
  let colons = 0;
  for (let col = 0; col < cells.cols; col++) {
    const text = cells.text(row, col);
    longest = Math.max(longest, text.length);
    if (text.trim().endsWith(":")) colons++;
  }
  if (longest > 40 || colons > 0) return false;
  const { hits } = headingHits(cells, row);
  return texts >= counts.texts[main]! * 0.5 || hits >= 1 || texts >= 2;
}

/** The texts of a row over every column that they cover. */
function spread(cells: Cells, row: number): string[] {
  const texts: string[] = [];
  const merges = cells.merges.filter(({ top, bottom }) => top <= row && row <= bottom);
  let dense = 0;
  for (let col = 0; col < cells.cols; col++) {
    texts.push(cells.text(row, col).trim());
    if (texts[col] !== "") dense++;
  }
  for (const { top, left, right } of merges)
    for (let col = left; col <= Math.min(right, cells.cols - 1); col++)
      texts[col] = cells.text(top, left).trim();
  if (merges.some(({ left, right }) => right > left) || dense > cells.cols * 0.6) return texts;
  // Without merged cells a text covers the blanks to its right.
  for (let col = 1; col < cells.cols; col++)
    if (texts[col] === "" && cells.kind(row, col) === Kind.blank) texts[col] = texts[col - 1]!;
  return texts;
}
