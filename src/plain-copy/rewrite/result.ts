import type { Spot } from "../../cells";
import { type Argument, nativeFormula, type Rule, wrong } from "../../rules";
import type { Aids } from "../aids";
import { Call } from "./call";
import type { Given } from "./given";

/** One call of ours: the text of each cell of its result, near its formula or good anywhere. */
export interface Result {
  readonly rows: number;
  readonly cols: number;
  readonly text: (row: number, col: number, isFar: boolean) => string;
}

/** Whether an argument counts as a whole, the same for every cell of the result. */
export function isTakenWhole({ kind }: Argument): boolean {
  return kind === "list" || kind === "numbers" || kind === "pairs";
}

/** The result that a function gives for these arguments, in the shape that they make together. */
export function resultOf(
  rule: Rule,
  given: Readonly<Record<string, Given | undefined>>,
  at: { readonly home: Spot; readonly cell: string; readonly aids: Aids },
): Result {
  const shapes = Object.entries(rule.arguments).flatMap(([name, argument]) => {
    const each = given[name];
    if (!each || isTakenWhole(argument)) return [];
    return [{ rows: each.rows, cols: argument.kind === "repeats" ? 1 : each.cols }];
  });
  const rows = Math.max(1, ...shapes.map((each) => each.rows));
  const cols = Math.max(1, ...shapes.map((each) => each.cols));
  const fits = (own: number, all: number) => own === all || own === 1;
  if (!shapes.every((each) => fits(each.rows, rows) && fits(each.cols, cols)))
    return { rows: 1, cols: 1, text: () => wrong("the ranges are not of one size") };
  const write = (row: number, col: number, side: number, isFar: boolean) =>
    nativeFormula(rule, new Call(given, { row, col, side, isFar }, at));
  const { width = 1 } = rule;
  if (width === 1) return { rows, cols, text: (r, c, isFar) => write(r, c, 0, isFar) };
  return {
    rows: rows * cols,
    cols: width,
    text: (i, side, isFar) => write(Math.floor(i / cols), i % cols, side, isFar),
  };
}
