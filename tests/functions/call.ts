import { worksheetFunctions } from "../../functions";

export type Matrix = unknown[][];

/** Calls a worksheet function as its host does: one entry a parameter, null for one left out. */
export function call(id: string, ...args: readonly unknown[]): Matrix {
  const found = worksheetFunctions.find((entry) => entry.id === id);
  if (!found) throw new Error(`no worksheet function ${id}`);
  const passed = found.parameters.map(({ repeating }, i) =>
    repeating ? args.slice(i) : (args[i] ?? null),
  );
  return found.call(...passed) as Matrix;
}

/** The one cell that a function gives for single arguments. */
export function cellOf(id: string, ...args: readonly unknown[]): unknown {
  return call(id, ...args)[0]?.[0];
}

/** A column of cells as a host passes it. */
export const column = (...cells: readonly unknown[]): Matrix => cells.map((cell) => [cell]);

/** What a function throws, which fails the whole call. */
export function failureOf(
  id: string,
  ...args: readonly unknown[]
): { code: string; message: string } {
  try {
    call(id, ...args);
  } catch (error) {
    return error as { code: string; message: string };
  }
  throw new Error(`${id} did not fail`);
}

export function isProblem(cell: unknown): cell is { code: string; message: string } {
  return typeof cell === "object" && cell !== null && "code" in cell;
}
