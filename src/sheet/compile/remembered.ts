import { kept } from "../../cells";
import { Area, type Value } from "../area";
import { Matrix } from "../values";

/** So many different calls are remembered; a sheet that has more is past helping. */
const mostCalls = 5_000;
/** After so many calls it shows whether the memory is of use: at least this share was in it. */
const trialCalls = 1_000;
const usefulShare = 0.2;

/** Results by the last argument, or further such maps by the arguments before it. */
type Branch = Map<unknown, Branch | Value>;

/**
 * Results of one function call in a formula, by its arguments. Our functions give the same for the
 * same arguments, and a sheet asks them the same few things over and over: one room and duty, one
 * set of openings. A fixed range counts as the same until a value in it changes.
 */
export class Remembered {
  private root: Branch = new Map();
  private size = 0;
  private asked = 0;
  private found = 0;
  /** Where the result of the call asked for last belongs. */
  private branch: Branch | undefined;
  private last: unknown;

  /** The result for these arguments where it is known; otherwise `keep` takes it, if it can be kept. */
  find(read: readonly (Value | undefined)[]): Value | undefined {
    this.branch = undefined;
    // A column of other numbers in each row makes the memory useless.
    if (this.asked >= trialCalls && this.found < usefulShare * this.asked) return undefined;
    const keys: unknown[] = [];
    for (const value of read) {
      const key = value instanceof Area ? value.fresh() : value;
      if (value instanceof Area ? key === undefined : typeof key === "object" && key !== null)
        return undefined;
      keys.push(key);
    }
    if (keys.length === 0) return undefined;
    let branch = this.root;
    const end = keys.length - 1;
    for (let i = 0; i < end; i++)
      branch = kept(branch as Map<unknown, Branch>, keys[i], () => new Map());
    this.asked++;
    this.last = keys[end];
    const result = branch.get(this.last) as Value | undefined;
    if (result === undefined) this.branch = branch;
    else this.found++;
    return result;
  }

  /** Keeps the result of the call that `find` was just asked for. */
  keep(result: Value): void {
    if (this.branch === undefined || result instanceof Matrix) return;
    if (this.size++ < mostCalls) this.branch.set(this.last, result);
    else {
      // Most of it is about ranges as they were once.
      this.root = new Map();
      this.size = 0;
    }
  }
}
