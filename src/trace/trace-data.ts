import type { CellValue, Place } from "../cells";
import type { SaidSource, SaidSum } from "../job";
import type { Budget } from "../spread";

/** One cell and what stands in it. */
export interface CellSeen {
  readonly place: Place;
  /** `Fans!P3`. */
  readonly name: string;
  /** The heading above it or the label beside it; "" where there is none. */
  readonly label: string;
  readonly value: CellValue;
}

/** What a formula reads at one reference. */
export interface Read {
  /** As written in the formula. */
  readonly text: string;
  readonly place: Place;
  /** Every cell of a small range, row by row; empty for one of more than a dozen cells. */
  readonly cells: readonly CellSeen[];
  readonly count: number;
  /** Cells of the range that hold anything. */
  readonly filled: number;
}

export type Given = "cell" | "range" | "literal" | "expression" | "left out";

/** One argument of a call of ours. */
export interface ArgumentTrace {
  readonly name: string;
  /** What it is, from the description of the function. */
  readonly description: string;
  readonly given: Given;
  /** As written in the formula; "" where left out. */
  readonly text: string;
  /** Where it came from: one reference for a cell or a range, any number for an expression. */
  readonly reads: readonly Read[];
  /** Its value, of a range the one that counts for this cell; undefined for a list or where unknown. */
  readonly value?: CellValue;
  /** What served in place of an argument left out. */
  readonly stoodIn?: number | string;
}

/** A call of one of our functions. */
export interface CallTrace {
  readonly id: string;
  readonly title: string;
  /** As written: `FANROW.FLOW(J3,N3,O3,Job!$B$5)`. */
  readonly text: string;
  /** Functions around it, outermost first: `IF`, `ROUND`. */
  readonly inside: readonly string[];
  /** Why its result does not count in this cell: a condition took another way. */
  readonly unused?: string;
  /** Formulas in symbols, with this row's numbers and with their results. */
  readonly sums: readonly SaidSum[];
  readonly words: readonly string[];
  /** The result with its unit, "" where there is none. */
  readonly result: string;
  /** The sums, words and result as lines: the text that WORKING gives for the same call. */
  readonly lines: readonly string[];
  readonly arguments: readonly ArgumentTrace[];
  /** The lines of the spread, where the call gives one. */
  readonly budget?: Budget;
  /** Cells of a list that the call picked, such as the areas of the openings in use. */
  readonly picked: readonly CellSeen[];
  readonly sources: readonly SaidSource[];
  /** Why it cannot be worked out. */
  readonly problem?: string;
}

/** A look-up or conditional sum, and the cells of its ranges that it took. */
export interface Pick {
  /** As written: `INDEX(Boxes!$H$2:$H$18,MATCH(H2,Boxes!$A$2:$A$18,0))`. */
  readonly text: string;
  /** Up to a dozen; `count` tells of more. */
  readonly cells: readonly CellSeen[];
  readonly count: number;
}

/** Whether the stored value is what the formula gives from the stored values that it reads. */
export type Agreement =
  | { readonly state: "agrees" }
  | { readonly state: "differs"; readonly fresh: CellValue }
  | { readonly state: "changes"; readonly why: string }
  | { readonly state: "not evaluated"; readonly why: string };

/** Why one cell holds what it holds. Plain data: it may be sent or stored as JSON. */
export interface Trace extends CellSeen {
  readonly kind: "blank" | "typed" | "native" | "ours";
  /** As typed, with "=": `=FANROW.FLOW(…)`; null for a cell without one. */
  readonly formula: string | null;
  /** Of a typed flow, the sum by the cells of its row: "1.07 × 24 × √3.4 = 47.4". */
  readonly given?: string;
  /** The cell whose formula spills over this one; `formula` is then that cell's. */
  readonly spilledFrom?: CellSeen;
  /** Calls of our functions, outermost first. */
  readonly calls: readonly CallTrace[];
  /** Everything the formula reads, in its order, each once. */
  readonly reads: readonly Read[];
  readonly picks: readonly Pick[];
  /** For a formula cell, and for a typed one with a sum of its row. */
  readonly agreement?: Agreement;
  /** For a flow whose row has a spread of its own: that cell. */
  readonly spread?: CellSeen;
}
