import type { CellValue } from "../../cells";
import { call } from "../../rules";

/** A worksheet function of ours on whole columns; an error where the call as a whole fails. */
export function callRule(id: string, args: readonly unknown[]): CellValue | CellValue[][] {
  try {
    return call(id as Parameters<typeof call>[0], args).map((row) => row.map(cellOf));
  } catch (error) {
    return cellOf(error);
  }
}

function cellOf(cell: unknown): CellValue {
  if (typeof cell !== "object" || cell === null) return (cell ?? null) as CellValue;
  const { code, error, message } = cell as { code?: string; error?: string; message?: string };
  const name = code ?? error;
  if (name === undefined) throw cell;
  return { error: name, ...(message === undefined ? {} : { message }) };
}
