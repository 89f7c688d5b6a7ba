import { columnLetters, linesOf } from "../cells";
import { looks } from "./looks";
import type { Look, PlanCell, PlanRow } from "./plan";

/** A piece of a row: how many columns it spans, what it says and how it looks. */
interface Piece {
  readonly span: number;
  readonly value: string | number | null;
  readonly look: Look;
}

/** Bold text takes so much more room. */
const boldness = 1.1;
/** A space that a right-aligned heading ends with, to stand over its numbers. */
const noBreak = "\u00A0";
/** Size of the font that column widths are counted in. */
const widthSize = 11;
const usualSize = 10;

/** Collects the rows of a sheet, merges what spans columns and makes rows as high as their text. */
export class PlanRows {
  readonly rows: PlanRow[] = [];
  readonly merges: string[] = [];

  /** Widths of the columns; title and subtitle stand over them all. */
  constructor(
    readonly columns: readonly number[],
    title: string,
    subtitle: string,
  ) {
    this.line(title, looks.title);
    this.line(subtitle, looks.subtitle);
  }

  /** Number of the next row, from 1 as in addresses. */
  get next(): number {
    return this.rows.length + 1;
  }

  add(pieces: readonly Piece[], least = 0): void {
    const cells: PlanCell[] = [];
    let lines = 1;
    let size = usualSize;
    for (const { span, value, look } of pieces) {
      const left = cells.length;
      const width = this.columns.slice(left, left + span).reduce((sum, each) => sum + each, 0);
      size = Math.max(size, look.size ?? usualSize);
      if (look.wrap && typeof value === "string")
        lines = Math.max(lines, linesOf(value, (width * widthSize) / sizeOf(look)));
      cells.push({ value, look });
      for (let i = 1; i < span; i++) cells.push({ value: null, look });
      if (span > 1)
        this.merges.push(
          `${columnLetters(left)}${this.next}:${columnLetters(left + span - 1)}${this.next}`,
        );
    }
    this.rows.push({ cells, height: Math.max(least, Math.ceil(lines * size * 1.3 + 3)) });
  }

  /** Of all rows together, in points. */
  get height(): number {
    return this.rows.reduce((sum, { height }) => sum + height, 0);
  }

  /** One text over all columns. */
  line(value: string, look: Look): void {
    this.add([{ span: this.columns.length, value, look }]);
  }

  /** A bare row; with a height, of that many points. */
  gap(height = 8): void {
    this.rows.push({ cells: [], height });
  }

  section(title: string): void {
    this.gap();
    this.line(title, looks.section);
  }

  /** A label with what it stands for. */
  fact(label: string, value: string | number, span = 3, look: Look = looks.text): void {
    this.add([
      { span, value: label, look: looks.label },
      { span: this.columns.length - span, value, look },
    ]);
  }

  heads<Row>(columns: readonly TableColumn<Row>[]): void {
    this.add(
      columns.map(([title, span, look]) => ({
        span,
        value: look.align === "right" ? `${title.replace(" (", `${noBreak}\n(`)}${noBreak}` : title,
        look: look.align === "right" ? looks.headNumber : looks.head,
      })),
    );
  }

  /** A row of a table, of so many points at least. */
  row<Row>(columns: readonly TableColumn<Row>[], row: Row, least = 0): void {
    this.add(
      columns.map(([, span, look, cell]) => ({ span, value: cell(row), look })),
      least,
    );
  }

  /** Headings with the rows below them. */
  table<Row>(rows: readonly Row[], columns: readonly TableColumn<Row>[]): void {
    if (rows.length === 0) {
      this.line("None.", looks.text);
      return;
    }
    this.heads(columns);
    for (const row of rows) this.row(columns, row);
  }
}

/** A column of a table: its title, how many of the sheet's columns it spans, and its cells. */
export type TableColumn<Row> = readonly [
  title: string,
  span: number,
  look: Look,
  cell: (row: Row) => string | number | null,
];

/** The size of letters as it counts for their width. */
function sizeOf({ size = usualSize, bold }: Look): number {
  return bold ? size * boldness : size;
}
