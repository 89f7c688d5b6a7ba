import { InputError } from "../../cells";
import type { System } from "../../editions";
import type { Source } from "../../formulas";
import type { Budget } from "../../spread";
import { errorOf } from "./call";
import { CellFault, toMatrix } from "./cell";
import { CallArguments } from "./given";
import { type Answer, type Cell, type Rule, sumValue, type Why } from "./rule";
import {
  type SaidSource,
  type SaidSum,
  saidSource,
  saidSum,
  sumLines,
  symbolsOnly,
  withUnit,
} from "./say";

/** One call of a worksheet function, explained from the values of its arguments. */
export interface CallWorking {
  readonly id: string;
  readonly title: string;
  readonly sums: readonly SaidSum[];
  readonly words: readonly string[];
  /** What the call gives, cell by cell; empty where an argument keeps it from being worked out. */
  readonly gives: readonly Cell[];
  /** The same as text, numbers with their unit. */
  readonly result: string;
  readonly sources: readonly SaidSource[];
  /** What served for optional arguments left out, by name. */
  readonly stoodIn: ReadonlyMap<string, number>;
  /** The uncertainty budget, where the result is a spread. */
  readonly budget?: Budget;
  /** Why there is no result. */
  readonly problem?: InputError;
  /** The error value that the call gives for it; "" where it is not filled in yet. */
  readonly code?: string;
}

/** Where in a range the row stands that is worked out, from 0. */
export interface At {
  readonly row: number;
  readonly col: number;
}

/**
 * How a call comes to its result. `args` are as a host hands them over: a value, a range as rows
 * of cells, or null where left out; of a range the cell at `at` counts. Never throws for what a
 * user gave: `problem` tells.
 */
export function explainRule(
  rule: Rule,
  args: readonly unknown[],
  at: At = { row: 0, col: 0 },
): CallWorking {
  let stoodIn: ReadonlyMap<string, number> = new Map();
  try {
    const call = new CallArguments(rule.arguments, oneRow(rule, args, at), rule.together);
    stoodIn = call.stoodIn;
    const fault = call.fault(0);
    if (fault) return without(rule, stoodIn, errorOf(fault), fault.code);
    const given = call.row(0) as never;
    rule.check?.(given);
    const answer = rule.work(given);
    const system = "units" in rule.arguments ? call.system : undefined;
    return told(rule, answer, stoodIn, system);
  } catch (error) {
    if (error instanceof CellFault)
      return without(rule, stoodIn, new InputError(`units hold ${error.code}`), error.code);
    if (!(error instanceof InputError)) throw error;
    return without(rule, stoodIn, error, error.reason === "blank" ? "#N/A" : "#VALUE!");
  }
}

/** The arguments of one row: the cell of each range, or its whole row of repeats. */
function oneRow(rule: Rule, args: readonly unknown[], at: At): unknown[] {
  return Object.values(rule.arguments).map(({ kind }, i) => {
    const argument = args[i];
    const isByRow = kind === "number" || kind === "name" || kind === "repeats";
    if (!isByRow || argument === null || argument === undefined) return argument;
    const matrix = toMatrix(argument);
    const line = matrix[matrix.length === 1 ? 0 : at.row] ?? [];
    return kind === "repeats" ? [line] : [[line[line.length === 1 ? 0 : at.col]]];
  });
}

function told(
  { id, title }: Rule,
  answer: Answer,
  stoodIn: ReadonlyMap<string, number>,
  system: System | undefined,
): CallWorking {
  const why = answer.why();
  const sums = (why.sums ?? []).map((sum) => saidSum(sum, system));
  const { words = [], budget } = why;
  const gives = [answer.gives].flat().map((cell) => (typeof cell === "number" ? cell + 0 : cell));
  const result = why.result ?? resultText(gives, why, sums, system);
  const sources = unique(why.sources ?? (why.sums ?? []).map((sum) => sum.formula.source));
  return { id, title, sums, words, gives, result, sources, stoodIn, ...(budget ? { budget } : {}) };
}

function resultText(
  gives: readonly Cell[],
  { sums = [], unit }: Why,
  said: readonly SaidSum[],
  system: System | undefined,
): string {
  const last = sums.at(-1);
  if (unit === undefined && gives.length === 1 && last && sumValue(last) === gives[0]) {
    const text = said.at(-1)?.results.at(-1) ?? "";
    return text.slice(text.indexOf(" = ") + 3);
  }
  const own = unit ?? last?.formula.result.unit ?? "1";
  return gives
    .map((each) => (typeof each === "number" ? withUnit(each, own, system) : each))
    .join(" and ");
}

function without(
  { id, title, formulas = [] }: Rule,
  stoodIn: ReadonlyMap<string, number>,
  problem: InputError,
  code: string,
): CallWorking {
  return {
    id,
    title,
    sums: formulas.map((formula) => symbolsOnly(formula, undefined)),
    words: [],
    gives: [],
    result: "",
    sources: unique(formulas.map(({ source }) => source)),
    stoodIn,
    problem,
    code,
  };
}

/**
 * The sum in symbols, in numbers and with its result; what no formula says, in words; one line
 * each. The text of WORKING is these lines and the sources.
 */
export function callLines({ sums, words, result }: CallWorking): string[] {
  const lines = [...sums.flatMap(sumLines), ...words];
  const isTold = result === "" || lines.some((line) => line.endsWith(` = ${result}`));
  return isTold ? lines : [...lines, `→ ${result}`];
}

/** A call on one line: "Q = K · A · √ΔP = 1.07 · 24 · √4 = 51.36 cfm — orifice equation …". */
export function callText(call: CallWorking): string {
  const sources = call.sources.map(({ text }) => text).join("; ");
  const text = callLines(call).join("; ").replaceAll("; → ", " → ");
  return sources === "" ? text : `${text} — ${sources}`;
}

function unique(sources: readonly Source[]): SaidSource[] {
  const said = sources.map(saidSource);
  return said.filter(({ text }, i) => said.findIndex((each) => each.text === text) === i);
}
