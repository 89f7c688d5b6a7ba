import type { Place, Spot } from "../../cells";
import type { Aids } from "../aids";
import type { Part } from "../aids/steps";
import { Left } from "../left";
import type { Given, Operand } from "../rewrite/given";
import { farText, nearText } from "../rewrite/places";

/** How an argument counts for the shape of the result. */
export type Kind =
  /** Cell by cell: the usual way. */
  | "cell"
  /** As a whole, the same for every cell of the result. */
  | "whole"
  /** A row of it for each row of the result. */
  | "row";

/** Writes one of our functions as a native formula. */
export interface Writer {
  /** The arguments that are not taken cell by cell. */
  readonly kinds?: Readonly<Record<string, Kind>>;
  /** Cells side by side for each cell of the arguments; 1 where left out. */
  readonly width?: number;
  /** The native formula of one cell of the result. Throws a `Left` where there is none. */
  readonly write: (call: Call) => string;
}

/** Which cell of a result is written, and whether for another sheet. */
export interface Which {
  readonly row: number;
  readonly col: number;
  /** Which of the cells side by side. */
  readonly side: number;
  /** References must be good on any sheet. */
  readonly isFar: boolean;
}

/** A call of a function for one cell of its result. */
export class Call {
  readonly aids: Aids;
  readonly side: number;

  constructor(
    private readonly given: Readonly<Record<string, Given | undefined>>,
    private readonly which: Which,
    private readonly where: { readonly home: Spot; readonly cell: string; readonly aids: Aids },
  ) {
    this.aids = where.aids;
    this.side = which.side;
  }

  has(name: string): boolean {
    return this.given[name] !== undefined;
  }

  /** The argument's value for this cell; undefined where it is left out. */
  at(name: string): Operand | undefined {
    const given = this.given[name];
    if (!given) return undefined;
    const operand = given.at(
      given.rows === 1 ? 0 : this.which.row,
      given.cols === 1 ? 0 : this.which.col,
    );
    return this.which.isFar ? { ...operand, text: operand.far } : operand;
  }

  /** The range of an argument that is taken as a whole. */
  place(name: string): Place | undefined {
    const given = this.given[name];
    if (!given) return undefined;
    if (!given.place) throw new Left(`${name} is not a range of cells`);
    return given.place;
  }

  /** The cells of an argument side by side in this cell's row. */
  across(name: string): { readonly text: string; readonly far: string; readonly cells: Operand[] } {
    const given = this.given[name];
    if (!given) throw new Left(`${name} is missing`);
    const row = given.rows === 1 ? 0 : this.which.row;
    const cells = Array.from({ length: given.cols }, (_, col) => {
      const operand = given.at(row, col);
      return this.which.isFar ? { ...operand, text: operand.far } : operand;
    });
    const [first] = cells;
    if (first && cells.length === 1) return { text: first.text, far: first.far, cells };
    if (!given.place) throw new Left(`${name} is not a range of cells`);
    const top = given.place.top + row;
    const place = { ...given.place, top, bottom: top };
    const far = farText(place);
    return { text: this.which.isFar ? far : nearText(place, this.where.home), far, cells };
  }

  /** An argument that is taken as a whole: a range, an array constant or one value. */
  list(name: string): { readonly text: string; readonly far: string } {
    const given = this.given[name];
    if (!given) throw new Left(`${name} is missing`);
    const { place } = given;
    if (place) {
      const far = farText(place);
      return { text: this.which.isFar ? far : nearText(place, this.where.home), far };
    }
    const { text, far } = given.at(0, 0);
    return given.constant ?? { text: this.which.isFar ? far : text, far };
  }

  /** A step of the calculation on a sheet of its own; `formula` in references good anywhere. */
  step(what: string, formula: string): string {
    return this.aids.steps.one(what, this.where.cell, formula);
  }

  /**
   * Steps that build on each other, side by side in one row: for each name where its value stands.
   * The same `what` of the same `of` is made once.
   */
  steps<Name extends string>(
    what: string,
    of: readonly string[],
    parts: Readonly<Record<Name, (earlier: Readonly<Record<Name, string>>) => string>>,
  ): Readonly<Record<Name, string>> {
    const names = Object.keys(parts) as Name[];
    const named = (cells: readonly string[]) =>
      Object.fromEntries(names.map((name, i) => [name, cells[i] ?? ""])) as Record<Name, string>;
    const cells = this.aids.steps.row(
      `${what}: ${names.join(", ")}`,
      this.where.cell,
      [what, ...of].join(" "),
      names.map((name) => (earlier) => parts[name](named(earlier))),
    );
    return named(cells);
  }

  /** Rows of steps, one below the other. */
  stepRows(
    what: string,
    key: string,
    rows: readonly (readonly Part[])[],
  ): readonly (readonly string[])[] {
    return this.aids.steps.rows(what, this.where.cell, key, rows);
  }
}
