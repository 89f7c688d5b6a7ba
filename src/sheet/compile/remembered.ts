import { Area, type Value } from "../area";
import { Matrix } from "../values";

/** So many different calls are remembered; a sheet that has more is past helping. */
const mostCalls = 5_000;

/**
 * Results of one function call in a formula, by its arguments. Our functions give the same for the
 * same arguments, and a sheet asks them the same few things over and over: one room and duty, one
 * set of openings. Fixed ranges keep their content within a revision, and the memory with them.
 */
export class Remembered {
  private readonly results = new Map<string, Value>();
  private revision = -1;

  /** What was given for these arguments; undefined where they cannot be told apart by a text. */
  keyOf(read: readonly (Value | undefined)[]): string | undefined {
    let key = "";
    for (const value of read) {
      if (value instanceof Area) {
        if (value.fresh() === undefined) return undefined;
        this.follow(value.grid.clock.revision);
        // Copied across, a formula may fix the rows of a range and not its columns.
        key += `${value.left}:${value.cols}\u0000`;
      } else if (typeof value === "object" && value !== null) return undefined;
      else key += typeof value === "string" ? `"${value}\u0000` : `${value}\u0000`;
    }
    return key;
  }

  get(key: string): Value | undefined {
    return this.results.get(key);
  }

  keep(key: string, result: Value): void {
    if (!(result instanceof Matrix) && this.results.size < mostCalls) this.results.set(key, result);
  }

  private follow(revision: number): void {
    if (revision === this.revision) return;
    this.revision = revision;
    this.results.clear();
  }
}
