import type { Rectangle } from "../../cells";
import { mayBeError } from "../cell-text";
import type { Book } from "../run";
import type { BlockCells, SheetCells } from "./sheet-cells";

/** A sheet being read. */
export interface SheetPlan {
  readonly proxy: Excel.Worksheet;
  readonly cells: SheetCells;
  /** What a row is expected to take on the wire. */
  rowBytes: number;
}

/** Cells of a sheet still to be read. */
export interface Piece extends Rectangle {
  readonly plan: SheetPlan;
}

/** A column of cells of which some hold an error or a text that looks like one. */
type Suspect = Piece;

/** Excel on the web hands over at most 5 MB at once; the rest is leeway for rows that grow. */
const tripBytes = 4_700_000;
/** What one value type takes: `"Double",` or a little more. */
const typeBytes = 10;
const sampledRows = 100;

/** Asked beside the cells. */
interface Question {
  /** What the answer takes on the wire, where it is much. */
  readonly bytes?: number;
  ask(): void;
  drop(): void;
}

/** Reads pieces in as few round trips as the size of a response allows. */
export async function readPieces(
  book: Book,
  pieces: readonly Piece[],
  /** Told after each trip how many rows are still to be read. */
  onLeft: (rows: number) => void,
  /** Small things to be asked along with the first trip, which is made for them alone if need be. */
  questions: readonly Question[] = [],
): Promise<void> {
  let queue: readonly Piece[] = pieces;
  let suspects: readonly Suspect[] = [];
  let beside = questions;
  while (queue.length > 0 || suspects.length > 0 || beside.length > 0) {
    const types = suspects.map((piece) => ({ piece, range: loaded(piece, "valueTypes") }));
    const asked = beside.reduce((sum, { bytes = 0 }) => sum + bytes, 0);
    const spent = asked + suspects.reduce((sum, piece) => sum + rowsOf(piece) * typeBytes, 0);
    const { now, later } = cut(queue, tripBytes - spent);
    // The last cells bring their types along where there is room, and need no further trip.
    const withTypes = later.length === 0 && spent + sizeOf(now) <= tripBytes;
    const leaves = `values,formulas,numberFormat${withTypes ? ",valueTypes" : ""}`;
    const blocks = now.map((piece) => ({ piece, range: loaded(piece, leaves) }));
    for (const question of beside) question.ask();
    try {
      await book.sync();
    } catch (thrown) {
      // What Excel will not answer is left out, the last first.
      const refused = isTooLarge(thrown) ? undefined : beside.at(-1);
      if (refused) {
        refused.drop();
        beside = beside.slice(0, -1);
        continue;
      }
      const rows = now.reduce((sum, piece) => sum + rowsOf(piece), 0);
      if (!isTooLarge(thrown) || rows < 2) throw thrown;
      // Rows are larger than those before: ask for a quarter of them.
      for (const plan of new Set(now.map((piece) => piece.plan))) plan.rowBytes *= 4;
      continue;
    }
    beside = [];
    for (const { piece, range } of types) takeTypes(piece, range.valueTypes);
    suspects = blocks.flatMap(({ piece, range }) => {
      const { values, formulas, numberFormat } = range;
      take(piece, { values, formulas, numberFormat });
      if (!withTypes) return suspectsIn(piece, values);
      takeTypes(piece, range.valueTypes);
      return [];
    });
    queue = later;
    onLeft(queue.reduce((sum, piece) => sum + rowsOf(piece), 0));
  }
}

function loaded({ plan, top, left, bottom, right }: Piece, leaves: string): Excel.Range {
  const range = plan.proxy.getRangeByIndexes(top, left, bottom - top + 1, right - left + 1);
  range.load(leaves);
  return range;
}

/** The pieces that fit into one response, at least one row, and those left for later. */
function cut(queue: readonly Piece[], budget: number): { now: Piece[]; later: Piece[] } {
  const now: Piece[] = [];
  const later: Piece[] = [];
  let left = budget;
  for (const piece of queue) {
    const fitting = Math.floor(left / piece.plan.rowBytes);
    const rows = Math.min(rowsOf(piece), now.length === 0 ? Math.max(1, fitting) : fitting);
    if (later.length > 0 || rows < 1) {
      later.push(piece);
      continue;
    }
    now.push({ ...piece, bottom: piece.top + rows - 1 });
    if (rows < rowsOf(piece)) later.push({ ...piece, top: piece.top + rows });
    left -= rows * piece.plan.rowBytes;
  }
  return { now, later };
}

/** What pieces take on the wire together with their value types. */
function sizeOf(pieces: readonly Piece[]): number {
  return pieces.reduce(
    (sum, piece) =>
      sum + rowsOf(piece) * (piece.plan.rowBytes + (piece.right - piece.left + 1) * typeBytes),
    0,
  );
}

function rowsOf({ top, bottom }: Rectangle): number {
  return bottom - top + 1;
}

function isTooLarge(thrown: unknown): boolean {
  const { code } = thrown as { code?: unknown };
  return (
    code === "ResponsePayloadSizeLimitExceeded" ||
    code === "RangeExceedsLimit" ||
    code === "OperationCellsExceedLimit"
  );
}

function take(piece: Piece, cells: BlockCells): void {
  piece.plan.cells.put(piece, cells);
  piece.plan.rowBytes = bytesOfRow(cells);
}

function takeTypes(piece: Piece, types: readonly (readonly string[])[]): void {
  types.forEach((line, r) => {
    line.forEach((type, c) => {
      if (type === "Error") piece.plan.cells.markError(piece.top + r, piece.left + c);
    });
  });
}

/** What a row takes on the wire, from the last rows of a block. */
export function bytesOfRow({ values, formulas, numberFormat = [] }: BlockCells): number {
  const sample = [values, formulas, numberFormat].map((lines) => lines.slice(-sampledRows));
  const bytes = new TextEncoder().encode(JSON.stringify(sample)).length;
  return bytes / Math.max(1, Math.min(sampledRows, values.length));
}

/** For each column, the rows from the first to the last value that may be an error. */
function suspectsIn(piece: Piece, values: readonly (readonly unknown[])[]): Suspect[] {
  const ends = new Map<number, { first: number; last: number }>();
  values.forEach((line, r) => {
    line.forEach((value, c) => {
      if (!mayBeError(value)) return;
      const end = ends.get(c);
      if (end) end.last = r;
      else ends.set(c, { first: r, last: r });
    });
  });
  return [...ends].map(([c, { first, last }]) => ({
    plan: piece.plan,
    top: piece.top + first,
    bottom: piece.top + last,
    left: piece.left + c,
    right: piece.left + c,
  }));
}
