import type { Formula } from "../formulas";
import type { Expression, FunctionName, Operator } from "./expression";
import { oneValueOf } from "./one-value";
import { operate } from "./operate";
import { type Program, programOf } from "./program";
import { isComparison, select } from "./select";

/** One input of a formula over many rows: a value a row, or one value for all. */
export type Column = Float64Array | number;
export type Inputs = Readonly<Record<string, Column>>;

/** Rows worked on at a time, so that intermediate results stay in the processor's cache. */
const block = 1024;

/** Fills its own buffer for rows `at` to `at + count` and returns it, or returns one number. */
type Kernel = (at: number, count: number) => Column;

/**
 * The columns reader: a formula's values over `length` rows.
 *
 * Each symbol of the formula needs an input, a `Float64Array` of `length` or a number. A NaN input
 * gives a NaN result; what is missing or wrong in a row is the caller's to know. Throws when an
 * input is missing or of another length.
 */
export function columns(formula: Formula, inputs: Inputs, length: number): Float64Array {
  return evaluate(programOf(formula), inputs, length);
}

export function evaluate(program: Program, inputs: Inputs, length: number): Float64Array {
  if (length === 1) return Float64Array.of(oneValueOf(program, firstRow(inputs)));
  const known = new Map<string, Kernel>();
  for (const [name, column] of Object.entries(inputs)) known.set(name, input(name, column, length));
  for (const { name, tree } of program.steps) known.set(name, once(kernel(tree, known)));
  const run = kernel(program.result, known);
  const out = new Float64Array(length);
  for (let at = 0; at < length; at += block) {
    const count = Math.min(block, length - at);
    const values = run(at, count);
    if (typeof values === "number") out.fill(values, at, at + count);
    else out.set(values.length === count ? values : values.subarray(0, count), at);
  }
  return out;
}

function firstRow(inputs: Inputs): Record<string, number> {
  const row: Record<string, number> = {};
  for (const [name, column] of Object.entries(inputs)) {
    if (typeof column === "number") row[name] = column;
    else if (column.length === 1) row[name] = column[0] as number;
    else throw new Error(`input ${name} has ${column.length} rows where 1 is needed`);
  }
  return row;
}

function input(name: string, column: Column, length: number): Kernel {
  if (typeof column === "number") return () => column;
  if (column.length !== length)
    throw new Error(`input ${name} has ${column.length} rows where ${length} are needed`);
  return (at, count) => column.subarray(at, at + count);
}

/** A step used in several places is computed once a block. */
function once(run: Kernel): Kernel {
  let last = -1;
  let values: Column = 0;
  return (at, count) => {
    if (at !== last) {
      values = run(at, count);
      last = at;
    }
    return values;
  };
}

function kernel(tree: Expression, known: ReadonlyMap<string, Kernel>): Kernel {
  switch (tree.kind) {
    case "number":
      return () => tree.value;
    case "symbol": {
      const source = known.get(tree.name);
      if (!source) throw new Error(`no input for the symbol ${tree.name}`);
      return source;
    }
    case "negate":
      return unary((x) => -x, kernel(tree.of, known));
    case "call":
      return tree.name === "sqrt"
        ? squareRoot(kernel(tree.of, known))
        : unary(functions[tree.name], kernel(tree.of, known));
    case "binary":
      return binary(tree.operator, kernel(tree.left, known), kernel(tree.right, known));
    case "choice":
      return choice(tree, known);
  }
}

const functions: Record<FunctionName, (x: number) => number> = {
  sqrt: Math.sqrt,
  exp: Math.exp,
  log: Math.log,
  abs: Math.abs,
  floor: Math.floor,
};

function unary(apply: (x: number) => number, of: Kernel): Kernel {
  const out = new Float64Array(block);
  return (at, count) => {
    const x = of(at, count);
    if (typeof x === "number") return apply(x);
    for (let i = 0; i < count; i++) out[i] = apply(x[i] as number);
    return out;
  };
}

/** The commonest call, with its loop written out so that it is never an indirect call a row. */
function squareRoot(of: Kernel): Kernel {
  const out = new Float64Array(block);
  return (at, count) => {
    const x = of(at, count);
    if (typeof x === "number") return Math.sqrt(x);
    for (let i = 0; i < count; i++) out[i] = Math.sqrt(x[i] as number);
    return out;
  };
}

function choice(tree: Expression & { kind: "choice" }, known: ReadonlyMap<string, Kernel>): Kernel {
  const { when } = tree;
  if (when.kind !== "binary" || !isComparison(when.operator))
    throw new Error("a choice in a formula text is made by one comparison");
  const { operator } = when;
  const left = kernel(when.left, known);
  const right = kernel(when.right, known);
  const then = kernel(tree.yes, known);
  const otherwise = kernel(tree.no, known);
  const out = new Float64Array(block);
  const fills = [filler(), filler(), filler(), filler()] as const;
  return (at, count) => {
    const a = fills[0](left(at, count));
    const b = fills[1](right(at, count));
    const yes = fills[2](then(at, count));
    const no = fills[3](otherwise(at, count));
    select(operator, a, b, yes, no, out, count);
    return out;
  };
}

function binary(operator: Operator, left: Kernel, right: Kernel): Kernel {
  const out = new Float64Array(block);
  const leftFill = filler();
  const rightFill = filler();
  const one = new Float64Array(1);
  return (at, count) => {
    const a = left(at, count);
    const b = right(at, count);
    if (typeof a === "number" && typeof b === "number") {
      operate(operator, Float64Array.of(a), Float64Array.of(b), one, 1);
      return one[0] as number;
    }
    operate(operator, leftFill(a), rightFill(b), out, count);
    return out;
  };
}

/** Turns one number into a block of it, made once and kept. */
function filler(): (column: Column) => Float64Array {
  let filled: Float64Array | undefined;
  return (column) => {
    if (typeof column !== "number") return column;
    if (!filled || !Object.is(filled[0], column)) filled = new Float64Array(block).fill(column);
    return filled;
  };
}
