import type { AstExpression } from "@borgar/fx/xlsx";
import { type CellValue, errors, isCellError } from "../../cells";
import type { Value } from "../area";
import { toBoolean, toNumber, toText } from "../coerce";
import { isKnownNative } from "../native/agreeing";
import type { Kind, Native } from "../native/natives";
import { Matrix, Unsupported } from "../values";
import {
  asScalar,
  constant,
  type Expr,
  type Mode,
  oneValue,
  placeExpr,
  type Scope,
  spread,
  values,
} from "./expr";

const readers: Record<Kind, ((value: CellValue) => CellValue) | undefined> = {
  n: toNumber,
  i: (value) => {
    const x = toNumber(value);
    return typeof x === "number" ? Math.trunc(x) : x;
  },
  e: (value) => (typeof value === "boolean" ? errors.value : toNumber(value)),
  x: (value) => (typeof value === "boolean" ? errors.value : toText(value ?? 0)),
  t: toText,
  b: toBoolean,
  s: undefined,
  r: undefined,
  a: undefined,
  p: undefined,
};

/** A call of a native function. */
export function nativeCall(
  native: Native,
  nodes: readonly (AstExpression | null)[],
  mode: Mode,
  scope: Scope,
): Expr {
  const count = nodes.length;
  if (count < native.least || count > native.most)
    throw new Unsupported(`${native.name} with ${count} argument${count === 1 ? "" : "s"}`);
  if (native.seeks) scope.flags.seeks = true;
  if (native.isVolatile) scope.flags.isVolatile = true;
  if (!isKnownNative(native.name)) scope.flags.isPlaced = true;
  const kinds = nodes.map((_, i) => native.kind(i));
  const args = nodes.map((node, i) => argument(node, kinds[i]!, mode, scope));
  const read = kinds.map((kind) => readers[kind]);
  const isWhole = kinds.map((kind) => kind === "r" || kind === "a" || kind === "p");

  const call = (given: Value[]): Value => {
    for (let i = 0; i < count; i++) {
      const reader = read[i];
      if (reader === undefined) {
        if (kinds[i] === "a" && isCellError(given[i])) return given[i]!;
        continue;
      }
      const value = reader(given[i] as CellValue);
      if (typeof value === "object") return value;
      given[i] = value;
    }
    return native.call(...given);
  };

  if (args.every((arg, i) => isWhole[i] || arg.one)) {
    const getters = args.map((arg, i) => (isWhole[i] ? arg.run : arg.one!));
    const run = callOf(getters, call);
    return native.spreads ? { run } : { run, one: run as (row: number, col: number) => CellValue };
  }
  const singles = kinds.map((_, i) => i).filter((i) => !isWhole[i]);
  return {
    run: (row, col) => {
      const given = args.map((arg) => arg.run(row, col));
      if (!singles.some((i) => given[i] instanceof Matrix)) return call(given);
      return spread(
        singles.map((i) => given[i] as CellValue | Matrix),
        (cell) => {
          const own = given.slice();
          singles.forEach((i, k) => {
            own[i] = cell[k] as CellValue;
          });
          const result = values(call(own));
          // Of an array within an array its first value stands.
          return result instanceof Matrix ? result.at(0, 0) : result;
        },
      );
    },
  };
}

function callOf(getters: Expr["run"][], call: (given: Value[]) => Value): Expr["run"] {
  const [first, second] = getters;
  if (getters.length === 1) return (row, col) => call([first!(row, col)]);
  if (getters.length === 2) return (row, col) => call([first!(row, col), second!(row, col)]);
  return (row, col) => call(getters.map((get) => get(row, col)));
}

/** The engineering functions take one cell, no range. */
function single(value: Value): CellValue {
  const read = values(value);
  return read instanceof Matrix ? errors.value : read;
}

function argument(node: AstExpression | null, kind: Kind, mode: Mode, scope: Scope): Expr {
  if (node === null) return constant(kind === "e" || kind === "x" ? errors.na : null);
  if (kind === "a") return scope.compile(node, "within");
  if (kind === "p") return placeExpr(node, mode, scope);
  const expr = scope.compile(node, mode);
  if (kind === "r") return expr;
  if ((kind === "e" || kind === "x") && expr.isRange)
    return oneValue((row, col) => single(expr.run(row, col)));
  return asScalar(expr, mode, scope);
}
