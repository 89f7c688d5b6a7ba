import { stringifyTokens, tokenTypes } from "@borgar/fx/xlsx";
import type { WorksheetFunction } from "../../../functions";
import { type CellRef, cellName, type Place, parseRectangle, type Spot } from "../../cells";
import { type Argument, NoNativeForm, ruleFor } from "../../rules";
import type { Aids } from "../aids";
import { Arguments } from "./arguments";
import type { Given } from "./given";
import { cellByCell, placeBound, takesArrays } from "./kinds";
import { bareName, type Node, type Nodes, onlyNode, solid } from "./nodes";
import { cellOf, isReference, pickedBy } from "./parts";
import { farText, nearText, type Places } from "./places";
import { type Result, resultOf } from "./result";

/** What the rewriting of a workbook's formulas shares. */
export interface Shared {
  readonly places: Places;
  readonly aids: Aids;
  readonly functions: ReadonlyMap<string, WorksheetFunction>;
  /** The range that the array formula of a cell fills, if it holds one that is replaced. */
  readonly arrayRef: (place: Place) => string | null;
}

/** Where a part of a formula stands. */
interface Around {
  /** Its text goes to another sheet: references must be good there. */
  readonly isFar: boolean;
  /** The functions around it, the nearest last. */
  readonly within: readonly string[];
  /** It is a whole argument of the nearest of them. */
  readonly isWhole: boolean;
  /** The cell of each range that is meant, where a formula is written out cell by cell. */
  readonly spot?: CellRef;
}

const outermost = { within: [], isWhole: true } as const;

type CallNode = Node & { kind: "call" };

/** Rewrites one formula: our functions become native text, everything else stays as written. */
export class Rewriter {
  private readonly args: Arguments;
  private readonly cell: string;

  constructor(
    private readonly shared: Shared,
    private readonly home: Spot,
    private readonly isArray: boolean,
  ) {
    this.cell = `${home.sheet}!${cellName(home.row, home.col)}`;
    this.args = new Arguments({
      home,
      cell: this.cell,
      isArray,
      steps: shared.aids.steps,
      farText: (nodes, spot) =>
        this.text(nodes, { isFar: true, ...outermost, ...(spot ? { spot } : {}) }),
      own: (node, id) => this.own(node, id),
      block: (result) => this.block(result),
      placeOf: (node) => this.placeOf(node),
      spilled: (node) => this.spilled(node),
    });
  }

  /** The formula of a single cell. */
  formula(nodes: Nodes): string {
    return this.text(nodes, { isFar: false, ...outermost });
  }

  /** The result of a formula that is nothing but one call of ours. */
  result(nodes: Nodes): Result | undefined {
    const node = onlyNode(nodes);
    return node?.kind === "call" && node.id !== undefined ? this.own(node, node.id) : undefined;
  }

  private text(nodes: Nodes, around: Around): string {
    const isWhole = around.isWhole && solid(nodes).length === 1;
    return nodes.map((node) => this.node(node, { ...around, isWhole })).join("");
  }

  private node(node: Node, around: Around): string {
    if (node.kind === "group") return `(${this.text(node.nodes, around)})`;
    if (node.kind === "token") return this.token(node, around);
    return node.id === undefined
      ? this.native(node, around)
      : this.ownText(this.own(node, node.id), around);
  }

  private token(node: Node & { kind: "token" }, { isFar, spot }: Around): string {
    const written = stringifyTokens([node.token]);
    if (!isFar) return written;
    const place = this.placeOf(node);
    if (place === undefined) {
      if (isReference(node)) throw new NoNativeForm(`the reference ${written} inside an argument`);
      return written;
    }
    return "name" in place ? place.name : farText(spot ? cellOf(place, spot) : place);
  }

