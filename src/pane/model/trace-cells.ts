import { type CellValue, type Place, rectangleText, type Spot, sheetPrefix } from "../../cells";
import { type Job, layouts, readHeading } from "../../job";
import { type CellSeen, type Read, valueText } from "../../trace";

/** A place to go to: what is selected in the workbook, and the cell that is traced then. */
export interface Target {
  readonly spot: Spot;
  /** "K3", or "B2:B18" where a whole range is selected. */
  readonly cells: string;
  /** "Fans!K3", "'Old fans'!K3" or "Boxes!B2:B18". */
  readonly name: string;
}

/** A cell that a trace names, with what stands in it. */
export interface CellLink {
  readonly target: Target;
  /** What the sheet calls it; "" where it has no name for it. */
  readonly label: string;
  /** With the unit of its heading. */
  readonly value: string;
}

/** What a formula reads at one reference. */
export interface ReadLink {
  readonly target: Target;
  /** "17 cells, 16 filled" */
  readonly words: string;
  /** The filled cells of a small range; empty for a large one. */
  readonly cells: readonly CellLink[];
}

function targetOf(place: Place): Target {
  const { sheet, top, left } = place;
  const cells = rectangleText(place);
  return { spot: { sheet, row: top, col: left }, cells, name: sheetPrefix(sheet) + cells };
}

export function targetAt({ sheet, row, col }: Spot): Target {
  return targetOf({ sheet, top: row, left: col, bottom: row, right: col });
}

export function linkTo({ place, label, value }: CellSeen): CellLink {
  return { target: targetOf(place), label, value: withUnitOf(value, label) };
}

export function readLink({ place, cells, count, filled }: Read): ReadLink {
  return {
    target: targetOf(place),
    words: filled < count ? `${count} cells, ${filled} filled` : `${count} cells`,
    cells: cells.filter(({ value }) => count === 1 || !isBlank(value)).map(linkTo),
  };
}

/** A value as it stands in a cell: texts without quotes, numbers to six digits. */
export function plainValue(value: CellValue): string {
  if (typeof value === "string" && value !== "") return value;
  return valueText(value);
}

/** A number with the unit that its heading names; anything else as it is. */
export function withUnitOf(value: CellValue, label: string): string {
  const unit = typeof value === "number" ? unitIn(label) : "";
  return unit === "" ? plainValue(value) : `${plainValue(value)} ${unit}`;
}

/** The unit of a heading as a person reads it; "" where it names none. */
function unitIn(label: string): string {
  return /[([]%[)\]]$/.test(label) ? "%" : (readHeading(label).unit?.name ?? "");
}

const isBlank = (value: CellValue) => value === null || value === "";

/**
 * What a row is about: the fields that name it on a sheet of the job ("Lot 01, B1"), elsewhere its
 * first typed text. "" for a heading, and for a row without one.
 */
export function rowAbout(job: Job, { sheet, row, col }: Spot): string {
  const [fan, ...others] = (job.firm && job.fans?.table.readingsAt(sheet, row, col)) ?? [];
  // A line that several fans share, such as a dwelling's, is of none of them.
  if (job.fans && fan !== undefined && others.length === 0) return job.fans.label(fan);
  const grid = job.file.sheets.find(({ name }) => name === sheet);
  if (!grid) return "";
  const fit = Object.values(job.fit.sheets)
    .flat()
    .find((each) => each.sheet === sheet);
  if (fit) {
    if (row <= fit.headerRow) return "";
    const names = layouts.find(({ kind }) => kind === fit.kind)?.names ?? [];
    const words = names.flatMap((key) => {
      const column = fit.columns.get(key);
      const value = column ? grid.value(row, column.col) : null;
      return isBlank(value) || typeof value === "object" ? [] : [String(value).trim()];
    });
    if (words.length > 0) return words.join(", ");
  }
  for (let col = 0; col < grid.colCount; col++) {
    const value = grid.value(row, col);
    if (typeof value === "string" && value.trim() !== "" && grid.formula(row, col) === null)
      return value.trim().slice(0, 40);
  }
  return "";
}
