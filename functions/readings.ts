import { repeats } from "../src/spread";
import { isBlank, isError, type Matrix, toMatrix } from "./rows";

const none: readonly number[] = [];

/** The readings of each row, and the one cell that stands for them among the other arguments. */
export interface ReadingRows {
  /** By row: the mean of its readings, "" where it has none, or the first cell that will not do. */
  readonly cells: Matrix;
  /** The sound readings of row `i`; of the only row there is, for every `i`. */
  readonly of: (i: number) => readonly number[];
}

/**
 * Repeated readings as a range gives them: a row a fan, its repeats side by side, blanks among them
 * passed over. `refuse` says why a number will not do.
 */
export function readingRows(
  argument: unknown,
  refuse: (value: number) => string | undefined,
): ReadingRows {
  const rows: (readonly number[])[] = [];
  const cells = toMatrix(argument).map((row) => {
    const given = row.filter((cell) => !isBlank(cell));
    const bad = given.find((cell) => isError(cell) || !isSound(cell) || refuse(cell) !== undefined);
    const sound = bad === undefined ? (given as number[]) : none;
    rows.push(sound);
    return [bad ?? (sound.length > 0 ? repeats(sound).mean : "")];
  });
  return { cells, of: (i) => (rows.length === 1 ? rows[0] : rows[i]) ?? none };
}

function isSound(cell: unknown): cell is number {
  return typeof cell === "number" && Number.isFinite(cell);
}