  private native(node: CallNode, around: Around): string {
    const { isFar } = around;
    const name = bareName(node.name);
    const spilled = name === "ANCHORARRAY" ? this.spilled(node) : undefined;
    if (spilled) return isFar ? farText(spilled) : nearText(spilled, this.home);
    if (isFar) {
      if (placeBound.has(name)) throw new NoNativeForm(`${name} inside an argument`);
      if (name === "ROW" && node.args.length === 0) return String(this.home.row + 1);
      if (name === "COLUMN" && node.args.length === 0) return String(this.home.col + 1);
    }
    const [first, ...places] = node.args;
    const inner = first && onlyNode(first);
    if (inner?.kind === "call" && inner.id !== undefined) {
      const result = this.own(inner, inner.id);
      if (name === "SINGLE") return result.text(0, 0, isFar);
      const picked = name === "INDEX" ? pickedBy(places, result) : undefined;
      if (picked) return result.text(picked.row, picked.col, isFar);
    }
    const { spot, ...rest } = around;
    const inside: Around = {
      ...(spot && cellByCell.has(name) ? around : rest),
      within: [...around.within, name],
      isWhole: true,
    };
    return `${node.name}(${node.args.map((arg) => this.text(arg, inside)).join(",")})`;
  }

  /** A call of ours amid a formula. */
  private ownText(result: Result, { isFar, within, isWhole, spot }: Around): string {
    if (spot) {
      const { row, col } = spot;
      return result.text(result.rows === 1 ? 0 : row, result.cols === 1 ? 0 : col, isFar);
    }
    if (result.rows * result.cols === 1) return result.text(0, 0, isFar);
    const nearest = within.at(-1);
    if (this.isArray || (isWhole && nearest !== undefined && takesArrays.has(nearest)))
      return this.block(result);
    if (within.every((name) => cellByCell.has(name))) return result.text(0, 0, isFar);
    throw new NoNativeForm(`several results of one call inside ${nearest}`);
  }

  /** The results of a call as a range of steps. */
  private block(result: Result): string {
    const lines = Array.from({ length: result.rows }, (_, row) =>
      Array.from({ length: result.cols }, (_, col) => result.text(row, col, true)),
    );
    return this.shared.aids.steps.block("results of one call", this.cell, lines);
  }

  private own(node: CallNode, id: string): Result {
    const own = this.shared.functions.get(id);
    const rule = ruleFor(id);
    if (!own || !rule) throw new NoNativeForm(`the function FANROW.${id}, which is not known`);
    const { parameters } = own;
    const needed = parameters.filter((each) => !each.optional).length;
    if (node.args.length < needed || node.args.length > parameters.length)
      throw new NoNativeForm(`FANROW.${id} with ${node.args.length} arguments`);
    const given: Record<string, Given | undefined> = {};
    parameters.forEach((parameter, i) => {
      const argument = rule.arguments[parameter.name] as Argument;
      given[parameter.name] = this.args.read(node.args[i] ?? [], parameter, argument);
    });
    const { home, cell } = this;
    return resultOf(rule, given, { home, cell, aids: this.shared.aids });
  }

  /** What a reference means; undefined for what is none, or leads out of the workbook. */
  private placeOf(node: Node): Place | { readonly name: string } | undefined {
    if (node.kind !== "token") return undefined;
    const { type, value } = node.token;
    const { places } = this.shared;
    switch (type) {
      case tokenTypes.REF_RANGE:
      case tokenTypes.REF_BEAM:
        return places.ofRange(value, this.home);
      case tokenTypes.REF_NAMED:
        return places.ofName(value, this.home);
      case tokenTypes.REF_STRUCT:
        return places.ofTable(value, this.home);
      default:
        return undefined;
    }
  }

  /** The range that A1# stands for, where its formula is replaced by one for each cell. */
  private spilled(node: CallNode): Place | undefined {
    const anchor = onlyNode(node.args[0] ?? []);
    const place = anchor && this.placeOf(anchor);
    if (!place || "name" in place) return undefined;
    const ref = this.shared.arrayRef(place);
    return ref === null ? undefined : { sheet: place.sheet, ...parseRectangle(ref) };
  }
}
