import { translateFormulaToA1 } from "@borgar/fx";
import { cellName, rowPattern } from "../../../cells";
import { type Content, contentOf } from "../cells/content";
import type { CellEdit } from "../cells/write";
import type { HostRange } from "../host-range";
import type { OpenBook } from "../open-book";
import type { Arguments } from "../wire/arguments";
import { HostError, invalidArgument } from "../wire/errors";
import { copyMerges } from "./range-arrange";

const kinds = ["All", "Formulas", "Values", "Formats"];

/**
 * Copies cells: formulas are written for their new place. A target that is a multiple of the source
 * takes it several times; any other grows or shrinks to the source.
 */
export function copyFrom(book: OpenBook, target: HostRange, args: Arguments): void {
  const source = args.range(0) ?? book.rangeAnywhere(target.tab, args.text(0, "The source"));
  const kind = args.optionalText(1, "What to copy") ?? "All";
  const skipsBlanks = args.flag(2);
  if (!kinds.includes(kind)) throw invalidArgument(`"${kind}" is no kind of copy.`);
  if (args.flag(3))
    throw new HostError("UnsupportedOperation", "Transposed copies are not available.");
  if (source.isEntireColumn || source.isEntireRow)
    throw invalidArgument(`${source.address} has no end; copy a range with a fixed size.`);
  const repeats = target.rows % source.rows === 0 && target.cols % source.cols === 0;
  const whole = repeats
    ? target
    : target.with({
        bottom: target.top + source.rows - 1,
        right: target.left + source.cols - 1,
      });
  whole.checkCellCount();
  const from = (row: number, col: number) => ({
    row: source.top + ((row - whole.top) % source.rows),
    col: source.left + ((col - whole.left) % source.cols),
  });
  if (kind !== "Formats") {
    // Read first, since the two may overlap.
    const edits: CellEdit[] = [];
    whole.forEach((row, col) => {
      const place = from(row, col);
      const content = copied(source, place.row, place.col, row, col, kind === "Values");
      const isBlank = "value" in content && content.value === null;
      if (!isBlank || !skipsBlanks) edits.push({ tab: whole.tab, row, col, content });
    });
    book.cells.apply(edits);
  }
  if (kind === "All" || kind === "Formats") {
    book.formats.copy(source.tab, whole, (row, col) => from(row, col));
    const isOnce = whole.rows === source.rows && whole.cols === source.cols;
    if (isOnce && source.tab !== whole.tab) copyMerges(book, source, whole);
  }
}

function copied(
  { tab }: HostRange,
  row: number,
  col: number,
  toRow: number,
  toCol: number,
  asValue: boolean,
): Content {
  if (asValue) return { value: tab.book.model.value(tab.name, row, col) };
  const content = contentOf(tab, row, col);
  if (!("formula" in content)) return content;
  const pattern = rowPattern(content.formula, row, col);
  return {
    formula: translateFormulaToA1(pattern, cellName(toRow, toCol), { wrapEdges: false }),
  };
}
