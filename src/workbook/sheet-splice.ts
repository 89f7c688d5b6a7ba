import { around, grouped, parseRectangle, type Rectangle, rectangleText } from "../cells";
import { cellXml, newCellXml, type SpliceContext } from "./cell-splice";
import type { CellEdit, SheetEdits } from "./edit";
import { type CellSpan, type RowSpan, type SheetScan, type Span, scanSheet } from "./sheet-scan";
import { applySplices, type Splice } from "./splice";
import { openingTag } from "./tree";

/** A cell that is not there needs writing only when it is to hold something or to look different. */
function holdsContent(edit: CellEdit): boolean {
  const { formula = null, value = null, style } = edit;
  return formula !== null || value !== null || style !== undefined;
}

function byNumber<T>(map: ReadonlyMap<number, T>): [number, T][] {
  return [...map].sort((a, b) => a[0] - b[0]);
}

class SheetSplicer {
  readonly splices: Splice[] = [];
  /** Corner columns and rows of the cells added. */
  added: Rectangle | null = null;
  /** First row of the file that may come after the next new row. */
  #next = 0;

  constructor(
    private readonly text: string,
    private readonly scan: SheetScan,
    private readonly context: SpliceContext,
  ) {}

  /** Rows of the same number are rare but legal to read: the first takes the new cells. */
  row(spans: readonly RowSpan[], row: number, edits: ReadonlyMap<number, CellEdit>): void {
    const existing = new Map<number, CellSpan>();
    for (const span of spans) for (const cell of span.cells) existing.set(cell.col, cell);
    const fresh: [number, CellEdit][] = [];
    for (const [col, edit] of byNumber(edits)) {
      const cell = existing.get(col);
      if (cell === undefined) {
        if (holdsContent(edit)) fresh.push([col, edit]);
        continue;
      }
      const place = { attributes: cell.tag.attributes, children: cell.children };
      const text = cellXml(this.text, this.scan.prefix, place, edit, this.context);
      this.splices.push({ start: cell.start, end: cell.end, text });
    }
    if (fresh.length === 0) return;
    const first = spans[0];
    if (first === undefined) this.#newRow(row, fresh);
    else this.#newCells(first, fresh);
  }

  #note(row: number, col: number): void {
    const cell = { top: row, left: col, bottom: row, right: col };
    this.added = around(this.added ?? cell, cell);
  }

  #newCell(row: number, col: number, edit: CellEdit): string {
    this.#note(row, col);
    return newCellXml(this.scan.prefix, row, col, edit, this.context);
  }

  #newRow(row: number, fresh: readonly [number, CellEdit][]): void {
    const { prefix, rowNumbers, rowStarts, sheetData } = this.scan;
    const cells = fresh.map(([col, edit]) => this.#newCell(row, col, edit)).join("");
    const text = `<${prefix}row r="${row + 1}">${cells}</${prefix}row>`;
    // Rows come here in ascending order, so the search goes on from where it was.
    while (this.#next < rowNumbers.length && (rowNumbers[this.#next] as number) <= row)
      this.#next++;
    const at = rowStarts[this.#next] ?? sheetData.closeStart;
    this.splices.push({ start: at, end: at, text });
  }

  #newCells(span: RowSpan, fresh: readonly [number, CellEdit][]): void {
    const { name, attributes, isSelfClosing } = span.tag;
    const texts = fresh.map(([col, edit]) => ({ col, text: this.#newCell(span.row, col, edit) }));
    const spans = widenedSpans(attributes.spans, fresh[0]?.[0] ?? 0, fresh.at(-1)?.[0] ?? 0);
    if (isSelfClosing || spans !== attributes.spans) {
      const open = openingTag(
        name,
        spans === undefined ? attributes : { ...attributes, spans },
        false,
      );
      const inner = isSelfClosing ? `${texts.map(({ text }) => text).join("")}</${name}>` : "";
      this.splices.push({ start: span.start, end: span.openEnd, text: open + inner });
      if (isSelfClosing) return;
    }
    const end = span.cells.at(-1)?.end ?? span.openEnd;
    for (const { col, text } of texts) {
      const at = span.cells.find((cell) => cell.col > col)?.start ?? end;
      this.splices.push({ start: at, end: at, text });
    }
  }
}

/** The row's hint at its used columns ("1:25"), widened when a new cell stands outside. */
function widenedSpans(spans: string | undefined, first: number, last: number): string | undefined {
  const match = /^(\d+):(\d+)$/.exec(spans ?? "");
  if (match === null) return spans;
  const low = Math.min(Number(match[1]), first + 1);
  const high = Math.max(Number(match[2]), last + 1);
  return `${low}:${high}`;
}

function widenedDimension(dimension: Span, added: Rectangle): string | null {
  const ref = dimension.tag.attributes.ref;
  let old: Rectangle;
  try {
    old = parseRectangle(ref ?? "");
  } catch {
    return null; // A hint that is not understood is left alone.
  }
  const wider = rectangleText(around(old, added));
  if (wider === ref) return null;
  const { name, attributes, isSelfClosing } = dimension.tag;
  return openingTag(name, { ...attributes, ref: wider }, isSelfClosing);
}

/** The sheet's text with the edited cells written anew and all else as it was. */
export function spliceSheet(
  part: string,
  text: string,
  edits: SheetEdits,
  context: SpliceContext & { readonly depth: number },
): string {
  const scan = scanSheet(part, text, context.depth, (row) => edits.has(row));
  const byRow = grouped(scan.rows, ({ row }) => row);
  const splicer = new SheetSplicer(text, scan, context);
  for (const [row, cells] of byNumber(edits)) splicer.row(byRow.get(row) ?? [], row, cells);
  const splices = splicer.splices;
  const { sheetData, dimension } = scan;
  if (sheetData.tag.isSelfClosing && splices.length > 0) {
    // <sheetData/> must be opened up to take the rows.
    const { name, attributes } = sheetData.tag;
    const rows = splices.map((splice) => splice.text).join("");
    splices.length = 0;
    const opened = `${openingTag(name, attributes, false)}${rows}</${name}>`;
    splices.push({ start: sheetData.start, end: sheetData.openEnd, text: opened });
  }
  if (dimension !== null && splicer.added !== null) {
    const tag = widenedDimension(dimension, splicer.added);
    if (tag !== null) {
      splices.push({ start: dimension.start, end: dimension.openEnd, text: tag });
    }
  }
  return applySplices(text, splices);
}
