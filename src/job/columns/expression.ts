import type { SheetKind } from "./sheet-kind";

/**
 * What a computed field is, as data. `write.ts` makes a cell's formula of it, `evaluate.ts` the
 * values of its column: the sheet and the check cannot come to mean different things.
 */
export type Expression =
  | { readonly is: "value"; readonly value: number | string | boolean }
  /** A cell of the own row. */
  | { readonly is: "field"; readonly key: string }
  /** The cells of the own row from the first of these fields to the last. */
  | { readonly is: "cells"; readonly keys: readonly string[] }
  /** A setting of the Job sheet. */
  | { readonly is: "setting"; readonly key: string }
  /** A whole column of a sheet. */
  | { readonly is: "column"; readonly sheet: SheetKind; readonly key: string }
  /** A cell of the first row of a sheet whose `of` is the own row's `name`. */
  | {
      readonly is: "found";
      readonly sheet: SheetKind;
      readonly key: string;
      readonly of: string;
      readonly name: string;
    }
  /**
   * The sum of a field over the rows of a sheet that are as asked, or how many they are; a count
   * that asks nothing is of those that have `key`. What is asked of a field that the sheet does not
   * have counts as met.
   */
  | {
      readonly is: "sum" | "count";
      readonly sheet: SheetKind;
      readonly key: string;
      readonly where: readonly Asked[];
    }
  /** One expression where a sheet has a field, another in a plainer job. */
  | {
      readonly is: "kept";
      readonly sheet: SheetKind;
      readonly key: string;
      readonly kept: Expression;
      readonly otherwise: Expression;
    }
  /** The first of these fields that the sheet has: the others stand in for it in a plainer job. */
  | { readonly is: "first"; readonly keys: readonly string[] }
  /**
   * Left out at the end of a call, or blank, where the sheet has no such field. What is worked out
   * again leaves it out as well where `only` does not hold: there it changes nothing.
   */
  | {
      readonly is: "with";
      readonly key: string;
      readonly what: Expression;
      readonly only?: Expression;
    }
  /** A worksheet function of ours; `place` picks one of several values side by side, from 1. */
  | {
      readonly is: "rule";
      readonly id: string;
      readonly args: readonly Expression[];
      readonly place?: number;
    }
  | { readonly is: "native"; readonly name: Native; readonly args: readonly Expression[] }
  | {
      readonly is: "operator";
      readonly sign: Sign;
      readonly left: Expression;
      readonly right: Expression;
    };

type Sign = "=" | "<=" | "*" | "+" | "-" | "/" | "&";

export type Native = "IF" | "OR" | "AND" | "MAX" | "ABS" | "COUNT" | "AVERAGE" | "ISNUMBER";

/** What is asked of a field in the rows of a sheet; a blank is the same as a blank. */
export interface Asked {
  readonly key: string;
  readonly test: "=" | "<>" | ">";
  readonly of: Expression;
}

/** In place of an expression: a field of the own row by its key. */
export type Part = Expression | string;

const toExpression = (part: Part): Expression =>
  typeof part === "string" ? { is: "field", key: part } : part;

const native =
  (name: Native) =>
  (...args: Part[]): Expression => ({ is: "native", name, args: args.map(toExpression) });

const operator =
  (sign: Sign) =>
  (left: Part, right: Part): Expression => ({
    is: "operator",
    sign,
    left: toExpression(left),
    right: toExpression(right),
  });

export const value = (entry: number | string | boolean): Expression => ({
  is: "value",
  value: entry,
});
export const nothing = value("");
export const setting = (key: string): Expression => ({ is: "setting", key });
export const cells = (...keys: string[]): Expression => ({ is: "cells", keys });
export const first = (...keys: string[]): Expression => ({ is: "first", keys });
export const column = (sheet: SheetKind, key: string): Expression => ({ is: "column", sheet, key });
export const withField = (key: string, what: Part, only?: Expression): Expression => ({
  is: "with",
  key,
  what: toExpression(what),
  ...(only && { only }),
});

/** The cell `key` of the row of another sheet that this row names in its field `name`. */
export const found = (sheet: SheetKind, key: string, name: string, of = name): Expression => ({
  is: "found",
  sheet,
  key,
  name,
  of,
});

/** What a row of another sheet is asked: the same as a value, or another comparison with it. */
type Where = Readonly<Record<string, Part | readonly [test: Asked["test"], of: Part]>>;

const asked = (where: Where): Asked[] =>
  Object.entries(where).map(([key, part]) => {
    const [test, of] = Array.isArray(part) ? part : ["=" as const, part as Part];
    return { key, test, of: toExpression(of) };
  });

export const sum = (sheet: SheetKind, key: string, where: Where): Expression => ({
  is: "sum",
  sheet,
  key,
  where: asked(where),
});
/** The rows of a sheet that have `key`, or those in which each of these fields is as asked. */
export const countOf = (sheet: SheetKind, key: string, where: Where = {}): Expression => ({
  is: "count",
  sheet,
  key,
  where: asked(where),
});

export const ifKept = (sheet: SheetKind, key: string, kept: Part, otherwise: Part): Expression => ({
  is: "kept",
  sheet,
  key,
  kept: toExpression(kept),
  otherwise: toExpression(otherwise),
});

export const rule = (id: string, ...args: Part[]): Expression => ({
  is: "rule",
  id,
  args: args.map(toExpression),
});
export const placeOf = (place: number, id: string, ...args: Part[]): Expression => ({
  is: "rule",
  id,
  args: args.map(toExpression),
  place,
});

export const when = native("IF");
export const either = native("OR");
export const both = native("AND");
export const largest = native("MAX");
export const sizeOf = native("ABS");
export const isNumber = native("ISNUMBER");
export const same = operator("=");
export const atMost = operator("<=");
export const times = operator("*");
export const plus = operator("+");
export const less = operator("-");
export const over = operator("/");
export const joined = operator("&");
export const isBlank = (part: Part): Expression => same(part, nothing);
/** Blank where one of these is, else what follows. */
export const unlessBlank = (parts: readonly Part[], then: Part): Expression =>
  when(parts.length > 1 ? either(...parts.map(isBlank)) : isBlank(parts[0] as Part), nothing, then);
/** A typed cell where 0 means something: some hosts pass a blank cell to a function as 0. */
export const orNothing = (part: Part): Expression => unlessBlank([part], part);
const count = native("COUNT");
/** The mean of the numbers in some cells. */
export const average = native("AVERAGE");
/** Blank where no number stands in some cells, else what follows. */
export const unlessNone = (part: Part, then: Part): Expression =>
  when(same(count(part), value(0)), nothing, then);
