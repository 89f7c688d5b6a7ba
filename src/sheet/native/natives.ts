import type { CellValue } from "../../cells";
import type { Value } from "../area";

/**
 * How a native function takes an argument: `n` number, `i` its whole part, `e` the same, but not TRUE nor left out (the
 * engineering functions), `t` text, `x` the same for them, `b` boolean, `s` any single
 * value; `r` whatever is written, references included; `a` the same, calculated cell by cell;
 * `p` a reference of which only the place counts.
 * Single values given as a range or array make the function run cell by cell.
 */
interface Kinds {
  n: number;
  i: number;
  e: number;
  x: string;
  t: string;
  b: boolean;
  s: CellValue;
  r: Value;
  a: Value;
  p: Value;
}
export type Kind = keyof Kinds;

/** Arguments of a signature such as "t n?" (optional) or "r rs+" (a repeating group). */
type Arguments<S extends string> = S extends ""
  ? []
  : S extends `${infer First} ${infer Rest}`
    ? [...Argument<First>, ...Arguments<Rest>]
    : Argument<S>;
type Argument<S extends string> = S extends `${infer K extends Kind}?`
  ? [argument?: Kinds[K]]
  : S extends `${infer K extends Kind}+`
    ? Kinds[K][]
    : S extends `${string}+`
      ? Value[]
      : S extends Kind
        ? [Kinds[S]]
        : never;

export interface Native {
  readonly name: string;
  readonly least: number;
  readonly most: number;
  readonly kind: (index: number) => Kind;
  readonly call: (...args: Value[]) => Value;
  /** May return a reference or an array. */
  readonly spreads: boolean;
  readonly isVolatile: boolean;
  readonly seeks: boolean;
}

/** The native functions by name. */
export class Natives {
  private readonly known = new Map<string, Native>();

  get(name: string): Native | undefined {
    return this.known.get(name);
  }

  /** Adds a function under one or more names, separated by blanks; its result is one value. */
  add<S extends string>(
    names: string,
    signature: S,
    call: (...args: Arguments<S>) => CellValue,
    options: { isVolatile?: boolean } = {},
  ): this {
    return this.enter(names, signature, call as Native["call"], false, options.isVolatile === true);
  }

  /** Adds a function that may return a reference or an array. */
  addSpreading<S extends string>(
    names: string,
    signature: S,
    call: (...args: Arguments<S>) => Value,
    options: { seeks?: boolean } = {},
  ): this {
    return this.enter(names, signature, call as Native["call"], true, false, options.seeks);
  }

  private enter(
    names: string,
    signature: string,
    call: Native["call"],
    spreads: boolean,
    isVolatile: boolean,
    seeks = false,
  ): this {
    const parts = signature === "" ? [] : signature.split(" ");
    const last = parts.at(-1) ?? "";
    const cycle = last.endsWith("+") ? last.slice(0, -1) : "";
    const single = (cycle ? parts.slice(0, -1) : parts).map((part) => part.charAt(0) as Kind);
    const needed = parts.filter((part) => part.length === 1).length + cycle.length;
    for (const name of names.split(" "))
      this.known.set(name, {
        name,
        least: needed,
        most: cycle ? 255 : single.length,
        kind: (index) =>
          single[index] ?? (cycle.charAt((index - single.length) % cycle.length) as Kind),
        call,
        spreads,
        isVolatile,
        seeks,
      });
    return this;
  }
}
