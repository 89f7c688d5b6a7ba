import { translateFormulaToA1 } from "@borgar/fx";
import { cellName, holdsCell, type Rectangle } from "../../../cells";
import type { Book, CellArea, SheetTab } from "../book";
import { overlaps, subtract } from "../subtract";
import { ConditionalFormat } from "./conditional-format";

/** How a cell is to look on top of its own format; colours as "#RRGGBB". */
export interface Mark {
  readonly fill?: string;
  readonly color?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
}

/** The conditional formats of the open workbook and which of them hold for a cell. */
export class Marks {
  private lastId = 0;
  private known = new Map<string, boolean>();
  private revision = 0;

  constructor(private readonly book: Book) {}

  /** Those that apply to some of the cells, highest priority first. */
  list({ tab, rects }: CellArea): ConditionalFormat[] {
    return tab.marks.filter(({ ranges }) =>
      ranges.some((range) => rects.some((rect) => overlaps(range, rect))),
    );
  }

  /** Adds one that comes before all others of the sheet. */
  add({ tab, rects }: CellArea): ConditionalFormat {
    tab.checkWritable();
    const id = `{${String(++this.lastId).padStart(8, "0")}-0000-4000-9000-000000000000}`;
    const mark = new ConditionalFormat(id, "Custom", rects.map(plainRect));
    tab.marks.unshift(mark);
    this.touched(tab);
    return mark;
  }

  remove(tab: SheetTab, mark: ConditionalFormat): void {
    tab.checkWritable();
    const at = tab.marks.indexOf(mark);
    if (at >= 0) tab.marks.splice(at, 1);
    this.touched(tab);
  }

  /** Takes the formats off the cells; others keep them. */
  clear({ tab, rects }: CellArea): void {
    tab.checkWritable();
    for (const mark of tab.marks)
      for (const rect of rects) mark.ranges = mark.ranges.flatMap((range) => subtract(range, rect));
    const kept = tab.marks.filter((mark) => mark.ranges.length > 0);
    tab.marks.splice(0, tab.marks.length, ...kept);
    this.touched(tab);
  }

  touched(tab: SheetTab): void {
    this.book.touched({ kind: "marks", sheet: tab.name });
  }

  /** How a cell is to look; null where no format holds for it. */
  at(tab: SheetTab, row: number, col: number): Mark | null {
    const look: { -readonly [K in keyof Mark]: Mark[K] } = {};
    let holds = false;
    for (const mark of tab.marks) {
      if (!mark.ranges.some((rect) => holdsCell(rect, row, col))) continue;
      if (!this.holds(mark, tab, row, col)) continue;
      holds = true;
      if (mark.fill !== undefined) look.fill ??= mark.fill;
      if (mark.color !== undefined) look.color ??= mark.color;
      if (mark.bold !== undefined) look.bold ??= mark.bold;
      if (mark.italic !== undefined) look.italic ??= mark.italic;
      if (mark.stopIfTrue) break;
    }
    return holds ? look : null;
  }

  private holds(mark: ConditionalFormat, tab: SheetTab, row: number, col: number): boolean {
    const pattern = mark.pattern();
    if (pattern === null) return false;
    if (/^\(?TRUE(\(\))?\)?$/i.test(pattern)) return true;
    if (this.revision !== this.book.revision) {
      this.known.clear();
      this.revision = this.book.revision;
    }
    const key = `${tab.id} ${row} ${col} ${pattern}`;
    let answer = this.known.get(key);
    if (answer === undefined) {
      answer = this.evaluate(pattern, tab, row, col);
      this.known.set(key, answer);
    }
    return answer;
  }

  private evaluate(pattern: string, tab: SheetTab, row: number, col: number): boolean {
    const formula = translateFormulaToA1(pattern, cellName(row, col), { wrapEdges: false });
    const found = this.book.model.evaluate(formula, tab.name, row, col);
    const value = "value" in found && found.value;
    return typeof value === "number" ? value !== 0 : value === true;
  }
}

function plainRect({ top, left, bottom, right }: Rectangle): Rectangle {
  return { top, left, bottom, right };
}
