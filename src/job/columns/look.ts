import type { System } from "../../editions";
import type { Field, SheetLayout } from "./field";
import { unitOf } from "./units";

/** The heading of a field in a new job. */
export function headingOf(field: Field, system: System): string {
  return field.measure ? `${field.title} (${unitOf(field.measure, system)})` : field.title;
}

/** The number format of a field's cells in a new job; undefined leaves the usual one. */
export function numberFormatOf({ holds, measure, format }: Field): string | undefined {
  if (holds === "date") return "yyyy-mm-dd";
  if (format !== undefined) return format;
  if (measure === "opening" || measure === "length") return "0.00";
  if (measure === "floor" || measure === "volume") return "0";
  return measure ? "0.0" : undefined;
}

/** Widths of columns that do not follow their heading, in characters. */
const widths: Readonly<Record<string, number>> = {
  note: 32,
  how: 24,
  next: 26,
  room: 16,
  roomKind: 15,
  duty: 13,
  status: 12,
  verdict: 14,
  date: 12,
  checked: 12,
};

/** Width of a field's column in a new job, in characters. */
export function widthOf({ key, title }: Field): number {
  return widths[key] ?? Math.max(9, Math.min(14, title.length + 2));
}

/** The columns that name a row: they stay in view, and stand on every printed page. */
export function namingColumns({ fields, names }: SheetLayout): number {
  return fields.findLastIndex(({ key }) => names.includes(key)) + 1;
}

/** Characters that a page takes upright and across, in the usual size of letters. */
const upright = 95;
const across = 130;

/**
 * How a sheet is printed: upright where it is narrow enough, on one page across unless that shrinks
 * the letters below half.
 */
export function pageOf({ fields }: SheetLayout): { landscape: boolean; pagesWide: number } {
  const width = fields.reduce((sum, field) => sum + widthOf(field), 0);
  return { landscape: width > upright, pagesWide: width > 2 * across ? 2 : 1 };
}
