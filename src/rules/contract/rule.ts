import { type Column, columns, oneValue } from "../../algebra";
import type { System } from "../../editions";
import type { Formula, Source, Unit } from "../../formulas";
import type { Budget } from "../../spread";
import type { Arguments, BySystem, Given } from "./argument";
import { inSystem } from "./argument";
import type { CallArguments } from "./given";

/** What a function puts into a cell. */
export type Cell = number | string;

/** A formula with the numbers of one call. */
export interface Sum {
  readonly formula: Formula;
  readonly given: Readonly<Record<string, number>>;
}

/** How a result came about, beside its sums. */
export interface Why {
  /** Formulas in the order of the sum. */
  readonly sums?: readonly Sum[];
  /** What no formula of symbols says. */
  readonly words?: readonly string[];
  /** In place of the sources of the formulas: the rule that was looked up. */
  readonly sources?: readonly Source[];
  /** Unit of the numbers that come out; that of the last sum where left out. */
  readonly unit?: Unit;
  /** The uncertainty budget that the result is. */
  readonly budget?: Budget;
  /** The result in words, where several cells come side by side. */
  readonly result?: string;
}

/** What the work of one row gives, cell by cell, and, when asked, how it came about. */
export interface Answer {
  readonly gives: Cell | readonly Cell[];
  readonly why: () => Why;
}

/** What stands for a symbol of a formula: an argument, a number, or the formula before. */
export const before = Symbol("the result of the formula before");
export interface Use {
  readonly formula: BySystem<Formula>;
  readonly of: Readonly<Record<string, string | number | typeof before>>;
}

/** One worksheet function: what it takes, what it does with a row, and how that is told. */
export interface Rule<A extends Arguments = Arguments> {
  /** Frozen id, upper case, without the namespace. */
  readonly id: string;
  readonly title: string;
  readonly arguments: A;
  /** Cells side by side for each row; 1 where left out. */
  readonly width?: number;
  /** Groups of arguments: where all of one are blank, the row is not filled in yet. */
  readonly together?: readonly (readonly (keyof A & string)[])[];
  /** Shown in symbols where an argument is missing, so that no numbers can stand in them. */
  readonly formulas?: readonly Formula[];
  /** Formulas one after the other that give each of the cells side by side. */
  readonly uses?: readonly (readonly Use[])[];
  /** Throws an InputError for arguments that will not do together. */
  readonly check?: (given: Given<A>) => void;
  /** The result of one row. Throws an InputError where there is none. */
  readonly work: (given: Given<A>) => Answer;
  /** The first cell of every row at once, where that is faster; what it gives for a spoiled row is not used. */
  readonly atOnce?: (call: CallArguments) => (i: number) => Cell | undefined;
  /** A function that gives a table of its own, whatever the rows of its arguments. */
  readonly table?: (args: readonly unknown[], rules: Rules) => readonly (readonly unknown[])[];
}

export type Rules = Readonly<Record<string, Rule>>;

/** A rule with work of its own. */
export function rule<A extends Arguments>(own: Rule<A>): Rule {
  return own as unknown as Rule;
}

type ByFormula<A extends Arguments> = Omit<Rule<A>, "work" | "uses" | "atOnce"> & {
  readonly formula?: BySystem<Formula>;
  readonly of?: Use["of"];
  readonly uses?: readonly (readonly Use[])[];
  readonly unit?: Unit;
};

/** A rule that is nothing but formulas on its arguments. */
export function byFormula<A extends Arguments>(own: ByFormula<A>): Rule {
  const { formula, of, unit, ...rest } = own;
  const uses = own.uses ?? [[{ formula: formula as BySystem<Formula>, of: of as Use["of"] }]];
  const used = uses.flat().map((use) => inSystem(use.formula, "ip"));
  const formulas = own.formulas ?? [...new Set(used)];
  const base = { ...rest, uses, formulas, width: uses.length };
  const work = (given: Given<A>): Answer => {
    const sums = uses.map((chain) => sumsOf(chain, given as Readonly<Record<string, unknown>>));
    return {
      gives: sums.map((chain) => sumValue(chain.at(-1) as Sum)),
      why: () => ({ sums: sums.flat(), ...(unit === undefined ? {} : { unit }) }),
    };
  };
  const atOnce =
    uses.length === 1 && !own.check
      ? (call: CallArguments) => {
          const values = valuesOf(uses[0] as readonly Use[], call);
          return (i: number) => (typeof values === "number" ? values : (values[i] as number));
        }
      : undefined;
  return { ...base, work, ...(atOnce ? { atOnce } : {}) } as unknown as Rule;
}

function sumsOf(chain: readonly Use[], given: Readonly<Record<string, unknown>>): Sum[] {
  const sums: Sum[] = [];
  for (const { formula, of } of chain) {
    const numbers: Record<string, number> = {};
    for (const symbol in of) {
      const by = of[symbol];
      numbers[symbol] =
        by === before
          ? sumValue(sums.at(-1) as Sum)
          : typeof by === "number"
            ? by
            : (given[by as string] as number);
    }
    const { units = "ip" } = given;
    sums.push({ formula: inSystem(formula, units as System), given: numbers });
  }
  return sums;
}

function valuesOf(chain: readonly Use[], call: CallArguments): Column {
  let values: Column = Number.NaN;
  for (const { formula, of } of chain) {
    const inputs: Record<string, Column> = {};
    let areNumbers = call.length === 1;
    for (const symbol in of) {
      const by = of[symbol];
      const column: Column =
        by === before ? values : typeof by === "number" ? by : call.column(by as string);
      inputs[symbol] = column;
      areNumbers &&= typeof column === "number";
    }
    const own = inSystem(formula, call.system);
    values = areNumbers
      ? oneValue(own, inputs as Record<string, number>)
      : columns(own, inputs, call.length);
  }
  return values;
}

/** What a sum comes to. */
export function sumValue({ formula, given }: Sum): number {
  return oneValue(formula, given);
}

/** The answer that one formula gives. */
export function bySum(formula: Formula, given: Readonly<Record<string, number>>): Answer {
  const sum = { formula, given };
  return { gives: sumValue(sum), why: () => ({ sums: [sum] }) };
}
