import { isCellError } from "../../cells";
import type { Values } from "../columns";

export type Cell = Values[number];
/** Cells of a row of a sheet by field. */
export type Row = Readonly<Record<string, Cell>>;

export const num = (cell: Cell | undefined): number =>
  typeof cell === "number" ? cell : Number.NaN;
export const text = (cell: Cell | undefined): string =>
  cell === null || cell === undefined || isCellError(cell) ? "" : String(cell).trim();
