/** Calls of the project's own worksheet functions, with their arguments as Excel hands them over. */
import type { AstExpression } from "@borgar/fx/xlsx";
import type { FunctionParameter, WorksheetFunction } from "../../../functions";
import { Area, Areas, type Value } from "../area";
import { toBoolean, toNumber, toText } from "../coerce";
import { type ErrorValue, errors, isError, Matrix, type Scalar, Unsupported } from "../values";
import { asScalar, type Expr, type Mode, type Scope, spread, values } from "./expr";

type Type = FunctionParameter["type"];

/** An argument as the function gets it, or the error that keeps it from being called. */
type Given = { readonly value: unknown } | ErrorValue;

const leftOut: Given = { value: null };

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
  const scalars = args.flatMap((arg, i) =>
    arg && !arg.one && typed[i]!.dimensionality === "scalar" ? [i] : [],
  );

  const call = (read: readonly (Value | undefined)[]): Value => {
    const given: unknown[] = [];
    const rest: unknown[] = [];
    for (let i = 0; i < read.length; i++) {
      const argument = give(read[i], typed[i]!);
      if ("error" in argument) return argument;
      (i < single.length ? given : rest).push(argument.value);
    }
    while (given.length < single.length) given.push(null);
    if (repeating) given.push(rest);
    // Excel adds the invocation as the last argument of every call.
    given.push({ functionName: own.id, isInValuePreview: false });
    return invoke(own, given);
  };

  const run = (row: number, col: number): Value => {
    const read = args.map((arg) => (arg?.one ?? arg?.run)?.(row, col));
    if (!scalars.some((i) => read[i] instanceof Matrix)) return call(read);
    return spread(
      scalars.map((i) => read[i] as Scalar | Matrix),
      (cell) => {
        const each = read.slice();
        scalars.forEach((i, k) => {
          each[i] = cell[k] as Scalar;
        });
        const result = values(call(each));
        return result instanceof Matrix ? errors.value : result;
      },
    );
  };
  return { run };
}

function give(value: Value | undefined, parameter: FunctionParameter): Given {
  if (value === undefined) return leftOut;
  if (parameter.dimensionality === "scalar") return giveScalar(value as Scalar, parameter.type);
  if (value instanceof Areas) return errors.value;
  if (value instanceof Area) {
    const memo = parameter.type === "any" ? value.fresh() : undefined;
    if (memo?.nested) return { value: memo.nested };
    const rows = giveMatrix(value.matrix(), parameter.type);
    if (memo && "value" in rows) memo.nested = rows.value as unknown[][];
    return rows;
  }
  if (value instanceof Matrix) return giveMatrix(value, parameter.type);
  const cell = giveCell(value, parameter.type);
  return "error" in cell ? cell : { value: [[cell.value]] };
}

function giveMatrix(matrix: Matrix, type: Type): Given {
  const rows: unknown[][] = [];
  for (let r = 0; r < matrix.rows; r++) {
    const line: unknown[] = [];
    for (let c = 0; c < matrix.cols; c++) {
      const cell = giveCell(matrix.at(r, c), type);
      if ("error" in cell) return cell;
      line.push(cell.value);
    }
    rows.push(line);
  }
  return { value: rows };
}

/** A cell of a range: blanks are "" and errors objects where any value is taken. */
function giveCell(value: Scalar, type: Type): Given {
  if (type !== "any") return giveScalar(value, type);
  if (typeof value === "number" || typeof value === "string") return { value };
  return { value: value === null ? "" : isError(value) ? outward(value) : value };
}

function giveScalar(value: Scalar, type: Type): Given {
  if (type === "any") return { value: isError(value) ? outward(value) : value };
  const read =
    type === "number" ? toNumber(value) : type === "string" ? toText(value) : toBoolean(value);
  return typeof read === "object" ? read : { value: read };
}

/** An error as functions know it. */
function outward(value: ErrorValue): object {
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
    if (error) return error;
    return {
      error: "#VALUE!",
      message: problem instanceof Error ? problem.message : String(problem),
    };
  }
}

function inward(result: unknown): Value {
  if (result instanceof Promise) throw new Unsupported("a function that answers later");
  if (!Array.isArray(result)) return cellOf(result);
  const rows: unknown[][] = Array.isArray(result[0]) ? (result as unknown[][]) : [result];
  const cols = rows.reduce((most, line) => Math.max(most, line.length), 0);
  if (cols === 0) return errors.calc;
  if (rows.length === 1 && cols === 1) return cellOf(rows[0]![0]);
  return Matrix.of(rows.length, cols, (r, c) => {
    const line = rows[r]!;
    return c < line.length ? cellOf(line[c]) : errors.na;
  });
}

function cellOf(value: unknown): Scalar {
  if (typeof value === "number") return Number.isFinite(value) ? value : errors.num;
  if (typeof value === "string" || typeof value === "boolean") return value;
  if (value === null || value === undefined) return 0;
  return errorOf(value) ?? { error: "#VALUE!", message: "the function returned no cell value" };
}

/** A thrown or returned error object as an error value, with its message. */
function errorOf(value: unknown): ErrorValue | undefined {
  if (typeof value !== "object" || value === null || !("code" in value)) return undefined;
  const { code, message } = value as { code: unknown; message?: unknown };
  if (typeof code !== "string" || !code.startsWith("#")) return undefined;
  return typeof message === "string" && message !== "" ? { error: code, message } : { error: code };
}
