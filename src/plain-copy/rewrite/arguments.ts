import { tokenTypes } from "@borgar/fx/xlsx";
import type { FunctionParameter } from "../../../functions";
import { type CellRef, cellName, type Place, type Spot } from "../../cells";
import { type Argument, NoNativeForm, type Operand } from "../../rules";
import type { Steps } from "../aids/steps";
import { type Given, literalOperand, oneOperand } from "./given";
import { cellByCell, mayBeReference, oneForAll } from "./kinds";
import { bareName, type Node, type Nodes, onlyNode, solid } from "./nodes";
import { cellOf, constantText } from "./parts";
import { colsOf, farText, rowsOf } from "./places";
import { isTakenWhole, type Result } from "./result";

/** The most cells that one call is written out for inside a formula. */
const mostCells = 5000;

/** What is asked of the formula that the arguments stand in. */
interface Formula {
  readonly home: Spot;
  readonly cell: string;
  readonly isArray: boolean;
  readonly steps: Steps;
  /** Native text, good anywhere; of one cell of its ranges where a spot is named. */
  readonly farText: (nodes: Nodes, spot?: CellRef) => string;
  readonly own: (node: Node & { kind: "call" }, id: string) => Result;
  readonly block: (result: Result) => string;
  readonly placeOf: (node: Node) => Place | { readonly name: string } | undefined;
  readonly spilled: (node: Node & { kind: "call" }) => Place | undefined;
}

/** Reads the arguments of calls of ours. */
export class Arguments {
  constructor(private readonly formula: Formula) {}

  /** The argument for a parameter; undefined where nothing stands between the commas. */
  read(nodes: Nodes, parameter: FunctionParameter, argument: Argument): Given | undefined {
    if (solid(nodes).length === 0) return undefined;
    const given = this.given(nodes);
    const { name } = parameter;
    const isWhole = isTakenWhole(argument);
    const isMany = given.rows * given.cols > 1;
    if (parameter.dimensionality === "scalar" && isMany)
      throw new NoNativeForm(`a range as ${name}, which takes one value`);
    if (isWhole && isMany && !given.place)
      throw new NoNativeForm(`${name} is not a range of cells`);
    if (given.constant && !isWhole) throw new NoNativeForm(`an array constant as ${name}`);
    return given;
  }

  private given(nodes: Nodes): Given {
    const node = onlyNode(nodes);
    const known = node?.kind === "token" ? this.ofToken(node) : this.ofCall(node);
    if (known) return known;
    const constant = constantText(nodes);
    if (constant === undefined) return this.expression(nodes);
    const operand = { text: constant, far: constant };
    return { ...oneOperand(operand), constant: operand };
  }

  private ofToken(node: Node & { kind: "token" }): Given | undefined {
    const { type, value } = node.token;
    switch (type) {
      case tokenTypes.NUMBER:
        return oneOperand(literalOperand(Number(value)));
      case tokenTypes.BOOLEAN:
        return oneOperand(literalOperand(value.toUpperCase() === "TRUE"));
      case tokenTypes.STRING:
        return oneOperand(literalOperand(value.slice(1, -1).replaceAll('""', '"')));
      case tokenTypes.ERROR:
        return oneOperand({ text: value, far: value });
    }
    const place = this.formula.placeOf(node);
    if (!place) return undefined;
    if ("name" in place) return oneOperand({ text: value, far: place.name });
    return this.ofPlace(place, type === tokenTypes.REF_RANGE ? value : undefined);
  }

  private ofCall(node: Node | undefined): Given | undefined {
    if (node?.kind !== "call") return undefined;
    const spilled = bareName(node.name) === "ANCHORARRAY" && this.formula.spilled(node);
    if (spilled) return this.ofPlace(spilled);
    return node.id === undefined ? undefined : this.ofResult(this.formula.own(node, node.id));
  }

  private ofPlace(place: Place, written?: string): Given {
    const [rows, cols] = [rowsOf(place), colsOf(place)];
    const at = (row: number, col: number): Operand => {
      const cell = cellOf(place, { row, col });
      const far = farText(cell);
      if (rows * cols === 1 && written !== undefined) return { text: written, far };
      const isHere = cell.sheet === this.formula.home.sheet;
      return { text: isHere ? cellName(cell.top, cell.left) : far, far };
    };
    return { rows, cols, at, place };
  }

  private ofResult(result: Result): Given {
    const { rows, cols } = result;
    if (rows * cols > mostCells)
      throw new NoNativeForm(`${rows * cols} results of one call inside another`);
    const place = this.formula.steps.place(this.formula.block(result));
    const at = (row: number, col: number): Operand => {
      const far = farText(cellOf(place, { row, col }));
      return { text: far, far };
    };
    return { rows, cols, at, place };
  }

  /** An argument that has to be worked out: a step of its own for each cell. */
  private expression(nodes: Nodes): Given {
    const shape = { rows: 1, cols: 1 };
    this.measure(nodes, shape);
    const { rows, cols } = shape;
    const isMany = rows * cols > 1;
    if (rows * cols > mostCells) throw new NoNativeForm(`an argument of ${rows * cols} cells`);
    if (isMany && !this.formula.isArray)
      throw new NoNativeForm("a range inside an argument, of which the formula's own row is meant");
    const head = onlyNode(nodes);
    const mayBeBlank = head?.kind === "call" && mayBeReference.has(bareName(head.name));
    const at = (row: number, col: number): Operand => {
      const text = this.formula.farText(nodes, isMany ? { row, col } : undefined).trim();
      const formula = mayBeBlank ? `IF(ISBLANK(${text}),"",${text})` : text;
      const far = this.formula.steps.one("argument", this.formula.cell, formula);
      return { text: far, far };
    };
    return { rows, cols, at };
  }

  /** The shape that an expression takes from the ranges in it. */
  private measure(nodes: Nodes, shape: { rows: number; cols: number }): void {
    const widen = (rows: number, cols: number) => {
      shape.rows = Math.max(shape.rows, rows);
      shape.cols = Math.max(shape.cols, cols);
    };
    for (const node of nodes) {
      if (node.kind === "group") this.measure(node.nodes, shape);
      else if (node.kind === "token") {
        if (node.token.value === "{")
          throw new NoNativeForm("an array constant inside an argument");
        const place = this.formula.placeOf(node);
        if (place && !("name" in place)) widen(rowsOf(place), colsOf(place));
      } else if (node.id !== undefined) {
        const result = this.formula.own(node, node.id);
        widen(result.rows, result.cols);
      } else if (cellByCell.has(bareName(node.name)))
        for (const arg of node.args) this.measure(arg, shape);
      else if (!oneForAll.has(bareName(node.name)) && this.hasRange(node.args))
        throw new NoNativeForm(`${bareName(node.name)} over a range inside an argument`);
    }
  }

  private hasRange(args: readonly Nodes[]): boolean {
    const shape = { rows: 1, cols: 1 };
    for (const arg of args) this.measure(arg, shape);
    return shape.rows * shape.cols > 1;
  }
}
