import { type CellValue, cellName, InputError, isBlankCell, isCellError, kept } from "../../cells";
import type { System } from "../../editions";
import { conversionFactor } from "../../units";
import { type Field, type SheetLayout, unitOf } from "../columns";
import { type Grid, hasFormula } from "../grid";
import { listed } from "../words";
import { along, type Block, blockOf, type Line, type Place, partOfBlock } from "./block";
import { TableIndex } from "./table-index";

/** Why a number cell gave no number. */
type Gap = "blank" | "text" | "error" | "absent";

/** Twice a very large job. */
const mostRows = 100_000;

/**
 * Readings of one kind, each field with its own place: from one sheet or several, from rows,
 * columns, cards or blocks side by side. Numbers are in the job's units.
 */
export class Table {
  readonly length: number;
  private readonly starts: readonly number[];
  private readonly fields: ReadonlyMap<string, Field>;
  private readonly keys = new Set<string>();
  private readonly valueColumns = new Map<string, readonly CellValue[]>();
  private readonly numberColumns = new Map<string, Float64Array>();
  private readonly textColumns = new Map<string, readonly string[]>();
  private readonly formulaColumns = new Map<string, Uint8Array>();
  private index: TableIndex | undefined;

  constructor(
    readonly blocks: readonly Block[],
    readonly layout: SheetLayout,
    readonly system: System,
    /** The numbers of its readings in the table that it is a part of. */
    private readonly numbersInWhole?: readonly number[],
  ) {
    let length = 0;
    this.starts = blocks.map((block) => {
      length += block.length;
      return length - block.length;
    });
    if (length > mostRows)
      throw new InputError(
        `holds ${length.toLocaleString("en")} rows for ${layout.kind}, more than the ${mostRows.toLocaleString("en")} that are checked at once: part it into several files, dwelling by dwelling`,
      );
    this.length = length;
    this.fields = new Map(layout.fields.map((field) => [field.key, field]));
    for (const { lines } of blocks) for (const key of lines.keys()) this.keys.add(key);
  }

  /** Some of its readings. */
  part(rows: readonly number[]): Table {
    const blocks = this.blocks.map((block, at) => {
      const own = rows.map((i) => i - (this.starts[at] as number));
      return partOfBlock(
        block,
        own.filter((i) => i >= 0 && i < block.length),
      );
    });
    return new Table(blocks, this.layout, this.system, rows);
  }

  /** The number of a reading in the table that this is a part of. */
  numberInWhole(i: number): number {
    return this.numbersInWhole ? (this.numbersInWhole[i] as number) : i;
  }

  /** The same readings after an edit of their sheets that changed no more than these of them. */
  again(sheets: readonly Grid[], rows: readonly number[]): Table {
    const blocks = this.blocks.map((block) => {
      return { ...block, grid: sheets.find(({ name }) => name === block.grid.name) ?? block.grid };
    });
    const table = new Table(blocks, this.layout, this.system);
    table.index = this.index;
    for (const [key, before] of this.valueColumns)
      table.valueColumns.set(
        key,
        this.keys.has(key) ? patched(before, rows, (i) => table.stored(key, i)) : before,
      );
    for (const [key, before] of this.numberColumns) {
      const number = (i: number) => numberOf(table.raw(key, i)) * table.factor(key, i);
      table.numberColumns.set(key, patched(before, rows, number));
    }
    for (const [key, before] of this.textColumns)
      table.textColumns.set(
        key,
        patched(before, rows, (i) => textOf(table.raw(key, i))),
      );
    for (const [key, before] of this.formulaColumns)
      table.formulaColumns.set(
        key,
        patched(before, rows, (i): number => table.formulaAt(key, i)),
      );
    return table;
  }

  /** The names of its sheets, each once. */
  get sheets(): readonly string[] {
    return [...new Set(this.blocks.map(({ grid }) => grid.name))];
  }

  /** Its sheets in words: "Fans", or "Block A, Block B and 2 more". */
  get name(): string {
    const names = this.sheets;
    if (names.length <= 3) return listed(names);
    return `${names.slice(0, 2).join(", ")} and ${names.length - 2} more`;
  }

