import type { HostRange } from "../host-range";
import { invalidArgument } from "../wire/errors";

/**
 * The value for each cell of a range out of what a client assigned: one value for all cells, or
 * rows of exactly the range's shape. Refuses everything else.
 */
export function spread(range: HostRange, assigned: unknown): (row: number, col: number) => unknown {
  if (range.isEntireColumn || range.isEntireRow)
    throw invalidArgument(`${range.address} has no end; write to a range with a fixed size.`);
  range.checkCellCount();
  if (!Array.isArray(assigned)) return () => assigned;
  const shape = `${range.address} takes ${range.rows} rows of ${range.cols} values`;
  if (assigned.length !== range.rows)
    throw invalidArgument(`${shape}; ${assigned.length} rows came.`);
  for (const [i, line] of assigned.entries()) {
    if (!Array.isArray(line)) throw invalidArgument(`${shape}; row ${i + 1} is no list.`);
    if (line.length !== range.cols)
      throw invalidArgument(`${shape}; row ${i + 1} has ${line.length}.`);
  }
  return (row, col) => (assigned as unknown[][])[row - range.top]?.[col - range.left];
}
