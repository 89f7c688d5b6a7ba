import { cellName, columnLetters } from "../grid";
import type { SheetKind, SheetLayout } from "./field";
import { jobSettings, jobTitle } from "./job";
import { type JobPlan, plainPlan } from "./plan";

/** Row of the first data cell on every sheet of a new job, from 0; the headings stand above. */
export const firstRow = 1;

/** How many rows the lookups of a new job cover, by sheet. */
export type JobSize = { readonly fans: number; readonly boxes: number } & Readonly<
  Partial<Record<SheetKind, number>>
>;

/** Formulas of a new job's row, by field, as a user would type them, without "=". */
export type RowFormulas = Readonly<Record<string, string>>;

/** What the formulas of one row may point at. */
export interface Places {
  /** A cell of the own row. */
  readonly cell: (key: string) => string;
  /** Whether the own sheet has the field. */
  readonly has: (key: string) => boolean;
  /** A whole column of a sheet. */
  readonly column: (kind: SheetKind, key: string) => string;
  readonly setting: (key: string) => string;
}

export function placesOf(kind: SheetKind, row: number, size: JobSize, plan: JobPlan): Places {
  const own = layoutIn(plan, kind);
  return {
    cell: (key) => cellName(row, columnIndex(own, key)),
    has: (key) => own.fields.some((field) => field.key === key),
    column: (other, key) => {
      const layout = layoutIn(plan, other);
      const letters = columnLetters(columnIndex(layout, key));
      return `${layout.title}!$${letters}$${firstRow + 1}:$${letters}$${firstRow + (size[other] ?? 1)}`;
    },
    setting,
  };
}

function layoutIn(plan: JobPlan, kind: SheetKind): SheetLayout {
  const layout = plan[kind];
  if (!layout) throw new Error(`the job has no ${kind} sheet`);
  return layout;
}

export function dwellingFormulas(
  row: number,
  size: JobSize,
  plan: JobPlan = plainPlan,
): RowFormulas {
  const { cell: c, has, column, setting: s } = placesOf("dwellings", row, size, plan);
  const fan = (key: string) => column("fans", key);
  const formulas: Record<string, string> = {
    required: `FANROW.DWELLING_RATE(${s("edition")},${c("floor")},${c("bedrooms")},${s("method")},${s("units")})`,
    provided: `IF(${c("dwelling")}="","",SUMIFS(${fan("flow")},${fan("dwelling")},${c("dwelling")},${fan("duty")},"continuous"))`,
    verdict: `FANROW.VERDICT(${c("provided")},${c(has("needed") ? "needed" : "required")})`,
  };
  if (has("needed")) {
    const sum = `SUMIFS(${fan("deficit")},${fan("dwelling")},${c("dwelling")})`;
    formulas.deficits = `IF(${c("dwelling")}="","",${sum})`;
    formulas.raised = `IF(${c("dwelling")}="","",FANROW.DEFICIT_RATE(${s("edition")},${c("required")},${c("deficits")}))`;
    formulas.infiltration = `IF(${c("leak50")}="","",FANROW.INFILTRATION(${s("edition")},${c("leak50")},${c("floor")},${c("height")},${s("weather")},${s("units")}))`;
    formulas.needed = `IF(${c("infiltration")}="",${c("raised")},FANROW.FAN_RATE(${s("edition")},${c("raised")},${c("infiltration")},${c("exposed")},${c("balanced")},${s("work")},${s("units")},${c("floor")}))`;
    formulas.missing = `IF(${c("needed")}="","",MAX(0,${c("needed")}-${c("provided")}))`;
  }
  return formulas;
}

export function openingFormulas(row: number, plan: JobPlan = plainPlan): RowFormulas {
  const { cell: c, has, setting: s } = placesOf("boxes", row, { fans: 1, boxes: 1 }, plan);
  const one = `IF(${c("shape")}="round",FANROW.ROUND_AREA(${c("size1")}),FANROW.RECT_AREA(${c("size1")},${c("size2")}))`;
  const reach = `FANROW.REACH(${c("area")},${c("constant")},${s("low")},${s("high")},${s("units")})`;
  const formulas: Record<string, string> = {
    area: `IF(${c("size1")}="","",${c("count")}*${one})`,
    // One value a cell: a formula that spills shows no stored value in some other programs.
    lowest: `INDEX(${reach},1,1)`,
    highest: `INDEX(${reach},1,2)`,
  };
  if (has("areaLimit"))
    formulas.areaLimit = `IF(${c("tolerance")}="","",${c("count")}*FANROW.AREA_LIMIT(${c("tolerance")},${c("size1")},${c("size2")}))`;
  return formulas;
}

/** Column of a field in a new job. */
export function columnIndex(layout: SheetLayout, key: string): number {
  const index = layout.fields.findIndex((field) => field.key === key);
  if (index < 0) throw new Error(`the ${layout.title} sheet has no field ${key}`);
  return index;
}

/** Row of a setting on a new job's Job sheet. */
export function settingRow(key: string): number {
  const index = jobSettings.findIndex((entry) => entry.key === key);
  if (index < 0) throw new Error(`the Job sheet has no setting ${key}`);
  return firstRow + index;
}

function setting(key: string): string {
  return `${jobTitle}!$B$${settingRow(key) + 1}`;
}
