import type { Spot } from "../../cells";
import type { Cells } from "../cells/cells";
import type { Shape } from "../cells/shapes";
import type { Book } from "./book";
import { calledName, type Node, type Ref, refOf, treeOf } from "./tree";

/** What stands in a product: a line of the same record, lines that are summed or averaged, or a look-up. */
export type Atom =
  | { readonly kind: "line"; readonly line: number }
  | { readonly kind: "sum" | "mean"; readonly lines: readonly number[] }
  | { readonly kind: "look-up"; readonly keys: readonly number[] };

export interface Power {
  readonly atom: Atom;
  readonly exponent: number;
}

/** A formula as constant × product of powers. */
export interface Product {
  readonly constant: number;
  readonly powers: ReadonlyMap<string, Power>;
  /** Single cells whose numbers went into the constant. */
  readonly fixed: readonly Spot[];
  readonly rounding: number | undefined;
}

const transparent = new Set(["ABS", "IFERROR", "IFNA", "N", "VALUE", "NUMBERVALUE", "SINGLE"]);
const rounding = new Set(["ROUND", "ROUNDUP", "ROUNDDOWN", "INT", "TRUNC", "MROUND", "FIXED"]);
const lookUps = new Set([
  "VLOOKUP",
  "HLOOKUP",
  "XLOOKUP",
  "LOOKUP",
  "INDEX",
  "MATCH",
  "CHOOSE",
  "SWITCH",
  "SUMIF",
  "SUMIFS",
  "OFFSET",
  "FILTER",
  "FANROW.OPEN_AREA",
  "FANROW_OPEN_AREA",
]);

/** Where a copy of a formula stands on its sheet. */
export interface At {
  readonly row: number;
  readonly col: number;
}

/** The line of a record that a reference names, seen from a cell of that record. */
function lineOf(ref: Ref, at: At, cells: Cells): number | undefined {
  if (ref.sheet !== undefined && ref.sheet.toLowerCase() !== cells.grid.name.toLowerCase())
    return undefined;
  if (cells.turned)
    return ref.fixedCol || ref.col !== 0 ? undefined : ref.fixedRow ? ref.row : ref.row + at.row;
  return ref.fixedRow || ref.row !== 0 ? undefined : ref.fixedCol ? ref.col : ref.col + at.col;
}

/** Reads a copied formula as a product of powers; undefined where it is none. */
export function productOf(scope: Scope): Product | undefined {
  const tree = treeOf(scope.shape);
  return tree ? reduce(tree, scope, 0) : undefined;
}

/** A formula at one of its places. */
export interface Scope {
  readonly shape: Shape;
  readonly at: At;
  readonly cells: Cells;
  readonly book: Book;
}

const one: Product = { constant: 1, powers: new Map(), fixed: [], rounding: undefined };

function reduce(node: Node, scope: Scope, depth: number): Product | undefined {
  if (depth > 40) return undefined;
  const go = (part: Node) => reduce(part, scope, depth + 1);
  switch (node.type) {
    case "Literal":
      return typeof node.value === "number" ? { ...one, constant: node.value } : undefined;
    case "ReferenceIdentifier":
      return ofReference(node.value, node.kind, scope);
    case "UnaryExpression": {
      const inner = go(node.arguments[0] as Node);
      return inner && node.operator === "%" ? { ...inner, constant: inner.constant / 100 } : inner;
    }
    case "BinaryExpression": {
      const [left, right] = node.arguments as [Node, Node];
      if (node.operator === "*" || node.operator === "/") {
        const [a, b] = [go(left), go(right)];
        return a && b && times(a, node.operator === "*" ? b : raised(b, -1));
      }
      if (node.operator === "^") {
        const [a, b] = [go(left), go(right)];
        return a && b && b.powers.size === 0 ? raised(a, b.constant) : undefined;
      }
      if (node.operator === "+" || node.operator === "-")
        return ofSum(left, right, node.operator, go);
      return undefined;
    }
    case "CallExpression":
      return ofCall(node, scope, go);
    default:
      return undefined;
  }
}

