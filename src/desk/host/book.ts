import { around, holdsCell, parseRectangle, type Rectangle } from "../../cells";
import type { SheetModel } from "../../sheet";
import type { PageSpec, Sheet, SheetState, Workbook } from "../../workbook";
import type { Change } from "./change";
import { chartsOf, type HostChart } from "./charts/host-chart";
import type { Events } from "./events";
import { validationsOf } from "./file-validations";
import type { ConditionalFormat } from "./marks/conditional-format";
import { marksOf } from "./marks/file-marks";
import { overlaps } from "./subtract";
import type { Validation } from "./validation-rule";
import { HostError, notFound } from "./wire/errors";

/** The worksheet functions as the sheet model takes them. */
export type Functions = ConstructorParameters<typeof SheetModel>[1];

/** What the parts of the host need of the workbook that is open. */
export interface Book {
  readonly workbook: Workbook;
  readonly functions: Functions;
  readonly model: SheetModel;
  readonly tabs: readonly SheetTab[];
  readonly events: Events;
  /** Counts the states of the workbook, for whatever is worked out from it. */
  readonly revision: number;
  /** By name, whatever the case, or by id; null where there is none. */
  findTab(key: string): SheetTab | null;
  /** Notes a change and tells the page. */
  touched(change: Change): void;
}

/** Cells of one sheet: one rectangle or several. */
export interface CellArea {
  readonly tab: SheetTab;
  readonly rects: readonly Rectangle[];
}

export type { ListRule } from "./validation-rule";

/** Width of a column that states none, in characters: 64 pixels. */
const standardWidth = 64 / 7;

/** A sheet of the open workbook, with what the session knows about it beyond its cells. */
export class SheetTab {
  isDeleted = false;
  /** Options of a protection set in this session; null where none was. */
  protection: Readonly<Record<string, unknown>> | null = null;
  visibility: SheetState;
  /** Widths in characters set since the file was written last, by column. */
  readonly widths = new Map<number, number>();
  /** Heights of rows in points, set since then. */
  readonly heights = new Map<number, number>();
  /** What was set in this session of how it is printed. */
  page: PageSpec = {};
  #marks: ConditionalFormat[] | undefined;
  #validations: Validation[] | undefined;
  #charts: HostChart[] | undefined;
  #sheet: Sheet;

  constructor(
    readonly book: Book,
    readonly id: string,
    sheet: Sheet,
  ) {
    this.#sheet = sheet;
    this.visibility = sheet.state;
  }

  /** Conditional formats, highest priority first. */
  get marks(): ConditionalFormat[] {
    this.#marks ??= marksOf(this.#sheet);
    return this.#marks;
  }

  get validations(): Validation[] {
    this.#validations ??= validationsOf(this.#sheet);
    return this.#validations;
  }

  get charts(): HostChart[] {
    this.#charts ??= chartsOf(this.#sheet);
    return this.#charts;
  }

  /** What was asked for in this session, and so may differ from the file. */
  get touched() {
    return { marks: this.#marks, validations: this.#validations, charts: this.#charts };
  }

  /** Throws ItemNotFound once the sheet was deleted. */
  get sheet(): Sheet {
    if (this.isDeleted) throw notFound(`The sheet "${this.#sheet.name}" was deleted.`);
    return this.#sheet;
  }

  /** The same sheet after it was renamed. */
  set sheet(renamed: Sheet) {
    this.#sheet = renamed;
  }

  get name(): string {
    return this.sheet.name;
  }

  get position(): number {
    return this.book.tabs.indexOf(this);
  }

  get isProtected(): boolean {
    return this.protection !== null || this.sheet.isProtected;
  }

  /** Number of the format that a cell of its own has. */
  style(row: number, col: number): number {
    return this.sheet.cell(row, col)?.style ?? 0;
  }

  /** Width of a column in characters. */
  width(col: number): number {
    return this.widths.get(col) ?? this.sheet.columnWidths.get(col) ?? standardWidth;
  }

  checkWritable(): void {
    if (!this.isProtected) return;
    throw new HostError(
      "AccessDenied",
      `The sheet "${this.name}" is protected; unprotect it before changing its cells.`,
    );
  }

  /** Rectangles of merged cells that touch a rectangle. */
  merges(within: Rectangle): Rectangle[] {
    return this.sheet.merges.map(parseRectangle).filter((merge) => overlaps(merge, within));
  }

  /** The cells of a rectangle that hold something, as a rectangle around them; null when none do. */
  used(within: Rectangle): Rectangle | null {
    const { sheet } = this;
    let { top, left } = within;
    let bottom = Math.min(within.bottom, sheet.rowCount - 1);
    let right = Math.min(within.right, sheet.colCount - 1);
    const holds = (row: number, col: number) => {
      const cell = sheet.cell(row, col);
      return cell !== undefined && (cell.value !== null || cell.formula !== null);
    };
    const rowHolds = (row: number) => {
      for (let col = left; col <= right; col++) if (holds(row, col)) return true;
      return false;
    };
    const colHolds = (col: number) => {
      for (let row = top; row <= bottom; row++) if (holds(row, col)) return true;
      return false;
    };
    while (top <= bottom && !rowHolds(top)) top++;
    if (top > bottom || left > right) return null;
    while (!rowHolds(bottom)) bottom--;
    while (!colHolds(left)) left++;
    while (!colHolds(right)) right--;
    return { top, left, bottom, right };
  }

  /** The same with cells that have a look of their own and hold nothing. */
  usedOrFormatted(within: Rectangle): Rectangle | null {
    let found = this.used(within);
    for (const { row, col, style } of this.sheet.cells()) {
      if (style === 0 || !holdsCell(within, row, col)) continue;
      const cell = { top: row, left: col, bottom: row, right: col };
      found = found === null ? cell : around(found, cell);
    }
    return found;
  }
}
