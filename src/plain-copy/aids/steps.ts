import { columnLetters, type Place, parseRectangle, sheetPrefix } from "../../cells";
import type { Part } from "../../rules";
import type { Workbook } from "../../workbook";
import { unprinted, unprintedPage } from "./table-sheet";

interface Line {
  readonly cell: string;
  readonly what: string;
  readonly formulas: readonly string[];
}

const firstColumn = 2;
/** A row for what the sheet is, and one for the headings. */
const firstRow = 2;

/**
 * The sheet of steps: what a formula would otherwise write out several times stands there once. A
 * row a step, with the cell that first needed it. The same step is made once.
 */
export class Steps {
  private readonly lines: Line[] = [];
  private readonly known = new Map<string, readonly string[]>();

  constructor(readonly sheet: string) {}

  /** Where the value of this formula stands; its references must be good on any sheet. */
  one(what: string, cell: string, formula: string): string {
    return this.row(what, cell, formula, [() => formula])[0] as string;
  }

  /** Steps that build on each other, side by side in one row; the same `key`, the same row. */
  row(what: string, cell: string, key: string, parts: readonly Part[]): readonly string[] {
    const known = this.known.get(key);
    if (known) return known;
    const row = firstRow + this.lines.length;
    const cells: string[] = [];
    const formulas: string[] = [];
    const line: Line = { cell, what, formulas };
    this.lines.push(line);
    parts.forEach((part, i) => {
      formulas.push(part(cells));
      cells.push(`${sheetPrefix(this.sheet)}$${columnLetters(firstColumn + i)}$${row + 1}`);
    });
    this.known.set(key, cells);
    return cells;
  }

  /** What a range that `block` gave means. */
  place(range: string): Place {
    return { sheet: this.sheet, ...parseRectangle(range.slice(range.lastIndexOf("!") + 1)) };
  }

  /** Rows of steps, one below the other: for each row where its steps stand. */
  rows(
    what: string,
    cell: string,
    key: string,
    rows: readonly (readonly Part[])[],
  ): readonly (readonly string[])[] {
    return rows.map((parts, i) =>
      this.row(i === 0 ? what : "", i === 0 ? cell : "", `${key}\n${i}`, parts),
    );
  }

  /** A block of formulas as one range. */
  block(what: string, cell: string, formulas: readonly (readonly string[])[]): string {
    const key = formulas.map((line) => line.join("\t")).join("\n");
    const parts = formulas.map((line) => line.map((text) => () => text));
    const cells = this.rows(what, cell, key, parts);
    const first = cells[0]?.[0] as string;
    const last = cells.at(-1)?.at(-1) as string;
    return span(first, last);
  }

  /** Adds the sheet, where any step was made. */
  write(workbook: Workbook, heading: number): void {
    if (this.lines.length === 0) return;
    const width = Math.max(...this.lines.map(({ formulas }) => formulas.length));
    const prefix = sheetPrefix(this.sheet);
    const titles = ["For cell", "Step", "Value", ...Array(width - 1).fill("Further values")];
    workbook.addSheet(this.sheet, {
      rows: [
        [{ value: unprinted }],
        titles.map((value) => ({ value, style: heading })),
        ...this.lines.map(({ cell, what, formulas }) => [
          { value: cell || null },
          { value: what || null },
          ...formulas.map((formula) => ({
            formula: formula.replaceAll(prefix, ""),
            value: null,
          })),
        ]),
      ],
      columnWidths: [18, 44, ...Array(width).fill(16)],
      frozenRows: firstRow,
      page: unprintedPage,
    });
  }
}

/** The range from one cell of a sheet to another. */
function span(first: string, last: string): string {
  return first === last ? first : `${first}:${last.slice(last.lastIndexOf("!") + 1)}`;
}