  /** Whether any reading has the field; with `i`, whether this one has a cell for it. */
  has(key: string, i?: number): boolean {
    return this.keys.has(key) && (i === undefined || this.place(key, i) !== undefined);
  }

  /** Where a field of a reading stands; undefined where it stands nowhere. */
  place(key: string, i: number): Place | undefined {
    const at = this.blockAt(i);
    const block = this.blocks[at];
    const line = block?.lines.get(key);
    if (!block || !line) return undefined;
    const own = i - (this.starts[at] as number);
    const [row, col] = [along(line.rows, own), along(line.cols, own)];
    return row < 0 || col < 0 ? undefined : { grid: block.grid, row, col };
  }

  /** Where the reading stands as a whole. */
  home(i: number): Place {
    const at = this.blockAt(i);
    const { grid, home } = this.blocks[at] as Block;
    const own = i - (this.starts[at] as number);
    return { grid, row: along(home.rows, own), col: along(home.cols, own) };
  }

  /** The place of a field, or of the reading as a whole where the field has none. */
  placeOrHome(key: string, i: number): Place {
    return this.place(key, i) ?? this.home(i);
  }

  /** Where another reading stands, in words: "row 12", "F12" where a row holds several. */
  where(i: number, from?: number): string {
    const { grid, row, col } = this.home(i);
    const own = this.blocks[this.blockAt(i)]?.isRowwise ? `row ${row + 1}` : cellName(row, col);
    return from === undefined || this.home(from).grid === grid ? own : `${own} of ${grid.name}`;
  }

  /** The readings that a cell belongs to; with no column, those that a row holds. */
  readingsAt(sheet: string, row: number, col?: number): readonly number[] {
    this.index ??= new TableIndex(this.blocks, this.starts);
    return this.index.at(sheet, row, col);
  }

  /** What a cell holds, as stored. */
  raw(key: string, i: number): CellValue {
    return this.raws(key)[i] ?? null;
  }

  /** What the cell itself holds, whatever its sheet's habit makes of it. */
  stored(key: string, i: number): CellValue {
    const place = this.place(key, i);
    return place ? place.grid.value(place.row, place.col) : null;
  }

  /** What a field's cells hold, as its sheet means it; empty for a field that is not there. */
  raws(key: string): readonly CellValue[] {
    return (
      this.valueColumns.get(key) ??
      kept(this.valueColumns, key, () => {
        const parts = this.keys.has(key) ? this.blocks.map((block) => valuesOf(block, key)) : [];
        return parts.length === 1 ? (parts[0] as readonly CellValue[]) : parts.flat();
      })
    );
  }

  formula(key: string, i: number): string | null {
    const place = this.place(key, i);
    return place ? place.grid.formula(place.row, place.col) : null;
  }

  /** Whether `formula` gives one, which costs less to know. */
  hasFormula(key: string, i: number): boolean {
    const column =
      this.formulaColumns.get(key) ??
      kept(this.formulaColumns, key, () =>
        Uint8Array.from({ length: this.length }, (_, row) => this.formulaAt(key, row)),
      );
    return column[i] === 1;
  }

  private formulaAt(key: string, i: number): 0 | 1 {
    const place = this.place(key, i);
    return place !== undefined && hasFormula(place.grid, place.row, place.col) ? 1 : 0;
  }

  /** The cell's name, such as "K12"; that of the reading as a whole where the field is absent. */
  ref(key: string, i: number): string {
    return this.cell(key, i).cell;
  }

  /** The same with the name of its sheet. */
  cell(key: string, i: number): { readonly sheet: string; readonly cell: string } {
    const { grid, row, col } = this.placeOrHome(key, i);
    return { sheet: grid.name, cell: cellName(row, col) };
  }

  /** What stands over a field's cells. */
  heading(key: string, i?: number): string {
    const heading = this.lineOf(key, i)?.heading;
    return heading || this.field(key).title;
  }

  field(key: string): Field {
    const field = this.fields.get(key);
    if (!field) throw new Error(`the ${this.layout.title} sheet has no field ${key}`);
    return field;
  }

