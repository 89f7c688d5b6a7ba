import { type CellError, type CellValue, isBlankCell, isCellError, kept } from "../../cells";
import { alikeRows } from "./alike-rows";
import { callRule } from "./call-rule";
import type { Expression } from "./expression";
import type { SheetKind } from "./sheet-kind";

/** One value a row. */
export type Values = readonly CellValue[];

/** Where an expression finds its values. */
export interface Source {
  /** Rows of the own sheet. */
  readonly length: number;
  /** A field of the own sheet, row by row. */
  readonly field: (key: string) => Values;
  readonly setting: (key: string) => CellValue;
  readonly has: (sheet: SheetKind, key: string) => boolean;
  /** A field of another sheet in all its rows. */
  readonly column: (sheet: SheetKind, key: string) => Values;
}

/** What an expression is in every row: what its cell gives when it is calculated. */
export function evaluate(expression: Expression, source: Source): Values {
  const found = resultOf(expression, source);
  return isColumn(found) ? found : new Array<CellValue>(source.length).fill(found);
}

/** One value for all rows, or one a row. */
type Result = CellValue | Values;

function resultOf(part: Expression, source: Source): Result {
  switch (part.is) {
    case "value":
      return part.value;
    case "field":
      return source.field(part.key);
    case "first":
      return source.field(part.keys[0] as string);
    case "with":
      return part.only && resultOf(part.only, source) === false
        ? null
        : resultOf(part.what, source);
    case "kept":
      return resultOf(source.has(part.sheet, part.key) ? part.kept : part.otherwise, source);
    case "setting":
      return source.setting(part.key);
    case "found":
      return foundIn(part, source);
    case "sum":
    case "count":
      return folded(part, source);
    case "rule":
      return byRule(part, source);
    case "native":
      return byNative(part, source);
    case "operator": {
      const [left, right] = [resultOf(part.left, source), resultOf(part.right, source)];
      return together([left, right], source, (i) => operate(part.sign, at(left, i), at(right, i)));
    }
    case "cells":
    case "column":
      throw new Error(`"${part.is}" stands for many cells`);
  }
}

const at = (result: Result, i: number): CellValue =>
  isColumn(result) ? (result[i] ?? null) : result;

function isColumn(result: Result): result is Values {
  return Array.isArray(result);
}

function eachRow({ length }: Source, value: (i: number) => CellValue): Values {
  const values = new Array<CellValue>(length);
  for (let i = 0; i < length; i++) values[i] = value(i);
  return values;
}

/** What comes of these: one value where each of them is one. */
function together(
  from: readonly Result[],
  source: Source,
  value: (i: number) => CellValue,
): Result {
  return from.some(isColumn) ? eachRow(source, value) : value(0);
}

/** Texts are compared as a spreadsheet does: without case. */
function keyOf(value: CellValue): string {
  return typeof value === "object" ? "" : String(value).trim().toLowerCase();
}

function foundIn(part: Extract<Expression, { is: "found" }>, source: Source): Values {
  const names = source.column(part.sheet, part.of);
  const values = source.column(part.sheet, part.key);
  const byName = new Map<string, CellValue>();
  names.forEach((name, i) => {
    const key = keyOf(name);
    // A firm that states it in another row of the same name has stated it all the same.
    if (key !== "" && isBlankCell(byName.get(key) ?? null)) byName.set(key, values[i] ?? null);
  });
  const own = source.field(part.name);
  return eachRow(source, (i) => {
    const key = keyOf(own[i] ?? null);
    return byName.has(key) ? (byName.get(key) as CellValue) : notThere;
  });
}

const notThere: CellError = { error: "#N/A" };
const noNumber: CellError = { error: "#VALUE!" };

function folded(part: Extract<Expression, { is: "sum" | "count" }>, source: Source): Values {
  const of = (key: string) => source.column(part.sheet, key);
  const cells = of(part.key);
  const split = (isSame: boolean) =>
    part.where
      .filter(({ test }) => (test === "=") === isSame)
      .map(({ key, test, of: own }) => ({ values: of(key), test, own: resultOf(own, source) }));
  const [same, further] = [split(true), split(false)];
  const groups = new Group();
  const keys = same.map(({ values }) => values.map(keyOf));
  cells.forEach((cell, row) => {
    if (part.where.length === 0 && cell === null) return;
    let group = groups;
    for (const column of keys) group = group.made(column[row] ?? "");
    group.rows.push(row);
  });
  const fold = (rows: readonly number[]): CellValue => {
    if (part.is === "count") return rows.length;
    let sum = 0;
    for (const row of rows) {
      const cell = cells[row] ?? null;
      if (isCellError(cell)) return cell;
      if (typeof cell === "number") sum += cell;
    }
    return sum;
  };
  return eachRow(source, (i) => {
    let group: Group | undefined = groups;
    for (const { own } of same) group = group?.within.get(keyOf(at(own, i)));
    const rows = group?.rows ?? [];
    if (further.length > 0)
      return fold(
        rows.filter((row) =>
          further.every(({ values, test, own }) => isMet(values[row] ?? null, test, at(own, i))),
        ),
      );
    if (!group) return fold(rows);
    group.folded ??= { value: fold(rows) };
    return group.folded.value;
  });
}

/** Rows that are alike in what is asked of them, by one field after the other. */
class Group {
  readonly within = new Map<string, Group>();
  readonly rows: number[] = [];
  folded: { readonly value: CellValue } | undefined;

