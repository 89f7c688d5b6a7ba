import { columnLetters } from "../../cells";
import type { SheetLayout } from "./field";
import { jobSettings, jobTitle } from "./job";
import type { JobPlan } from "./plan";
import type { SheetKind } from "./sheet-kind";
import { type Places, written } from "./write";

/** Row of the first data cell on every sheet of a new job, from 0; the headings stand above. */
export const firstRow = 1;

/** How many rows the lookups of a new job cover, by sheet. */
export type JobSize = { readonly fans: number; readonly boxes: number } & Readonly<
  Partial<Record<SheetKind, number>>
>;

/** Formulas of a new job's row, by field, as a user would type them, without "=". */
export type RowFormulas = Readonly<Record<string, string>>;

/** The formulas of a row of a job sheet, by field; none where its fields are all typed. */
export function formulasOf(
  kind: SheetKind,
  row: number,
  size: JobSize,
  plan: JobPlan,
): RowFormulas {
  const places: Places = {
    has: (sheet, key) => plan[sheet]?.fields.some((field) => field.key === key) === true,
    col: (sheet, key) => columnIndex(layoutIn(plan, sheet), key),
    column: (sheet, key) => {
      const layout = layoutIn(plan, sheet);
      const letters = columnLetters(columnIndex(layout, key));
      const last = firstRow + (size[sheet] ?? 1);
      return `${layout.title}!$${letters}$${firstRow + 1}:$${letters}$${last}`;
    },
    setting: (key) => `${jobTitle}!$B$${settingRow(key) + 1}`,
  };
  return Object.fromEntries(
    layoutIn(plan, kind).fields.flatMap(({ key, is }) =>
      is ? [[key, written(is, kind, row, places)]] : [],
    ),
  );
}

function layoutIn(plan: JobPlan, kind: SheetKind): SheetLayout {
  const layout = plan[kind];
  if (!layout) throw new Error(`the job has no ${kind} sheet`);
  return layout;
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
