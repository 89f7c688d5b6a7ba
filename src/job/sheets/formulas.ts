import { cellName, columnLetters } from "../grid";
import { boxesLayout } from "./boxes";
import { dwellingsLayout } from "./dwellings";
import { fansLayout } from "./fans";
import type { SheetLayout } from "./field";
import { jobSettings, jobTitle } from "./job";

/** Row of the first data cell on every sheet of a new job, from 0; the headings stand above. */
export const firstRow = 1;

/** How many rows the lookups of a new job cover. */
export interface JobSize {
  readonly fans: number;
  readonly boxes: number;
}

/** Formulas of a new job's row, by field, as a user would type them, without "=". */
export type RowFormulas = Readonly<Record<string, string>>;

export function fanFormulas(row: number, size: JobSize): RowFormulas {
  const c = cellsOf(fansLayout, row);
  const box = (key: string) => columnOf(boxesLayout, key, size.boxes);
  const list = `${box("opening")},${box("area")},${c("box")},${box("box")}`;
  const window = `${setting("low")},${setting("high")}`;
  const readings = `${c("reading1")}:${c("reading3")}`;
  return {
    area: `FANROW.OPEN_AREA(${c("openings")},${box("opening")},${box("area")},${c("box")},${box("box")})`,
    pressure: `IF(COUNT(${readings})=0,"",AVERAGE(${readings}))`,
    constant: `IF(${c("box")}="","",INDEX(${box("constant")},MATCH(${c("box")},${box("box")},0)))`,
    flow: `FANROW.FLOW(${c("area")},${c("pressure")},${c("constant")},${setting("units")})`,
    status: `FANROW.RANGE_STATUS(${c("pressure")},${window})`,
    required: `FANROW.ROOM_RATE(${setting("edition")},${c("roomKind")},${c("duty")},${c("volume")},${setting("units")})`,
    verdict: `FANROW.VERDICT(${c("flow")},${c("required")},${c("status")})`,
    next: `FANROW.NEXT_OPENING(${c("pressure")},${c("area")},${list},${window})`,
  };
}

export function dwellingFormulas(row: number, size: JobSize): RowFormulas {
  const c = cellsOf(dwellingsLayout, row);
  const fan = (key: string) => columnOf(fansLayout, key, size.fans);
  return {
    required: `FANROW.DWELLING_RATE(${setting("edition")},${c("floor")},${c("bedrooms")},${setting("method")},${setting("units")})`,
    provided: `IF(${c("dwelling")}="","",SUMIFS(${fan("flow")},${fan("dwelling")},${c("dwelling")},${fan("duty")},"continuous"))`,
    verdict: `FANROW.VERDICT(${c("provided")},${c("required")})`,
  };
}

export function openingFormulas(row: number): RowFormulas {
  const c = cellsOf(boxesLayout, row);
  const one = `IF(${c("shape")}="round",FANROW.ROUND_AREA(${c("size1")}),FANROW.RECT_AREA(${c("size1")},${c("size2")}))`;
  const reach = `FANROW.REACH(${c("area")},${c("constant")},${setting("low")},${setting("high")},${setting("units")})`;
  return {
    area: `IF(${c("size1")}="","",${c("count")}*${one})`,
    // One value a cell: a formula that spills shows no stored value in some other programs.
    lowest: `INDEX(${reach},1,1)`,
    highest: `INDEX(${reach},1,2)`,
  };
}

/** Column of a field in a new job. */
export function columnIndex(layout: SheetLayout, key: string): number {
  const index = layout.fields.findIndex((field) => field.key === key);
  if (index < 0) throw new Error(`the ${layout.title} sheet has no field ${key}`);
  return index;
}

/** Row of a setting on a new job's Job sheet. */
export function settingRow(key: string): number {
  return firstRow + jobSettings.findIndex((entry) => entry.key === key);
}

function setting(key: string): string {
  return `${jobTitle}!$B$${settingRow(key) + 1}`;
}

function cellsOf(layout: SheetLayout, row: number): (key: string) => string {
  return (key) => cellName(row, columnIndex(layout, key));
}

function columnOf(layout: SheetLayout, key: string, rows: number): string {
  const letters = columnLetters(columnIndex(layout, key));
  return `${layout.title}!$${letters}$${firstRow + 1}:$${letters}$${firstRow + rows}`;
}
