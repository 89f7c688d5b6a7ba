import type { AstExpression } from "@borgar/fx/xlsx";
import type { WorksheetFunction } from "../../../functions";
import {
  type CellValue,
  errors,
  InputError,
  longestFormula,
  longestStoredFormula,
} from "../../cells";
import { Area, Areas, intersect } from "../area";
import type { Book } from "../book";
import type { Grid } from "../grid";
import type { Natives } from "../native/natives";
import { parseFormula } from "../parse";
import type { Program, Reference, Run } from "../program";
import { inTypedForm, looksOwn } from "../spelling";
import { Matrix, Unsupported } from "../values";
import { Spent, spendOnReading } from "../work";
import {
  arrayConstant,
  asScalar,
  type Blank,
  constant,
  type Expr,
  type Mode,
  type Scope,
  values,
} from "./expr";
import { lazyCalls } from "./lazy";
import { letExpr } from "./let";
import { definition, tableArea, tableExpr } from "./names";
import { nativeCall } from "./native-call";
import { binary, unary } from "./operators";
import { ownCall } from "./own-call";
import { intersectExpr, joined, rangeExpr, shared, spillExpr, union } from "./references";

export interface Library {
  readonly natives: Natives;
  readonly blank: Blank;
  readonly own: ReadonlyMap<string, WorksheetFunction>;
  readonly ids: ReadonlySet<string>;
}

/** Compiles the formula of a cell into a program that serves every cell with the same pattern. */
export function compileFormula(
  formula: string,
  place: { readonly grid: Grid; readonly row: number; readonly col: number },
  isArray: boolean,
  book: Book,
  library: Library,
): Program {
  const mode: Mode = isArray ? "array" : "plain";
  const build = new Build(book, place.grid, library);
  try {
    if (formula.length > longestStoredFormula)
      throw new Unsupported(
        `a formula of more than ${longestFormula.toLocaleString("en")} characters`,
      );
    spendOnReading(formula);
    build.stand(place.row, place.col);
    const expr = build.compile(parseFormula(formula, library.ids), mode);
    const { reads, flags } = build;
    return {
      run: isArray ? whole(expr) : single(expr),
      reads,
      unsupported: null,
      refusal: errors.na,
      ...flags,
    };
  } catch (problem) {
    if (problem instanceof Spent) throw problem;
    // Whatever goes wrong here, the stored value must survive and the cell be listed.
    const told = problem instanceof Unsupported || problem instanceof InputError;
    const why = problem instanceof Error ? problem.message : String(problem);
    const what = told ? why : `a fault of Fanrow, please report it: ${why}`;
    const run = () => errors.na;
    const flags = { needsArray: false, isVolatile: false, seeks: false, isPlaced: true };
    const refusal = problem instanceof Unsupported ? problem.error : errors.na;
    return { run, reads: [], unsupported: what, refusal, ...flags };
  }
}

function single(expr: Expr): Run {
  const { run, one } = expr;
  if (one) return (row, col) => one(row, col) ?? 0;
  return (row, col) => {
    const value = run(row, col);
    if (value instanceof Area) return intersect(value, row, col) ?? 0;
    if (value instanceof Areas) return errors.value;
    return (value instanceof Matrix ? value.at(0, 0) : value) ?? 0;
  };
}

function whole(expr: Expr): Run {
  return (row, col) => {
    const value = values(expr.run(row, col));
    if (!(value instanceof Matrix)) return value ?? 0;
    return new Matrix(
      value.rows,
      value.cols,
      value.data.map((cell) => cell ?? 0),
    );
  };
}

/** A sound formula names far fewer. */
const mostNames = 5_000;

/** The walk over the tree of one formula. */
class Build implements Scope {
  readonly natives: Natives;
  readonly blank: Blank;
  readonly own: ReadonlyMap<string, WorksheetFunction>;
  readonly reads: Reference[] = [];
  readonly flags = { needsArray: false, isVolatile: false, seeks: false, isPlaced: false };
  readonly locals = new Map<string, Expr>();
  private row = 0;
  private col = 0;
  private readonly names = new Set<string>();
  /** Names met so far: each is written out where it is met, and two of two of two are soon very many. */
  private named = 0;

  constructor(
    readonly book: Book,
    public home: Grid,
    private readonly library: Library,
  ) {
    this.natives = library.natives;
    this.own = library.own;
    this.blank = library.blank;
  }

  /** Sets the cell that relative references are written from. */
  stand(row: number, col: number): void {
    this.row = row;
    this.col = col;
  }

  get isName(): boolean {
    return this.names.size > 0;
  }

  typed(formula: string): string {
    return inTypedForm(formula, [...this.own.values()]);
  }

