import type { CellValue } from "../../cells";

type Calls = Readonly<Record<string, (...args: never[]) => unknown>>;

let calls: Calls = {};

/** Hands over the worksheet functions, which stand above the job and are called by what a field is. */
export function handOverFunctions(functions: Calls): void {
  calls = functions;
}

/** A worksheet function of ours on whole columns; an error where the call as a whole fails. */
export function callRule(id: string, args: readonly unknown[]): CellValue | CellValue[][] {
  const call = calls[id] as ((...args: unknown[]) => unknown) | undefined;
  if (!call) throw new Error(`the worksheet function ${id} was not handed over`);
  try {
    return (call(...args) as unknown[][]).map((row) => row.map(cellOf));
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
