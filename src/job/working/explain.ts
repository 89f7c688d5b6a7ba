import type { Source } from "../../formulas";
import type { Budget } from "../../spread";
import { type At, Given } from "./given";
import {
  type SaidSource,
  type SaidSum,
  saidSource,
  saidSum,
  sumLines,
  sumValue,
  symbolsOnly,
  withUnit,
} from "./say";
import type { Grounds, Working } from "./working";
import { workings } from "./workings";

/** One call of a worksheet function, explained from the values of its arguments. */
export interface CallWorking {
  readonly id: string;
  readonly title: string;
  readonly sums: readonly SaidSum[];
  readonly words: readonly string[];
  /** What the call gives, cell by cell; empty where an argument keeps it from being worked out. */
  readonly gives: readonly (number | string)[];
  /** The same as text, numbers with their unit. */
  readonly result: string;
  readonly sources: readonly SaidSource[];
  /** What served for optional arguments left out, by name. */
  readonly stoodIn: ReadonlyMap<string, number | string>;
  /** The uncertainty budget, where the result is a spread. */
  readonly budget?: Budget;
  /** Why there is no result: an ArgumentError, or what the rules threw. */
  readonly problem?: unknown;
}

/** The working of a function by its id; undefined for an id that is none. */
export function workingFor(id: string): Working | undefined {
  return Object.hasOwn(workings, id) ? workings[id] : undefined;
}

/** The ids of all functions, in the order of the lists. */
export function knownWorkings(): string[] {
  return Object.keys(workings);
}

/**
 * How a call comes to its result. `args` are as a host hands them over: a value, a range as rows
 * of cells, or null where left out; of a range the cell at `at` counts. Never throws for a bad
 * argument: `problem` tells. Throws a RangeError for an id that has no working.
 */
export function explainCall(id: string, args: readonly unknown[], at?: At): CallWorking {
  const working = workingFor(id);
  if (!working) throw new RangeError(`no working for the function ${id}`);
  const given = new Given(working.takes, args, at);
  const { title } = working;
  const { stoodIn } = given;
  try {
    const { system } = given;
    const grounds = working.explain(given);
    const sums = (grounds.sums ?? []).map((sum) => saidSum(sum, system));
    const words = grounds.words ?? [];
    const { gives, result } = outcome(grounds, sums, system);
    const sources = unique(
      grounds.sources ?? (grounds.sums ?? []).map((sum) => sum.formula.source),
    );
    const budget = grounds.budget ? { budget: grounds.budget } : {};
    return { id, title, sums, words, gives, result, sources, stoodIn, ...budget };
  } catch (problem) {
    const formulas = working.formulas ?? [];
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
    };
  }
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

function outcome(
  { gives, sums = [], unit = "1", result }: Grounds,
  said: readonly SaidSum[],
  system: Given["system"],
): Pick<CallWorking, "gives" | "result"> {
  if (gives)
    return {
      gives,
      result:
        result ??
        gives
          .map((each) => (typeof each === "number" ? withUnit(each, unit, system) : each))
          .join(" and "),
    };
  const last = sums.at(-1);
  const text = said.at(-1)?.results.at(-1) ?? "";
  return {
    gives: last ? [sumValue(last)] : [],
    result: text.slice(text.indexOf(" = ") + 3),
  };
}

function unique(sources: readonly Source[]): SaidSource[] {
  const said = sources.map(saidSource);
  return said.filter(({ text }, i) => said.findIndex((each) => each.text === text) === i);
}
