import { type CellValue, errors, isCellError } from "../../cells";
import { compare, finite, toNumber, toText } from "../coerce";
import { Matrix } from "../values";
import { type Expr, oneValue, spread } from "./expr";

type Arithmetic = (x: number, y: number) => CellValue;

const arithmetic: Record<string, Arithmetic> = {
  "+": (x, y) => finite(x + y),
  "-": (x, y) => finite(x - y),
  "*": (x, y) => finite(x * y),
  "/": (x, y) => (y === 0 ? errors.div0 : finite(x / y)),
  "^": power,
};

const comparisons: Record<string, (order: number) => boolean> = {
  "=": (order) => order === 0,
  "<>": (order) => order !== 0,
  "<": (order) => order < 0,
  "<=": (order) => order <= 0,
  ">": (order) => order > 0,
  ">=": (order) => order >= 0,
};

export function power(x: number, y: number): CellValue {
  if (x === 0 && y === 0) return errors.num;
  if (x === 0 && y < 0) return errors.div0;
  return finite(x ** y);
}

/** An operator on two parts that are single values or matrices; undefined for an unknown sign. */
export function binary(sign: string, left: Expr, right: Expr): Expr | undefined {
  const apply = binaryOf(sign);
  if (apply === undefined) return undefined;
  const a = left.one;
  const b = right.one;
  if (a && b) return oneValue((row, col) => apply(a(row, col), b(row, col)));
  return {
    run: (row, col) => {
      const x = left.run(row, col) as CellValue | Matrix;
      const y = right.run(row, col) as CellValue | Matrix;
      if (!(x instanceof Matrix) && !(y instanceof Matrix)) return apply(x, y);
      return spread([x, y], (cell) => apply(cell[0] as CellValue, cell[1] as CellValue));
    },
  };
}

function binaryOf(sign: string): ((a: CellValue, b: CellValue) => CellValue) | undefined {
  const calculate = arithmetic[sign];
  if (calculate)
    return (a, b) => {
      if (typeof a === "number" && typeof b === "number") return calculate(a, b);
      const x = toNumber(a);
      if (typeof x !== "number") return x;
      const y = toNumber(b);
      return typeof y === "number" ? calculate(x, y) : y;
    };
  const judge = comparisons[sign];
  if (judge)
    return (a, b) => {
      if (isCellError(a)) return a;
      if (isCellError(b)) return b;
      return judge(compare(a, b));
    };
  if (sign !== "&") return undefined;
  return (a, b) => {
    const x = toText(a);
    if (typeof x !== "string") return x;
    const y = toText(b);
    return typeof y === "string" ? x + y : y;
  };
}

/** Minus, plus and percent. Plus leaves even text as it is. */
export function unary(sign: string, operand: Expr): Expr | undefined {
  if (sign === "+") return operand;
  const factor = sign === "-" ? -1 : sign === "%" ? 0.01 : undefined;
  if (factor === undefined) return undefined;
  const apply = (value: CellValue): CellValue => {
    const x = toNumber(value);
    if (typeof x !== "number") return x;
    // Dividing keeps 7% at the nearest double to 0.07; 0 - x keeps -0 out of the cells.
    return factor === -1 ? 0 - x : x / 100;
  };
  const { one, run } = operand;
  if (one) return oneValue((row, col) => apply(one(row, col)));
  return {
    run: (row, col) =>
      spread([run(row, col) as CellValue | Matrix], (cell) => apply(cell[0] as CellValue)),
  };
}
