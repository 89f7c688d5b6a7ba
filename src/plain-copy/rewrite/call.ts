import type { Place, Spot } from "../../cells";
import {
  type NameKindId,
  type NativeCall,
  NoNativeForm,
  type OpeningList,
  type Operand,
  type Part,
  type Table,
  type TableMaker,
  wrong,
} from "../../rules";
import type { Aids } from "../aids";
import type { Given } from "./given";
import { colsOf, farText, nearText, rowsOf } from "./places";

/** Which cell of a result is written, and whether for another sheet. */
interface Which {
  readonly row: number;
  readonly col: number;
  /** Which of the cells side by side. */
  readonly side: number;
  /** References must be good on any sheet. */
  readonly isFar: boolean;
}

/** A call of a function for one cell of its result. */
export class Call implements NativeCall {
  readonly side: number;

  constructor(
    private readonly given: Readonly<Record<string, Given | undefined>>,
    private readonly which: Which,
    private readonly where: { readonly home: Spot; readonly cell: string; readonly aids: Aids },
  ) {
    this.side = which.side;
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

  /** The cells of an argument side by side in this cell's row. */
  across(name: string): { readonly text: string; readonly far: string } {
    const given = this.given[name];
    if (!given) throw new NoNativeForm(`${name} is missing`);
    const row = given.rows === 1 ? 0 : this.which.row;
    const cells = Array.from({ length: given.cols }, (_, col) => {
      const operand = given.at(row, col);
      return this.which.isFar ? { ...operand, text: operand.far } : operand;
    });
    const [first] = cells;
    if (first && cells.length === 1) return { text: first.text, far: first.far };
    if (!given.place) throw new NoNativeForm(`${name} is not a range of cells`);
    const top = given.place.top + row;
    const place = { ...given.place, top, bottom: top };
    const far = farText(place);
    return { text: this.which.isFar ? far : nearText(place, this.where.home), far };
  }

  /** An argument that is taken as a whole: a range, an array constant or one value. */
  list(name: string): { readonly text: string; readonly far: string } {
    const given = this.given[name];
    if (!given) throw new NoNativeForm(`${name} is missing`);
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
    return this.where.aids.steps.one(what, this.where.cell, formula);
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
    const cells = this.where.aids.steps.row(
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
    return this.where.aids.steps.rows(what, this.where.cell, key, rows);
  }

  size(name: string): number {
    const place = this.place(name);
    return rowsOf(place) * colsOf(place);
  }

  cells(name: string): string[] {
    const place = this.place(name);
    return Array.from({ length: this.size(name) }, (_, i) => {
      const top = place.top + Math.floor(i / colsOf(place));
      const left = place.left + (i % colsOf(place));
      return farText({ ...place, top, left, bottom: top, right: left });
    });
  }

  table(make: TableMaker): Table {
    return this.where.aids.tables.get(make);
  }

  numberOf(kind: NameKindId, name: string): string {
    return this.where.aids.tables.numberOf(kind, name);
  }

  openings(): OpeningList | string {
    if (!this.given.labels || !this.given.areas) return wrong("labels or areas are missing");
    const boxes = this.given.boxes ? this.place("boxes") : undefined;
    return this.where.aids.sets.list(this.place("labels"), this.place("areas"), boxes);
  }

  /** The range of an argument that is taken as a whole. */
  private place(name: string): Place {
    const place = this.given[name]?.place;
    if (!place) throw new NoNativeForm(`${name} is not a range of cells`);
    return place;
  }
}
