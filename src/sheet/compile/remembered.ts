import { kept } from "../../cells";
import { Area, type Value } from "../area";

/** So many different calls are remembered; a sheet that has more is past helping. */
const mostCalls = 5_000;
/** After so many calls it shows whether the memory is of use: at least this share was in it. */
const trialCalls = 1_000;
const usefulShare = 0.2;

/** Results by the last key, or further such maps by the keys before it. */
type Branch<V> = Map<unknown, Branch<V> | V>;

/**
 * Results of one function call in a formula, by its arguments, or of a formula by what it reads. Our
 * functions give the same for the same arguments, and a sheet asks them the same few things over and
 * over: one room and duty, one set of openings. A fixed range counts as the same until a value in it
 * changes.
 */
export class Remembered<V> {
  private root: Branch<V> = new Map();
  private size = 0;
  private asked = 0;
  private found = 0;
  /** Where the result of the call asked for last belongs. */
  private branch: Branch<V> | undefined;
  private last: unknown;

  /** The result for these arguments where it is known; otherwise `keep` takes it, if it can be kept. */
  find(read: readonly (Value | undefined)[]): V | undefined {
    this.branch = undefined;
    if (this.isUseless) return undefined;
    const keys: unknown[] = [];
    for (const value of read) {
      const key = value instanceof Area ? value.fresh() : value;
      if (value instanceof Area ? key === undefined : typeof key === "object" && key !== null)
        return undefined;
      keys.push(key);
    }
    return keys.length === 0 ? undefined : this.look(keys);
  }

  /** A column of other numbers in each row makes the memory useless. */
  get isUseless(): boolean {
    return this.asked >= trialCalls && this.found < usefulShare * this.asked;
  }

  /** The result under these keys, none of which is an object that is made anew each time. */
  look(keys: readonly unknown[]): V | undefined {
    let branch = this.root;
    const end = keys.length - 1;
    for (let i = 0; i < end; i++)
      branch = kept(branch as Map<unknown, Branch<V>>, keys[i], () => new Map());
    this.asked++;
    this.last = keys[end];
    const result = branch.get(this.last) as V | undefined;
    this.branch = result === undefined ? branch : undefined;
    if (result !== undefined) this.found++;
    return result;
  }

  /** Keeps the result that was just asked for and not found. */
  keep(result: V): void {
    if (this.branch === undefined) return;
    if (this.size++ < mostCalls) this.branch.set(this.last, result);
    else {
      // Most of it is about ranges as they were once.
      this.root = new Map();
      this.size = 0;
    }
  }
}