function ofCall(
  node: Node & { type: "CallExpression" },
  scope: Scope,
  go: (node: Node) => Product | undefined,
): Product | undefined {
  const name = calledName(node);
  const args = node.arguments as (Node | null)[];
  const first = args[0];
  if (name === "PI") return { ...one, constant: Math.PI };
  if (!first) return undefined;
  if (transparent.has(name)) return go(first);
  if (rounding.has(name)) {
    const inner = go(first);
    const digits = args[1] ? go(args[1])?.constant : 0;
    return inner && { ...inner, rounding: name === "MROUND" ? undefined : digits };
  }
  if (name === "SQRT") {
    const inner = go(first);
    return inner && raised(inner, 0.5);
  }
  if (name === "POWER") {
    const [inner, exponent] = [go(first), args[1] ? go(args[1]) : undefined];
    return inner && exponent && exponent.powers.size === 0
      ? raised(inner, exponent.constant)
      : undefined;
  }
  if (name === "PRODUCT")
    return args.reduce<Product | undefined>((all, part) => {
      const next = part ? go(part) : undefined;
      return all && next && times(all, next);
    }, one);
  if (/^FANROW[._]FLOW$/.test(name)) {
    const [area, pressure] = [go(first), args[1] ? go(args[1]) : undefined];
    return area && pressure && times(area, raised(pressure, 0.5));
  }
  if (/^FANROW[._]ROUND_AREA$/.test(name)) {
    const inner = go(first);
    return inner && { ...raised(inner, 2), constant: (inner.constant ** 2 * Math.PI) / 4 };
  }
  if (name === "SUM" || name === "AVERAGE" || name === "MEDIAN") {
    const lines = args.flatMap((part) => (part ? linesIn(part, scope) : []));
    if (lines.length === 0) return undefined;
    const kind = name === "SUM" ? "sum" : "mean";
    return single(lines.length === 1 ? { kind: "line", line: lines[0]! } : { kind, lines });
  }
  if (name === "IF" || name === "IFS") {
    const table = asTable(node, scope);
    if (table) return table;
    const branches = name === "IF" ? args.slice(1) : args.filter((_, at) => at % 2 === 1);
    return branches
      .flatMap((branch) => (branch ? (go(branch) ?? []) : []))
      .reduce<Product | undefined>(
        (best, next) => (best && best.powers.size >= next.powers.size ? best : next),
        undefined,
      );
  }
  if (lookUps.has(name)) {
    const keys = keysOf(node, scope);
    return keys.length ? single({ kind: "look-up", keys }) : undefined;
  }
  return undefined;
}

/** IF(E5="A",24,IF(E5="B",38,…)) is a look-up by E5. */
function asTable(node: Node & { type: "CallExpression" }, scope: Scope): Product | undefined {
  const [test, yes] = node.arguments as Node[];
  if (test?.type !== "BinaryExpression" || test.operator !== "=") return undefined;
  const [left, right] = test.arguments as [Node, Node];
  if (
    right.type !== "Literal" ||
    right.value === "" ||
    yes?.type !== "Literal" ||
    typeof yes.value !== "number"
  )
    return undefined;
  const keys = linesIn(left, scope);
  return keys.length ? single({ kind: "look-up", keys }) : undefined;
}

/** The lines whose cells a look-up looks for. */
function keysOf(node: Node, scope: Scope): number[] {
  const keys: number[] = [];
  if (node.type !== "CallExpression") return linesIn(node, scope);
  for (const part of node.arguments as (Node | null)[]) {
    if (!part) continue;
    if (part.type === "CallExpression") keys.push(...keysOf(part, scope));
    else keys.push(...linesIn(part, scope));
  }
  return [...new Set(keys)];
}

