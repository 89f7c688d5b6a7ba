import { shown } from "../../../cells";
import type { Table } from "../../read";

/** A number of the job in the unit in which the reading's own sheet writes it: "39 m³/h". */
export function inSheetUnit(table: Table, key: string, i: number, value: number): string {
  return `${shown(value / table.factor(key, i))} ${table.unit(key, i) ?? ""}`.trimEnd();
}
