import type { AstExpression } from "@borgar/fx/xlsx";
import type { WorksheetFunction } from "../../../functions";
import { type CellValue, errors } from "../../cells";
import { Area, Areas, intersect, type Value } from "../area";
import type { Book } from "../book";
import type { Grid } from "../grid";
import type { Natives } from "../native/natives";
import type { Reference, Run } from "../program";
import { Matrix, Unsupported } from "../values";

export type RunOne = (row: number, col: number) => CellValue;

/**
 * How a range is read where one value is wanted. "plain": the cell in the formula's own row or
 * column; "array": cell by cell, the whole formula being an array formula; "within": cell by cell
 * because a function such as SUMPRODUCT takes arrays.
 */
export type Mode = "plain" | "array" | "within";

/** A compiled part of a formula. */
export interface Expr {
  readonly run: Run;
  /** Present where the part is one value whatever the cells hold: the fast way. */
  readonly one?: RunOne;
  /** A reference to a range, known without looking at the cells. */
  readonly isRange?: boolean;
}

/** How a blank cell reaches our functions: null by itself and "" in a range, or the same in both. */
export type Blank = "usual" | 0 | null | "";

/** What the parts of one formula share while it is compiled. */
export interface Scope {
  readonly book: Book;
  /** The sheet of the formula. */
  readonly home: Grid;
  readonly natives: Natives;
  readonly blank: Blank;
  readonly own: ReadonlyMap<string, WorksheetFunction>;
  readonly reads: Reference[];
  readonly flags: { needsArray: boolean; isVolatile: boolean; seeks: boolean; isPlaced: boolean };
  readonly locals: Map<string, Expr>;
  /** The formula of a name is being compiled: its relative references wrap at the edge of the sheet. */
  readonly isName: boolean;
  /** A formula as a user types it. */
  typed(formula: string): string;
  /** What a text refers to. */
  refer(text: string): Expr;
  compile(node: AstExpression | null | undefined, mode: Mode): Expr;
}

export function constant(value: CellValue): Expr {
  const one = () => value;
  return { run: one, one };
}

export function arrayConstant(
  elements: readonly (readonly { value: unknown; type: string }[])[],
): Expr {
  const cols = elements[0]?.length ?? 0;
  if (elements.some((line) => line.length !== cols))
    throw new Unsupported("an array constant with rows of different lengths");
  const matrix = Matrix.of(elements.length, cols, (r, c) => {
    const { type, value } = elements[r]![c]!;
    return type === "ErrorLiteral" ? { error: String(value) } : (value as CellValue);
  });
  return { run: () => matrix };
}

export function oneValue(one: RunOne): Expr {
  return { run: one, one };
}

/** A reference as its values: one value, or a matrix of them. */
export function values(value: Value): CellValue | Matrix {
  if (value instanceof Area)
    return value.rows === 1 && value.cols === 1 ? value.at(0, 0) : value.matrix();
  if (value instanceof Areas) return errors.value;
  if (value instanceof Matrix && value.data.length === 1) return value.data[0] ?? null;
  return value;
}

/** A reference of which only the place counts: =ROW(A1) may stand in A1 without reading it. */
export function placeExpr(node: AstExpression, mode: Mode, scope: Scope): Expr {
  const read = scope.reads.length;
  const expr = scope.compile(node, mode);
  if (node.type === "ReferenceIdentifier" && node.kind !== "name") scope.reads.length = read;
  return expr;
}

/** The part as one value, or cell by cell where the mode or an array asks for it: never a reference. */
export function asScalar(expr: Expr, mode: Mode, scope: Scope): Expr {
  // The run of a single cell gives the reference itself, which no operator may see.
  if (expr.one) return oneValue(expr.one);
  const { run } = expr;
  if (mode === "plain") {
    if (expr.isRange) return oneValue((row, col) => pick(run(row, col), row, col) as CellValue);
    return { run: (row, col) => pick(run(row, col), row, col) };
  }
  if (mode === "array" && expr.isRange) scope.flags.needsArray = true;
  return { run: (row, col) => values(run(row, col)) };
}

function pick(value: Value, row: number, col: number): CellValue | Matrix {
  return value instanceof Area ? intersect(value, row, col) : values(value);
}

/** Applies a function to single values, cell by cell where some of them are matrices. */
export function spread(
  given: readonly (CellValue | Matrix)[],
  apply: (cell: CellValue[]) => CellValue,
): CellValue | Matrix {
  let rows = 0;
  let cols = 0;
  for (const value of given)
    if (value instanceof Matrix) {
      rows = Math.max(rows, value.rows);
      cols = Math.max(cols, value.cols);
    }
  if (rows === 0) return apply(given as CellValue[]);
  return Matrix.of(rows, cols, (r, c) =>
    apply(given.map((value) => (value instanceof Matrix ? value.stretched(r, c) : value))),
  );
}