/** The lines of the record that a node names outright. */
export function linesIn(node: Node, scope: Scope): number[] {
  if (node.type === "UnaryExpression" || node.type === "BinaryExpression")
    return (node.arguments as Node[]).flatMap((part) => linesIn(part, scope));
  if (node.type === "CallExpression" && !lookUps.has(calledName(node)))
    return (node.arguments as (Node | null)[]).flatMap((part) =>
      part ? linesIn(part, scope) : [],
    );
  if (node.type !== "ReferenceIdentifier") return [];
  if (node.kind === "table") {
    const line = scope.cells.turned ? undefined : scope.book.column(node.value, scope.cells);
    return line === undefined ? [] : [line];
  }
  const ref = refOf(node.value, scope.shape);
  const line = ref && lineOf(ref, scope.at, scope.cells);
  if (!ref || line === undefined) return [];
  const [along, across] = scope.cells.turned ? [ref.rows, ref.cols] : [ref.cols, ref.rows];
  return across > 0 || along > 12 ? [] : Array.from({ length: along + 1 }, (_, i) => line + i);
}

function ofReference(text: string, kind: string, scope: Scope): Product | undefined {
  const { book, cells, shape, at } = scope;
  if (kind === "table") {
    const line = cells.turned ? undefined : book.column(text, cells);
    return line === undefined ? undefined : single({ kind: "line", line });
  }
  let ref = refOf(text, shape);
  if (!ref) {
    const named = book.named(text, shape);
    if (!named) return undefined;
    if ("number" in named) return { ...one, constant: named.number };
    ref = named.ref;
  }
  if (ref.rows || ref.cols) return undefined;
  const line = lineOf(ref, at, cells);
  if (line !== undefined) return single({ kind: "line", line });
  if (!ref.fixedRow && !ref.fixedCol && ref.sheet === undefined) return undefined;
  const fixed =
    ref.fixedRow && ref.fixedCol
      ? ref
      : {
          ...ref,
          row: ref.fixedRow ? ref.row : ref.row + at.row,
          col: ref.fixedCol ? ref.col : ref.col + at.col,
        };
  const found = book.fixedNumber(fixed, cells);
  return found && { ...one, constant: found.number, fixed: [found.place] };
}

/** A sum of two lines is one thing; anything else that is added spoils the product. */
function ofSum(
  left: Node,
  right: Node,
  operator: string,
  go: (node: Node) => Product | undefined,
): Product | undefined {
  const [a, b] = [go(left), go(right)];
  if (!a || !b) return undefined;
  if (a.powers.size === 0 && b.powers.size === 0)
    return {
      ...one,
      constant: operator === "+" ? a.constant + b.constant : a.constant - b.constant,
    };
  if (operator === "-" || a.powers.size !== 1 || b.powers.size !== 1) return undefined;
  const lines = [...a.powers.values(), ...b.powers.values()].map(({ atom, exponent }) =>
    exponent !== 1
      ? []
      : atom.kind === "line"
        ? [atom.line]
        : atom.kind === "sum"
          ? atom.lines
          : [],
  );
  return lines.some((part) => part.length === 0)
    ? undefined
    : single({ kind: "sum", lines: lines.flat() });
}

export function keyOf(atom: Atom): string {
  if (atom.kind === "line") return `${atom.line}`;
  return `${atom.kind} ${(atom.kind === "look-up" ? atom.keys : atom.lines).join(" ")}`;
}

function single(atom: Atom): Product {
  return { ...one, powers: new Map([[keyOf(atom), { atom, exponent: 1 }]]) };
}

export function times(a: Product, b: Product): Product {
  const powers = new Map(a.powers);
  for (const [key, { atom, exponent }] of b.powers) {
    const sum = exponent + (powers.get(key)?.exponent ?? 0);
    if (sum === 0) powers.delete(key);
    else powers.set(key, { atom, exponent: sum });
  }
  return {
    constant: a.constant * b.constant,
    powers,
    fixed: [...a.fixed, ...b.fixed],
    rounding: a.rounding ?? b.rounding,
  };
}

export function raised(a: Product, exponent: number): Product {
  const powers = new Map(
    [...a.powers].map(([key, power]) => [key, { ...power, exponent: power.exponent * exponent }]),
  );
  return {
    constant: Math.abs(a.constant) ** exponent,
    powers,
    fixed: a.fixed,
    rounding: a.rounding,
  };
}
