import { kept } from "../../cells";
import type { StyleSpec } from "../../workbook";
import type { Book, SheetTab } from "./book";
import type { LookStep } from "./history";
import type { HostRange } from "./host-range";
import { invalidArgument } from "./wire/errors";

/** Cells that are looked through for what they have in common: more than are read of any sheet. */
const mostLooked = 5_000_000;

/** The looks of cells, read from and written to the workbook's cell formats. */
export class Formats {
  private readonly codes = new Map<number, string>();
  private readonly specs = new Map<number, StyleSpec>();

  constructor(private readonly book: Book) {}

  /** The number format of a cell. */
  code(tab: SheetTab, row: number, col: number): string {
    const style = tab.style(row, col);
    return kept(this.codes, style, () => this.book.workbook.formatCode(style));
  }

  isText(tab: SheetTab, row: number, col: number): boolean {
    return this.code(tab, row, col) === "@";
  }

  at(tab: SheetTab, row: number, col: number): StyleSpec {
    const style = tab.style(row, col);
    return kept(this.specs, style, () => this.book.workbook.styleSpec(style));
  }

  /** What all cells of a range have in common in one respect; null where they differ. */
  shared<K extends keyof StyleSpec>(range: HostRange, key: K): StyleSpec[K] | null {
    return this.common(range, (tab, row, col) => this.at(tab, row, col)[key]);
  }

  private common<T>(range: HostRange, at: (tab: SheetTab, row: number, col: number) => T) {
    const { tab, top, left, bottom, right, rows, cols } = this.bounded(range);
    // More are not gone through one by one: they count as not all alike.
    if (rows * cols > mostLooked) return null;
    const first = at(tab, top, left);
    for (let row = top; row <= bottom; row++)
      for (let col = left; col <= right; col++) if (at(tab, row, col) !== first) return null;
    return first;
  }

  /** The colour of text, or of what it stands on, that all cells of a range have; null where they differ. */
  color(range: HostRange, of: "ink" | "ground"): string | null {
    return this.common(range, (tab, row, col) => this.colorAt(tab, row, col, of));
  }

  colorAt(tab: SheetTab, row: number, col: number, of: "ink" | "ground"): string {
    return `#${digits(this.book.workbook.colors(tab.style(row, col))[of])}`;
  }

  /** Changes the looks of every cell of a range; undefined takes a look away. */
  change(range: HostRange, changes: StyleSpec): void {
    this.changeEach(range, () => changes);
  }

  /** The changes for each cell; null leaves one alone. */
  changeEach(range: HostRange, changesAt: (row: number, col: number) => StyleSpec | null): void {
    const known = new Map<string, number>();
    this.setEach(range, ({ tab }, row, col) => {
      const changes = changesAt(row, col);
      if (changes === null) return null;
      const base = tab.style(row, col);
      const key = `${base} ${JSON.stringify(Object.entries(changes))}`;
      return kept(known, key, () => this.book.workbook.restyle(base, changes));
    });
  }

  /** Takes all formats off the cells. */
  reset(range: HostRange): void {
    this.setEach(range, ({ tab }, row, col) => (tab.style(row, col) === 0 ? null : 0));
  }

  /** Gives each cell of a range the format of the cell it comes from; returns what that changed. */
  copy(
    source: SheetTab,
    target: HostRange,
    from: (row: number, col: number) => { readonly row: number; readonly col: number },
  ): LookStep[] {
    const cells = this.bounded(target);
    const styles = new Map<string, number>();
    cells.forEach((row, col) => {
      const place = from(row, col);
      styles.set(`${row} ${col}`, source.style(place.row, place.col));
    });
    return this.setEach(cells, ({ tab }, row, col) => {
      const style = styles.get(`${row} ${col}`) ?? 0;
      return style === tab.style(row, col) ? null : style;
    });
  }

  /** Gives cells the formats that they had before an edit or after it. */
  revert(looks: readonly LookStep[], side: "before" | "after"): void {
    for (const { tab, row, col, [side]: style } of looks) tab.sheet.setStyle(row, col, style);
    const [first] = looks;
    if (first) this.book.touched({ kind: "formats", cells: rowOf(first, looks.length) });
  }

  /** Gives cells a format; null leaves one alone. */
  private setEach(
    range: HostRange,
    styleAt: (range: HostRange, row: number, col: number) => number | null,
  ): LookStep[] {
    const cells = this.bounded(range);
    const { tab } = cells;
    const changed: LookStep[] = [];
    tab.checkWritable();
    cells.checkCellCount();
    cells.forEach((row, col) => {
      const style = styleAt(cells, row, col);
      if (style === null) return;
      changed.push({ tab, row, col, before: tab.style(row, col), after: style });
      tab.sheet.setStyle(row, col, style);
    });
    this.book.touched({ kind: "formats", cells: cells.ref });
    return changed;
  }

  /** Whole columns and rows end with the used cells, because formats are stored cell by cell. */
  private bounded(range: HostRange): HostRange {
    if (!range.isEntireColumn && !range.isEntireRow) return range;
    const { rowCount, colCount } = range.tab.sheet;
    const bottom = range.isEntireColumn ? Math.max(range.top, rowCount - 1) : range.bottom;
    const right = range.isEntireRow ? Math.max(range.left, colCount - 1) : range.right;
    return range.with({ bottom, right });
  }
}

/** The cells of one row whose looks an edit changed lie within these. */
const rowOf = ({ tab, row, col }: LookStep, length: number) => ({
  sheet: tab.name,
  top: row,
  left: col,
  bottom: row,
  right: Math.max(col + length, tab.sheet.colCount) - 1,
});

/** A colour in six digits; one that only the theme knows as a grey of its own, so that equal ones stay equal. */
function digits(color: string): string {
  if (/^[0-9A-F]{6}$/.test(color)) return color;
  let grey = 7;
  for (const sign of color) grey = (grey * 31 + sign.charCodeAt(0)) % 200;
  return (grey + 20).toString(16).toUpperCase().padStart(2, "0").repeat(3);
}

/** "#RRGGBB" or a colour word as "RRGGBB". */
export function readColor(value: unknown): string {
  if (typeof value !== "string") throw invalidArgument("A colour must be a text such as #FFCC00.");
  const hex = /^#?([0-9a-f]{6})$/i.exec(value.trim())?.[1] ?? words[value.trim().toLowerCase()];
  if (hex === undefined)
    throw invalidArgument(`"${value}" is no colour; give one such as #FFCC00.`);
  return hex.toUpperCase();
}

/** The colours that HTML 4 names. */
const words: Readonly<Record<string, string>> = {
  black: "000000",
  silver: "C0C0C0",
  gray: "808080",
  white: "FFFFFF",
  maroon: "800000",
  red: "FF0000",
  purple: "800080",
  fuchsia: "FF00FF",
  green: "008000",
  lime: "00FF00",
  olive: "808000",
  yellow: "FFFF00",
  orange: "FFA500",
  navy: "000080",
  blue: "0000FF",
  teal: "008080",
  aqua: "00FFFF",
};
