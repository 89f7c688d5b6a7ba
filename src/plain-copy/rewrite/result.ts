import type { Spot } from "../../cells";
import type { Aids } from "../aids";
import { Call, type Writer } from "../functions/writer";
import { wrong } from "../native-text";
import type { Given } from "./given";

/** One call of ours: the text of each cell of its result, near its formula or good anywhere. */
export interface Result {
  readonly rows: number;
  readonly cols: number;
  readonly text: (row: number, col: number, isFar: boolean) => string;
}

/** The result that a writer gives for these arguments, in the shape that they make together. */
export function resultOf(
  writer: Writer,
  given: Readonly<Record<string, Given | undefined>>,
  at: { readonly home: Spot; readonly cell: string; readonly aids: Aids },
): Result {
  const shapes = Object.entries(given).flatMap(([name, each]) => {
    const kind = writer.kinds?.[name] ?? "cell";
    if (!each || kind === "whole") return [];
    return [{ rows: each.rows, cols: kind === "row" ? 1 : each.cols }];
  });
  const rows = Math.max(1, ...shapes.map((each) => each.rows));
  const cols = Math.max(1, ...shapes.map((each) => each.cols));
  const fits = (own: number, all: number) => own === all || own === 1;
  if (!shapes.every((each) => fits(each.rows, rows) && fits(each.cols, cols)))
    return { rows: 1, cols: 1, text: () => wrong("the ranges are not of one size") };
  const write = (row: number, col: number, side: number, isFar: boolean) =>
    writer.write(new Call(given, { row, col, side, isFar }, at));
  const { width = 1 } = writer;
  if (width === 1) return { rows, cols, text: (r, c, isFar) => write(r, c, 0, isFar) };
  return {
    rows: rows * cols,
    cols: width,
    text: (i, side, isFar) => write(Math.floor(i / cols), i % cols, side, isFar),
  };
}
