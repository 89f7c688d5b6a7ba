import { columnLetters, sheetPrefix } from "../../cells";
import type { Table, TableCell } from "../../rules";
import type { CellSpec, Workbook } from "../../workbook";

/** What a sheet of helpers says in its first row, which alone is printed. */
export const unprinted =
  "What formulas of this workbook look up or work out in steps. Only this line of the sheet is printed.";
export const unprintedPage = { area: "A1:F1", landscape: true, pagesWide: 1 } as const;

/** A sheet that holds tables one below the other, each under its title and headings. */
export class TableSheet {
  private readonly rows: (readonly TableCell[])[] = [[unprinted], []];
  private readonly titles = new Set<number>();
  private readonly headings = new Set<number>();
  private readonly known = new Map<string, Table>();

  constructor(
    readonly sheet: string,
    private readonly widths: readonly number[],
  ) {}

  /** The table of this title; made the first time. `rows` may refer to the table itself. */
  table(
    title: string,
    headings: readonly string[],
    rows: (own: Table) => readonly (readonly TableCell[])[],
    count: number,
  ): Table {
    const known = this.known.get(title);
    if (known) return known;
    this.titles.add(this.rows.length);
    this.rows.push([title]);
    this.headings.add(this.rows.length);
    this.rows.push(headings);
    const top = this.rows.length + 1;
    const prefix = sheetPrefix(this.sheet);
    const letter = (heading: string) => {
      const at = headings.indexOf(heading);
      if (at < 0) throw new Error(`the table "${title}" has no column "${heading}"`);
      return columnLetters(at);
    };
    const bottom = top + Math.max(1, count) - 1;
    const block = (first: string, last: string) =>
      `${prefix}$${letter(first)}$${top}:$${letter(last)}$${bottom}`;
    const own: Table = {
      rows: count,
      column: (heading) => block(heading, heading),
      cell: (row, heading) => `${prefix}$${letter(heading)}$${top + row}`,
      block,
    };
    this.known.set(title, own);
    const lines = rows(own);
    if (lines.length !== count) throw new Error(`the table "${title}" has ${lines.length} rows`);
    this.rows.push(...lines);
    if (count === 0) this.rows.push([]);
    this.rows.push([]);
    return own;
  }

  /** Adds the sheet, where any table was made. */
  write(workbook: Workbook, styles: { readonly title: number; readonly heading: number }): void {
    if (this.known.size === 0) return;
    const prefix = sheetPrefix(this.sheet);
    const spec = (cell: TableCell, style: number | undefined): CellSpec => {
      const content =
        typeof cell === "object" && cell !== null
          ? { formula: cell.formula.replaceAll(prefix, ""), value: null }
          : { value: cell === "" ? null : cell };
      return style === undefined ? content : { ...content, style };
    };
    workbook.addSheet(this.sheet, {
      rows: this.rows.map((cells, row) => {
        const style = this.titles.has(row)
          ? styles.title
          : this.headings.has(row)
            ? styles.heading
            : undefined;
        return cells.map((cell) => spec(cell, style));
      }),
      columnWidths: this.widths,
      page: unprintedPage,
    });
  }
}