  made(key: string): Group {
    return kept(this.within, key, () => new Group());
  }
}

function isMet(value: CellValue, test: "=" | "<>" | ">", of: CellValue): boolean {
  if (test !== ">") return (keyOf(value) === keyOf(of)) === (test === "=");
  return typeof value === "number" && typeof of === "number" && value > of;
}

/** Rows that hold the same in all that a function is given of them are one call. */
function byRule(part: Extract<Expression, { is: "rule" }>, source: Source): Result {
  const byRow: Values[] = [];
  const args = part.args.map((arg): ((rows?: readonly number[]) => unknown) => {
    if (arg.is === "column") {
      const whole = asRange(source.column(arg.sheet, arg.key));
      return () => whole;
    }
    const given =
      arg.is === "cells" ? arg.keys.map((key) => source.field(key)) : resultOf(arg, source);
    if (!isColumn(given as Result)) return () => given;
    const columns = (arg.is === "cells" ? given : [given]) as readonly Values[];
    byRow.push(...columns);
    return (rows) => rowsOf(columns, rows);
  });
  const place = (part.place ?? 1) - 1;
  const given = (rows?: readonly number[]) => {
    const all = callRule(
      part.id,
      args.map((arg) => arg(rows)),
    );
    const isOne = Array.isArray(all) && all.length === 1;
    return (i: number): CellValue =>
      Array.isArray(all) ? (all[isOne ? 0 : i]?.[place] ?? null) : all;
  };
  const isWhole = takesWhole.has(part.id);
  if (byRow.length === 0 && !isWhole) return given()(0);
  const { groups, first } = alikeRows(byRow, source.length);
  if (isWhole) {
    const values = first.map((row) => given([row])(0));
    return eachRow(source, (i) => values[groups[i] as number] as CellValue);
  }
  // Rows of which each is another are given as they are.
  if (first.length > source.length / 2) return eachRow(source, given());
  const value = given(first);
  return eachRow(source, (i) => value(groups[i] as number));
}

/** Functions that take a range as a whole, so that each row is a call of its own. */
const takesWhole: ReadonlySet<string> = new Set(["DEFICIT_RATE"]);

const asRange = (values: Values) => values.map((cell) => [cell]);

/** Cells of some columns side by side, a row each; of all rows where none are named. */
function rowsOf(columns: readonly Values[], rows?: readonly number[]): CellValue[][] {
  const [only] = columns;
  if (!rows)
    return columns.length === 1
      ? asRange(only as Values)
      : Array.from(only ?? [], (_, i) => columns.map((column) => column[i] ?? null));
  return rows.map((i) => columns.map((column) => column[i] ?? null));
}

function byNative(part: Extract<Expression, { is: "native" }>, source: Source): Result {
  const [first] = part.args;
  if (first?.is === "cells") {
    const columns = first.keys.map((key) => source.field(key));
    return eachRow(source, (i) => {
      let [count, sum] = [0, 0];
      for (const column of columns) {
        const cell = column[i];
        if (typeof cell !== "number") continue;
        count++;
        sum += cell;
      }
      if (part.name === "COUNT") return count;
      return count === 0 ? { error: "#DIV/0!" } : sum / count;
    });
  }
  if (part.name === "IF") return chosen(part.args, source);
  const args = part.args.map((arg) => resultOf(arg, source));
  return together(args, source, (i) =>
    native(
      part.name,
      args.map((arg) => at(arg, i)),
    ),
  );
}

/** A branch that no row takes is not worked out, as in a spreadsheet. */
function chosen([test, ...branches]: readonly Expression[], source: Source): Result {
  const tests = resultOf(test as Expression, source);
  const worked = new Map<number, Result>();
  const branch = (cell: CellValue): Result => {
    if (isCellError(cell)) return cell;
    const n = cell === true ? 0 : 1;
    return kept(worked, n, () => resultOf(branches[n] as Expression, source));
  };
  return isColumn(tests) ? eachRow(source, (i) => at(branch(at(tests, i)), i)) : branch(tests);
}

function native(name: string, args: readonly CellValue[]): CellValue {
  const wrong = args.find(isCellError);
  switch (name) {
    case "ISNUMBER":
      return typeof args[0] === "number";
    case "OR":
      return wrong ?? args.includes(true);
    case "AND":
      return wrong ?? !args.includes(false);
    case "MAX":
      return wrong ?? Math.max(...args.filter((cell): cell is number => typeof cell === "number"));
    case "ABS":
      return wrong ?? (typeof args[0] === "number" ? Math.abs(args[0]) : noNumber);
    default:
      throw new Error(`${name} is not known here`);
  }
}

function operate(sign: string, left: CellValue, right: CellValue): CellValue {
  if (isCellError(left)) return left;
  if (isCellError(right)) return right;
  if (sign === "=") {
    if (isBlankCell(left) || isBlankCell(right))
      // A cell left blank counts as 0 beside a number.
      return (isBlankCell(left) && isBlankCell(right)) || (left === 0 && right === null);
    return keyOf(left) === keyOf(right);
  }
  if (sign === "&") return `${left ?? ""}${right ?? ""}`;
  const [a, b] = [left ?? 0, right ?? 0];
  if (typeof a !== "number" || typeof b !== "number") return noNumber;
  switch (sign) {
    case "<=":
      return a <= b;
    case "*":
      return a * b;
    case "+":
      return a + b;
    case "-":
      return a - b;
    default:
      return b === 0 ? { error: "#DIV/0!" } : a / b;
  }
}
