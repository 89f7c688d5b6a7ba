import type { NameTable } from "../contract/argument";
import type { OpeningList } from "./opening-list";
import type { Table, TableMaker } from "./table";

/** One argument value as native text, short enough to stand in a formula several times. */
export interface Operand {
  /** As the formula itself writes it. */
  readonly text: string;
  /** As any cell of the workbook may write it. */
  readonly far: string;
  /** Present where the value is written in the formula: it needs no guard then. */
  readonly literal?: number | string | boolean;
}

/** A formula of a step, given where the earlier ones of its row stand. */
export type Part = (earlier: readonly string[]) => string;

/** What a native form is written with: the arguments of one call, and sheets for its steps. */
export interface NativeCall {
  /** Which of the cells side by side. */
  readonly side: number;
  /** The argument's value for this cell; undefined where it is left out. */
  at(name: string): Operand | undefined;
  /** The cells of an argument side by side in this cell's row. */
  across(name: string): { readonly text: string; readonly far: string };
  /** An argument that is taken as a whole: a range, an array constant or one value. */
  list(name: string): { readonly text: string; readonly far: string };
  /** How many cells a range has, and each of them, good on any sheet. */
  size(name: string): number;
  cells(name: string): readonly string[];
  /** A step of the calculation on a sheet of its own; `formula` in references good anywhere. */
  step(what: string, formula: string): string;
  /**
   * Steps that build on each other, side by side in one row: for each name where its value stands.
   * The same `what` of the same `of` is made once.
   */
  steps<Name extends string>(
    what: string,
    of: readonly string[],
    parts: Readonly<Record<Name, (earlier: Readonly<Record<Name, string>>) => string>>,
  ): Readonly<Record<Name, string>>;
  /** Rows of steps, one below the other. */
  stepRows(
    what: string,
    key: string,
    rows: readonly (readonly Part[])[],
  ): readonly (readonly string[])[];
  /** A table of the editions. */
  table(make: TableMaker): Table;
  /** Native text for the number that a name has; 0 for an unknown one. */
  numberOf(kind: NameTable, name: string): string;
  /** The list of openings in labels, areas and boxes, or the error that its columns give. */
  openings(): OpeningList | string;
}