  /** What a text refers to, as INDIRECT reads it; to be run as in A1. */
  refer(text: string): Expr {
    const build = new Build(this.book, this.home, this.library);
    build.stand(0, 0);
    return build.compile(parseFormula(text, this.library.ids), "array");
  }

  compile(node: AstExpression | null | undefined, mode: Mode): Expr {
    if (!node) return constant(null);
    switch (node.type) {
      case "Literal":
        return constant(node.value as CellValue);
      case "ErrorLiteral":
        return constant({ error: String(node.value) });
      case "ArrayExpression":
        return arrayConstant(node.elements as { value: unknown; type: string }[][]);
      case "ReferenceIdentifier":
        return this.reference(node.value, node.kind, mode);
      case "UnaryExpression":
        return this.unary(node.operator, node.arguments[0], mode);
      case "BinaryExpression":
        return this.binary(node.operator, node.arguments, mode);
      case "LetExpression":
        return letExpr(node.declarations, node.body, mode, this);
      case "CallExpression":
        if (node.callee.type !== "Identifier")
          throw new Unsupported("a call of a computed function");
        return this.call(node.callee.name, node.arguments as (AstExpression | null)[], mode);
      default:
        throw new Unsupported("the function LAMBDA");
    }
  }

  private reference(text: string, kind: string, mode: Mode): Expr {
    if (kind === "range" || kind === "beam") return rangeExpr(text, this.row, this.col, this);
    if (kind !== "table") {
      const local = this.locals.get(text.toLowerCase());
      if (local) return local;
    }
    this.flags.isPlaced = true;
    return kind === "table" ? tableExpr(this.inTable(text), this) : this.name(text, mode);
  }

  /** `[@Col]` and `[Col]` mean the table that the formula stands in. */
  private inTable(text: string): string {
    if (!text.startsWith("[") || /^\[\d+\]/.test(text)) return text;
    const name = this.book.tableAt(this.home, this.row, this.col)?.name;
    return name === undefined ? text : name + text;
  }

  private name(text: string, mode: Mode): Expr {
    const found = definition(text, this);
    if ("table" in found) return tableArea(found.table, [], [], this);
    const key = `${found.grid.name}!${text}`.toLowerCase();
    if (this.names.has(key)) throw new Unsupported(`the name ${text}, which refers to itself`);
    if (++this.named > mostNames)
      throw new Unsupported(`names within names, more than ${mostNames}`);
    const { home, row, col } = this;
    const locals = new Map(this.locals);
    this.locals.clear();
    this.names.add(key);
    // Relative references in a name are written as from the first cell of a sheet.
    this.home = found.grid;
    this.stand(0, 0);
    const expr = this.compile(parseFormula(found.formula, this.library.ids), mode);
    this.home = home;
    this.stand(row, col);
    for (const [local, own] of locals) this.locals.set(local, own);
    this.names.delete(key);
    return expr;
  }

  private unary(sign: string, operand: AstExpression | undefined, mode: Mode): Expr {
    if (sign === "#") {
      this.flags.isPlaced = true;
      return spillExpr(this.compile(operand, mode));
    }
    if (sign === "@") return intersectExpr(this.compile(operand, "within"));
    const expr = unary(sign, asScalar(this.compile(operand, mode), mode, this));
    if (!expr) throw new Unsupported(`the operator ${sign}`);
    return expr;
  }

  private binary(sign: string, operands: readonly AstExpression[], mode: Mode): Expr {
    const left = this.compile(operands[0], mode);
    const leftReads = this.reads.slice();
    const right = this.compile(operands[1], mode);
    if (sign === ":") {
      this.flags.isPlaced = true;
      return joined(left, right, leftReads, this);
    }
    if (sign === ",") return union(left, right);
    if (sign.trim() === "") return shared(left, right);
    const expr = binary(sign, asScalar(left, mode, this), asScalar(right, mode, this));
    if (!expr) throw new Unsupported(`the operator ${sign}`);
    return expr;
  }

  private call(written: string, nodes: readonly (AstExpression | null)[], mode: Mode): Expr {
    const name = written.toUpperCase();
    if (name === "SINGLE") return this.unary("@", nodes[0] ?? undefined, mode);
    if (name === "ANCHORARRAY") return this.unary("#", nodes[0] ?? undefined, mode);
    const lazy = lazyCalls.get(name);
    if (lazy) return lazy(nodes, mode, this);
    const native = this.natives.get(name);
    if (native) return nativeCall(native, nodes, mode, this);
    const own = name.startsWith("FANROW.") ? this.own.get(name.slice(7)) : undefined;
    if (own) return ownCall(own, nodes, mode, this);
    if (looksOwn(name))
      throw new Unsupported(`the function ${written}, which Fanrow does not have`, errors.name);
    throw new Unsupported(`the function ${written}`);
  }
}
