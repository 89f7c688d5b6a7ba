import { maxCols } from "../../cells";
import type { Book } from "../run";
import type { SheetPlan } from "./pieces";

/** Cells whose colours are asked for one by one along with other cells, in all sheets together. */
const mostBeside = 10_000;
/** Rows of columns in several colours that are asked for after that. */
const mostAfter = 60_000;
/** What the colours of one cell take on the wire. */
const cellBytes = 70;

interface Sheet {
  readonly plan: SheetPlan;
  readonly used: Excel.Range;
}

/** The colours of a cell, or of several, as they are asked for. */
interface Painted {
  readonly format?: {
    readonly font?: { readonly color?: string };
    readonly fill?: { readonly color?: string };
  };
}
const leaves = { format: { font: { color: true }, fill: { color: true } } };
/** Asked of a whole used range, along with its first rows. */
export const colorLeaves = "format/font/color,format/fill/color";

/** Whether ink has the colour of its ground; undefined where cells differ. */
function isUnseen({ format }: Painted): boolean | undefined {
  const [ink, ground] = [format?.font?.color, format?.fill?.color];
  return ink && ground ? ink.toUpperCase() === ground.toUpperCase() : undefined;
}

/** Asks which cells have text in the colour of their ground, along with something else that is read. */
export class Colors {
  private readonly mixed: readonly SheetColors[];

  constructor(sheets: readonly Sheet[]) {
    const filled = sheets.filter(({ used }) => !used.isNullObject);
    const mixed = filled.filter(({ used }) => isUnseen(used) === undefined);
    for (const { plan, used } of filled)
      if (isUnseen(used)) plan.cells.looks = { ...plan.cells.looks, isUnseen: () => true };
    const cols = mixed.reduce((sum, { used }) => sum + used.columnCount, 0);
    const rows = Math.max(2, Math.floor(mostBeside / Math.max(1, cols)));
    this.mixed = mixed.map((sheet) => new SheetColors(sheet, rows));
  }

  get isNeeded(): boolean {
    return this.mixed.length > 0;
  }

  get bytes(): number {
    return this.mixed.reduce((sum, sheet) => sum + sheet.bytes, 0);
  }

  /** Queues the question. It is lost when the round trip fails, and may be asked again. */
  ask(): void {
    for (const sheet of this.mixed) sheet.ask();
  }

  /** Takes back a question that Excel will not answer: every cell then counts as seen. */
  drop(): void {
    for (const sheet of this.mixed) sheet.drop();
  }

  /** Notes the answer on each sheet; columns in several colours are asked for by their cells. */
  async answer(book: Book): Promise<void> {
    let left = mostAfter;
    const after = this.mixed
      .flatMap((sheet) => sheet.take())
      .filter(({ rows }) => {
        left -= rows;
        return left >= 0;
      });
    const found = after.map(({ ask }) => ask());
    if (after.length > 0) await book.sync();
    for (const [i, { put }] of after.entries()) put((found[i] as Answer).value);
  }
}

type Answer = OfficeExtension.ClientResult<Painted[][]>;

/** Cells still to be asked for. */
interface Later {
  readonly rows: number;
  ask(): Answer;
  put(cells: readonly (readonly Painted[])[]): void;
}

class SheetColors {
  private readonly unseen = new Set<number>();
  private readonly top: number;
  private readonly left: number;
  private readonly rows: number;
  private readonly cols: number;
  private readonly first: number;
  private cells: Answer | undefined;
  private columns: OfficeExtension.ClientResult<Painted[]> | undefined;

  constructor(
    private readonly sheet: Sheet,
    rows: number,
  ) {
    const { plan, used } = sheet;
    this.top = used.rowIndex;
    this.left = used.columnIndex;
    this.rows = plan.cells.rowCount - this.top;
    this.cols = plan.cells.colCount - this.left;
    this.first = Math.min(rows, this.rows);
  }

  get bytes(): number {
    return this.first * this.cols * cellBytes;
  }

  ask(): void {
    const { first, rows, cols } = this;
    this.cells = this.range(0, first, 0, cols).getCellProperties(leaves) as Answer;
    if (first < rows)
      this.columns = this.range(first, rows - first, 0, cols).getColumnProperties(leaves) as never;
  }

  drop(): void {
    this.cells = undefined;
    this.columns = undefined;
  }

  take(): Later[] {
    const { plan } = this.sheet;
    plan.cells.looks = {
      ...plan.cells.looks,
      isUnseen: (row, col) => this.unseen.has(row * maxCols + col),
    };
    if (this.cells) this.put(0, 0, this.cells.value);
    const from = this.first;
    const rows = this.rows - from;
    return (this.columns?.value ?? []).flatMap((column, col): Later[] => {
      const all = isUnseen(column);
      if (all) this.put(from, col, new Array(rows).fill([column]));
      if (all !== undefined) return [];
      const ask = () => this.range(from, rows, col, 1).getCellProperties(leaves) as Answer;
      return [{ rows, ask, put: (cells) => this.put(from, col, cells) }];
    });
  }

  private range(row: number, rows: number, col: number, cols: number): Excel.Range {
    const { proxy } = this.sheet.plan;
    return proxy.getRangeByIndexes(this.top + row, this.left + col, rows, cols);
  }

  private put(row: number, col: number, cells: readonly (readonly Painted[])[]): void {
    cells.forEach((line, r) => {
      line.forEach((cell, c) => {
        if (isUnseen(cell)) this.unseen.add((this.top + row + r) * maxCols + this.left + col + c);
      });
    });
  }
}