  /** The unit of a field's cells; undefined where it has none. */
  unit(key: string, i?: number): string | undefined {
    const { measure } = this.field(key);
    return this.lineOf(key, i)?.unit ?? (measure && unitOf(measure, this.system));
  }

  /** Multiplies a stored number into the job's unit; 1 where the cells are in it already. */
  factor(key: string, i?: number): number {
    return this.factorOf(key, this.lineOf(key, i));
  }

  /** A field's numbers in the job's unit; NaN where the cell holds none. */
  numbers(key: string): Float64Array {
    return (
      this.numberColumns.get(key) ?? kept(this.numberColumns, key, () => this.readNumbers(key))
    );
  }

  private readNumbers(key: string): Float64Array {
    const values = this.raws(key);
    const column = new Float64Array(this.length).fill(Number.NaN);
    for (const [at, block] of this.blocks.entries()) {
      const start = this.starts[at] as number;
      const line = block.lines.get(key);
      if (!line) continue;
      const factor = this.factorOf(key, line);
      for (let i = start; i < start + block.length; i++)
        column[i] = numberOf(values[i] ?? null) * factor;
    }
    return column;
  }

  number(key: string, i: number): number {
    return this.numbers(key)[i] as number;
  }

  /** A field's texts, trimmed; "" where blank or an error. Numbers become their digits. */
  texts(key: string): readonly string[] {
    return this.textColumns.get(key) ?? kept(this.textColumns, key, () => this.readTexts(key));
  }

  private readTexts(key: string): readonly string[] {
    if (this.keys.has(key)) {
      const values = this.raws(key);
      return Array.from({ length: this.length }, (_, i) => textOf(values[i] ?? null));
    }
    // All fields that are not there are one column.
    const absent = "";
    return kept(this.textColumns, absent, () => new Array<string>(this.length).fill(""));
  }

  text(key: string, i: number): string {
    return this.texts(key)[i] as string;
  }

  /** Why there is no number, or undefined where there is one. */
  gap(key: string, i: number): Gap | undefined {
    if (!this.has(key)) return "absent";
    const value = this.raw(key, i);
    if (typeof value === "number") return undefined;
    if (isBlankCell(value)) return this.has(key, i) ? "blank" : "absent";
    return isCellError(value) ? "error" : "text";
  }

  private factorOf(key: string, line: Line | undefined): number {
    const measure = this.fields.get(key)?.measure;
    return line?.unit && measure ? conversionFactor(line.unit, unitOf(measure, this.system)) : 1;
  }

  private lineOf(key: string, i: number | undefined): Line | undefined {
    if (i !== undefined) return this.blocks[this.blockAt(i)]?.lines.get(key);
    return this.blocks.find(({ lines }) => lines.has(key))?.lines.get(key);
  }

  private blockAt(i: number): number {
    return blockOf(this.starts, i);
  }
}

/** A column with other values in some rows: the very same where they are the same. */
export function patched<T, C extends { readonly [i: number]: T; slice(): C }>(
  before: C,
  rows: readonly number[],
  value: (i: number, at: number) => T,
): C {
  let column: { [i: number]: T } | undefined;
  for (const [at, i] of rows.entries()) {
    const own = value(i, at);
    if (Object.is(own, before[i])) continue;
    column ??= before.slice();
    column[i] = own;
  }
  return (column as C | undefined) ?? before;
}

/** A block's values of one field; blanks where it has no such line. */
function valuesOf({ grid, length, lines }: Block, key: string): readonly CellValue[] {
  const line = lines.get(key);
  if (!line) return Array<CellValue>(length).fill(null);
  if (line.values) return line.values;
  const { rows, cols } = line;
  if (typeof cols === "number" && typeof rows !== "number" && grid.column && !(cols < 0))
    return grid.column(cols, Array.isArray(rows) ? rows : Array.from(rows));
  return Array.from({ length }, (_, i) => {
    const [row, col] = [along(rows, i), along(cols, i)];
    return row < 0 || col < 0 ? null : grid.value(row, col);
  });
}

const numberOf = (value: CellValue) => (typeof value === "number" ? value : Number.NaN);

function textOf(value: CellValue): string {
  if (typeof value === "string") return value.trim();
  return value === null || isCellError(value) ? "" : String(value);
}
