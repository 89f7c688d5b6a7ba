import { type Content, contentOf } from "../cells/content";
import type { CellEdit } from "../cells/write";
import type { HostRange } from "../host-range";
import type { OpenBook } from "../open-book";
import { HostError } from "../wire/errors";

/** Empties cells, takes their formats, or both. */
export function clearRange(book: OpenBook, range: HostRange, what: string): void {
  if (what !== "All" && what !== "Contents" && what !== "Formats")
    throw new HostError("UnsupportedOperation", `Clearing "${what}" is not available.`);
  range.tab.checkWritable();
  if (what !== "Formats") clearContents(book, range);
  if (what === "Contents") return;
  book.formats.reset(range);
  book.marks.clear(range);
}

function clearContents(book: OpenBook, range: HostRange): void {
  const used = range.tab.used(range);
  if (used === null) return;
  const { tab } = range;
  const edits: CellEdit[] = [];
  range.with(used).forEach((row, col) => {
    if (!isBlank(contentOf(tab, row, col))) edits.push({ tab, row, col, content: { value: null } });
  });
  book.cells.apply(edits);
}

function isBlank(content: Content): boolean {
  return "value" in content && content.value === null;
}
