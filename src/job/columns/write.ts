import { cellName } from "../../cells";
import type { Expression } from "./expression";
import type { SheetKind } from "./sheet-kind";

/** Where the formulas of one row find what they point at. */
export interface Places {
  /** Whether a sheet of the job has a field. */
  readonly has: (sheet: SheetKind, key: string) => boolean;
  /** Column of a field, from 0. */
  readonly col: (sheet: SheetKind, key: string) => number;
  /** The cells of a field in all rows of a sheet, such as "Boxes!$C$2:$C$13". */
  readonly column: (sheet: SheetKind, key: string) => string;
  readonly setting: (key: string) => string;
}

/** The formula of a cell as a user would type it, without "=". */
export function written(
  expression: Expression,
  sheet: SheetKind,
  row: number,
  places: Places,
): string {
  const has = (key: string) => places.has(sheet, key);
  const cell = (key: string) => cellName(row, places.col(sheet, key));
  return write(planned(expression, has, places));

  function write(part: Expression): string {
    switch (part.is) {
      case "value":
        return typeof part.value === "string"
          ? `"${part.value}"`
          : String(part.value).toUpperCase();
      case "field":
        return cell(part.key);
      case "cells":
        return `${cell(part.keys[0] as string)}:${cell(part.keys.at(-1) as string)}`;
      case "first":
      case "with":
      case "kept":
        throw new Error(`"${part.is}" is settled before a formula is written`);
      case "setting":
        return places.setting(part.key);
      case "column":
        return places.column(part.sheet, part.key);
      case "found": {
        const among = places.column(part.sheet, part.of);
        return `INDEX(${places.column(part.sheet, part.key)},MATCH(${cell(part.name)},${among},0))`;
      }
      case "sum": {
        const where = criteria(part);
        const numbers = places.column(part.sheet, part.key);
        return where.length === 0 ? `SUM(${numbers})` : `SUMIFS(${[numbers, ...where].join(",")})`;
      }
      case "count": {
        const where = criteria(part);
        return where.length === 0
          ? `COUNTA(${places.column(part.sheet, part.key)})`
          : `COUNTIFS(${where.join(",")})`;
      }
      case "rule": {
        const call = `FANROW.${part.id}(${part.args.map(write).join(",")})`;
        return part.place === undefined ? call : `INDEX(${call},1,${part.place})`;
      }
      case "native":
        return `${part.name}(${part.args.map(write).join(",")})`;
      case "operator":
        return `${inner(part.left, part.sign)}${part.sign}${inner(part.right, part.sign, true)}`;
    }
  }

  function criteria({ sheet, where }: Extract<Expression, { is: "sum" | "count" }>): string[] {
    return where
      .filter(({ key }) => places.has(sheet, key))
      .flatMap(({ key, test, of }) => [places.column(sheet, key), criterion(test, of)]);
  }

  /** As COUNTIFS takes it. An own cell left blank asks for blanks, where it may be left blank. */
  function criterion(test: "=" | "<>" | ">", of: Expression): string {
    const text = write(of);
    if (test === "=") return of.is === "field" && !named.has(of.key) ? `${text}&""` : text;
    return of.is === "value" ? `"${test}${of.value}"` : `"${test}"&${text}`;
  }

  /** In brackets where a sign inside binds less than the one outside. */
  function inner(part: Expression, outside: string, isRight = false): string {
    const text = write(part);
    const own = part.is === "operator" ? (binding[part.sign] as number) : Number.POSITIVE_INFINITY;
    const around = binding[outside] as number;
    // What stands right of a "-" or a "/" is no part of the same run of signs.
    return own < around || (own === around && isRight && "-/".includes(outside))
      ? `(${text})`
      : text;
  }
}

/** Fields without which a row is none. */
const named: ReadonlySet<string> = new Set(["dwelling", "tag", "model"]);

const binding: Readonly<Record<string, number>> = {
  ...{ "=": 0, "<=": 0, "&": 1, "+": 2, "-": 2 },
  ...{ "*": 3, "/": 3 },
};

/** An expression without what asks for fields that a plainer sheet lacks: they count as blank. */
function planned(part: Expression, has: (key: string) => boolean, places: Places): Expression {
  const inside = (entry: Expression) => planned(entry, has, places);
  switch (part.is) {
    case "first":
      return { is: "field", key: part.keys.find(has) ?? (part.keys.at(-1) as string) };
    case "kept":
      return inside(places.has(part.sheet, part.key) ? part.kept : part.otherwise);
    case "field":
      return has(part.key) ? part : { is: "value", value: "" };
    case "rule": {
      const isThere = (arg: Expression) => arg.is !== "with" || has(arg.key);
      const args = part.args.slice(0, part.args.findLastIndex(isThere) + 1);
      const own = (arg: Expression) => inside(arg.is === "with" ? arg.what : arg);
      return { ...part, args: args.map((arg) => (isThere(arg) ? own(arg) : blank)) };
    }
    case "sum":
    case "count":
      return { ...part, where: part.where.map((each) => ({ ...each, of: inside(each.of) })) };
    case "operator":
      return settled({ ...part, left: inside(part.left), right: inside(part.right) });
    case "native":
      return settled({ ...part, args: part.args.map(inside) });
    default:
      return part;
  }
}

const blank: Expression = { is: "value", value: "" };

/** What is known without looking at a row. */
function settled(part: Expression): Expression {
  const known = (entry: Expression | undefined) =>
    entry?.is === "value" ? entry.value : undefined;
  if (part.is === "operator" && part.sign === "=") {
    const [left, right] = [known(part.left), known(part.right)];
    if (left !== undefined && right !== undefined) return { is: "value", value: left === right };
  }
  if (part.is !== "native") return part;
  const [test, then, otherwise] = part.args as [Expression, Expression, Expression];
  if (part.name === "ISNUMBER" && known(test) === "") return { is: "value", value: false };
  if (part.name === "AND" && part.args.some((entry) => known(entry) === false))
    return { is: "value", value: false };
  if (part.name === "IF" && typeof known(test) === "boolean") return known(test) ? then : otherwise;
  return part;
}
