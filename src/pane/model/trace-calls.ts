import type { SaidSum } from "../../job";
import type { ArgumentTrace, CallTrace, CellSeen, Trace } from "../../trace";
import { type Clause, clauseOf } from "./marks";
import { type BudgetView, budgetView, isOfBudget } from "./trace-budget";
import {
  type CellLink,
  linkTo,
  plainValue,
  type ReadLink,
  readLink,
  type Target,
  targetAt,
  withUnitOf,
} from "./trace-cells";

/** A formula typeset: in symbols, with the numbers of the row, and what it comes to. */
export interface SumView {
  /** "" where the call says the same. */
  readonly title: string;
  /** "Q = K · A · √ΔP", "= 1.07 · 24 · √4", "= 51.36 cfm" */
  readonly lines: readonly string[];
  readonly legend: readonly { readonly symbol: string; readonly meaning: string }[];
}

export interface ArgumentView {
  readonly name: string;
  readonly meaning: string;
  /** The cell or range it came from, where it is one. */
  readonly from: Target | undefined;
  /** How it was given where it came from no place of its own: "left out", "in the formula". */
  readonly given: string;
  /** What the sheet calls that cell, how large the range is, or the text it is worked out from. */
  readonly words: string;
  /** With unit; "" where it has none of its own, as a list. */
  readonly value: string;
  /** Cells behind an expression or a small list. */
  readonly cells: readonly CellLink[];
}

/** One call of a worksheet function of ours. */
export interface CallView {
  /** "FANROW.FLOW" */
  readonly name: string;
  readonly title: string;
  /** "inside IF in INDEX"; "" where it stands alone. */
  readonly inside: string;
  /** Why it does not count in this cell; "" where it does. */
  readonly unused: string;
  readonly sums: readonly SumView[];
  readonly words: readonly string[];
  readonly result: string;
  /** Why there is no result; "" where there is one. */
  readonly problem: string;
  readonly arguments: readonly ArgumentView[];
  /** Cells that it picked from a list. */
  readonly picked: readonly CellLink[];
  readonly clauses: readonly Clause[];
  readonly budget: BudgetView | undefined;
}

export function callView(call: CallTrace, of: Trace): CallView {
  const { title, inside, sums, result, unused = "", problem = "" } = call;
  const budget = budgetView(call);
  // What the table of the budget says is not said twice.
  const said = budget ? call.words.filter((line) => !isOfBudget(line, call)) : call.words;
  return {
    name: `FANROW.${call.id}`,
    title,
    inside: inside.length > 0 ? `inside ${[...inside].reverse().join(" in ")}` : "",
    unused,
    sums: [...sums.map((sum) => sumView(sum, title)), ...said.filter(isSum).map(sumOfWords)],
    words: said.filter((line) => !isSum(line)),
    result,
    problem,
    arguments: call.arguments.map((each) => argumentView(each, of)),
    picked: call.picked.map(linkTo),
    clauses: call.sources.map(clauseOf),
    budget,
  };
}

/** A rule tells its sum on one line: `Q = Q_tot − φ · Q_inf = 51.9 − 1 · 35.2`. */
const isSum = (line: string) => /^[\p{L}\p{N}_]+ = /u.test(line);

function sumOfWords(line: string): SumView {
  const [symbol = "", formula = "", ...further] = line.split(" = ");
  return {
    title: "",
    lines: [`${symbol} = ${formula}`, ...further.map((part) => `= ${part}`)],
    legend: [],
  };
}

/** `= 51.36 cfm` of `Q = 51.36 cfm`. */
const right = (line: string) => line.slice(line.indexOf(" = ") + 1);

function sumView({ title, symbols, numbers, results, legend }: SaidSum, call: string): SumView {
  return {
    title: title === call ? "" : title,
    lines: symbols.flatMap((line, i) => {
      const [given, result] = [numbers[i], results[i]];
      return [
        line,
        ...(given === undefined ? [] : [right(given)]),
        // A constant stands for itself.
        ...(result === undefined || (given && right(result) === right(given))
          ? []
          : [right(result)]),
      ];
    }),
    legend: legend.map((line) => {
      const [symbol = "", ...meaning] = line.split("  ");
      return { symbol, meaning: meaning.join(" ") };
    }),
  };
}

function argumentView(argument: ArgumentTrace, of: Trace): ArgumentView {
  const { name, description, given, text, reads, stoodIn } = argument;
  const view = { name, meaning: description, from: undefined, given: "", cells: [] } as const;
  const [read] = reads;
  const own = argument.value === undefined ? "" : plainValue(argument.value);
  switch (given) {
    case "left out":
      return {
        ...view,
        given: stoodIn === undefined ? "left out" : "left out, by default",
        words: "",
        value: stoodIn === undefined ? "" : plainValue(stoodIn),
      };
    case "literal":
      return { ...view, given: "in the formula", words: "", value: own };
    case "expression":
      return {
        ...view,
        given: "worked out",
        words: text,
        value: own,
        cells: reads.flatMap((each) => readLink(each).cells),
      };
    case "cell": {
      const [cell] = read?.cells ?? [];
      if (!cell) return { ...view, words: text, value: own };
      return { ...view, ...fromCell(cell) };
    }
    case "range": {
      if (!read) return { ...view, words: text, value: own };
      const { target, words, cells }: ReadLink = readLink(read);
      if (argument.value === undefined) return { ...view, from: target, words, value: "", cells };
      const { row, col } = cellInRange(argument, of);
      const from = targetAt({ sheet: target.spot.sheet, row, col });
      const label = read.cells.find(({ place }) => place.top === row && place.left === col)?.label;
      return {
        ...view,
        from,
        words: `of ${text}`,
        value: withUnitOf(argument.value, label ?? ""),
      };
    }
  }
}

function fromCell(cell: CellSeen): Pick<ArgumentView, "from" | "words" | "value"> {
  const { target, label, value } = linkTo(cell);
  return { from: target, words: label, value };
}

/** The cell of a range that counts for the traced cell: the one beside it where a result spills. */
function cellInRange({ reads }: ArgumentTrace, of: Trace): { row: number; col: number } {
  const { top, left, bottom, right } = reads[0]?.place ?? of.place;
  const anchor = of.spilledFrom?.place ?? of.place;
  const row = top === bottom ? top : top + of.place.top - anchor.top;
  const col = left === right ? left : left + of.place.left - anchor.left;
  return { row, col };
}
