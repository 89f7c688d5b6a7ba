import { shownApart } from "../../../cells";
import type { Table } from "../../read";

/** A number of the job in the unit of the reading's own sheet, "39 m³/h", told apart from another. */
export function inSheetUnit(
  table: Table,
  key: string,
  i: number,
  value: number,
  other = value,
): string {
  const factor = table.factor(key, i);
  const [own] = shownApart(value / factor, other / factor);
  return `${own} ${table.unit(key, i) ?? ""}`.trimEnd();
}
