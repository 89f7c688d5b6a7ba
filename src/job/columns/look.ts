import type { System } from "../../editions";
import type { Field } from "./field";
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
