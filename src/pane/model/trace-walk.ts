import { maxCols, packedRef, type Spot } from "../../cells";

/** The cells a reviewer has gone through, the traced one last. */
export interface Walk {
  readonly path: readonly Spot[];
  /** Whether the traced cell stays while another is selected in the workbook. */
  readonly held: boolean;
  /** The selection that was followed last: only another one is followed again. */
  readonly followed: Spot | undefined;
}

export const firstWalk: Walk = { path: [], held: false, followed: undefined };

/** A path longer than this forgets its beginning. */
const mostSteps = 20;

function sameSpot(a: Spot | undefined, b: Spot | undefined): boolean {
  return a?.sheet === b?.sheet && a?.row === b?.row && a?.col === b?.col;
}

/** The cell that is traced. */
export function tracedSpot({ path }: Walk): Spot | undefined {
  return path.at(-1);
}

/** Follows the workbook's selection: a cell of the path is gone back to, another begins a new one. */
export function follow(walk: Walk, at: Spot): Walk {
  if (walk.held || sameSpot(at, walk.followed)) return walk;
  const back = backTo(walk, at);
  return { ...walk, path: back ? back.path : [at], followed: at };
}

/** Goes on to a cell that the traced one names. A cell of the path is gone back to. */
export function stepTo(walk: Walk, at: Spot): Walk {
  return backTo(walk, at) ?? { ...walk, path: [...walk.path, at].slice(-mostSteps) };
}

/** Holds the traced cell, or lets go of it and looks at the selection again. */
export function hold(walk: Walk, held: boolean, selected: Spot | undefined): Walk {
  const now = { ...walk, held };
  return held || !selected ? now : follow(now, selected);
}

function backTo(walk: Walk, at: Spot): Walk | undefined {
  const index = walk.path.findIndex((spot) => sameSpot(spot, at));
  return index < 0 ? undefined : { ...walk, path: walk.path.slice(0, index + 1) };
}

/** The cell of an address such as "K3"; undefined for any other text. */
export function spotAt(sheet: string, cell: string): Spot | undefined {
  const packed = packedRef(cell);
  if (packed < 0) return undefined;
  return { sheet, row: Math.floor(packed / maxCols), col: packed % maxCols };
}
