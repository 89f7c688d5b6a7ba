/** Calls of the project's own worksheet functions, with their arguments as Excel hands them over. */
import type { AstExpression } from "@borgar/fx/xlsx";
import type { FunctionParameter, WorksheetFunction } from "../../../functions";
import { type CellError, type CellValue, errors, isCellError } from "../../cells";
import { Area, Areas, type Value } from "../area";
import { Matrix, Unsupported } from "../values";
import { asScalar, type Blank, type Expr, type Mode, type Scope, spread, values } from "./expr";
import { Remembered } from "./remembered";

export function ownCall(
  own: WorksheetFunction,
  nodes: readonly (AstExpression | null)[],
  mode: Mode,
  scope: Scope,
): Expr {
  const parameters = own.parameters;
  const repeating = parameters.at(-1)?.repeating === true ? parameters.at(-1) : undefined;
  const single = repeating ? parameters.slice(0, -1) : parameters;
  const needed = single.filter((each) => !each.optional).length;
  if (nodes.length < needed || (!repeating && nodes.length > parameters.length))
    throw new Unsupported(`FANROW.${own.id} with ${nodes.length} arguments`);
  const typed = nodes.map((_, i) => single[i] ?? repeating!);
  const args = nodes.map((node, i) => {
    if (node === null) return undefined;
    const expr = scope.compile(node, mode);
    return typed[i]!.dimensionality === "matrix" ? expr : asScalar(expr, mode, scope);
  });
  const count = args.length;
  const getters = args.map((arg) => arg?.one ?? arg?.run);
  const scalars = args.flatMap((arg, i) =>
    arg && !arg.one && typed[i]!.dimensionality === "scalar" ? [i] : [],
  );

  // Excel adds the invocation as the last argument of every call.
  const invocation = Object.freeze({ functionName: own.id, isInValuePreview: false });

  /** Turns what was read into what the function gets, and calls it. */
  const call = (read: unknown[]): Value => {
    for (let i = 0; i < count; i++) {
      if (read[i] instanceof Areas && typed[i]!.dimensionality === "matrix") return errors.value;
      read[i] = give(read[i] as Value | undefined, typed[i]!, scope.blank);
    }
    const rest = repeating ? read.splice(single.length) : undefined;
    while (read.length < single.length) read.push(null);
    if (rest) read.push(rest);
    read.push(invocation);
    return invoke(own, read);
  };

  const remembered = new Remembered<Value>();
  const run = (row: number, col: number): Value => {
    const read: (Value | undefined)[] = new Array(count);
    for (let i = 0; i < count; i++) read[i] = getters[i]?.(row, col);
    if (scalars.length === 0 || !scalars.some((i) => read[i] instanceof Matrix)) {
      const known = remembered.find(read);
      if (known !== undefined) return known;
      const result = call(read);
      if (!(result instanceof Matrix)) remembered.keep(result);
      return result;
    }
    return spread(
      scalars.map((i) => read[i] as CellValue | Matrix),
      (cell) => {
        const each = read.slice();
        scalars.forEach((i, k) => {
          each[i] = cell[k] as CellValue;
        });
        const result = values(call(each));
        return result instanceof Matrix ? errors.value : result;
      },
    );
  };
  return { run };
}

/** An argument as the function gets it. */
function give(value: Value | undefined, parameter: FunctionParameter, blank: Blank): unknown {
  // An argument that is left out.
  if (value === undefined) return null;
  if (parameter.dimensionality === "scalar")
    return value === null && blank !== "usual" ? blank : giveScalar(value as CellValue);
  if (value instanceof Area) return giveArea(value, blank);
  if (value instanceof Matrix) return giveMatrix(value, blank);
  return [[giveCell(value as CellValue, blank)]];
}

function giveArea(area: Area, blank: Blank): unknown {
  const memo = area.fresh();
  if (memo?.nested) return memo.nested;
  const rows = giveMatrix(area.matrix(), blank);
  if (memo) memo.nested = rows;
  return rows;
}

function giveMatrix(matrix: Matrix, blank: Blank): unknown[][] {
  const rows: unknown[][] = [];
  for (let r = 0; r < matrix.rows; r++) {
    const line: unknown[] = [];
    for (let c = 0; c < matrix.cols; c++) line.push(giveCell(matrix.at(r, c), blank));
    rows.push(line);
  }
  return rows;
}

/** A cell of a range: blanks are "" and errors objects. */
function giveCell(value: CellValue, blank: Blank): unknown {
  if (value !== null) return giveScalar(value);
  return blank === "usual" ? "" : blank;
}

const giveScalar = (value: CellValue): unknown => (isCellError(value) ? outward(value) : value);

/** An error as functions know it. */
function outward(value: CellError): object {
  return value.message === undefined
    ? { code: value.error }
    : { code: value.error, message: value.message };
}

function invoke(own: WorksheetFunction, given: unknown[]): Value {
  try {
    return inward(own.call(...given));
  } catch (problem) {
    if (problem instanceof Unsupported) throw problem;
    const error = errorOf(problem);
    if (!error) throw problem;
    return error;
  }
}

function inward(result: unknown): Value {
  if (result instanceof Promise) throw new Unsupported("a function that answers later");
  if (!Array.isArray(result)) return cellOf(result);
  const rows: unknown[][] = Array.isArray(result[0]) ? (result as unknown[][]) : [result];
  if (rows.length === 1 && rows[0]!.length === 1) return cellOf(rows[0]![0]);
  const cols = rows.reduce((most, line) => Math.max(most, line.length), 0);
  if (cols === 0) return errors.calc;
  return Matrix.of(rows.length, cols, (r, c) => {
    const line = rows[r]!;
    return c < line.length ? cellOf(line[c]) : errors.na;
  });
}

function cellOf(value: unknown): CellValue {
  if (typeof value === "number") return Number.isFinite(value) ? value : errors.num;
  if (typeof value === "string" || typeof value === "boolean") return value;
  if (value === null || value === undefined) return 0;
  return errorOf(value) ?? { error: "#VALUE!", message: "the function returned no cell value" };
}

/** A thrown or returned error object as an error value, with its message. */
function errorOf(value: unknown): CellError | undefined {
  if (typeof value !== "object" || value === null || !("code" in value)) return undefined;
  const { code, message } = value as { code: unknown; message?: unknown };
  if (typeof code !== "string" || !code.startsWith("#")) return undefined;
  return typeof message === "string" && message !== "" ? { error: code, message } : { error: code };
}
