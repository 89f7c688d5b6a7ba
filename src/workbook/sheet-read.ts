import { type ReadContext, SheetContent } from "./cell-content";
import { decodeText } from "./decode";
import { WorkbookError } from "./error";
import { PlainCells } from "./plain-cells";
import { NotPlain } from "./plain-text";
import type { SheetData } from "./sheet-data";
import { SheetElements } from "./sheet-elements";
import { readXml, readXmlText } from "./xml";

export type { ReadContext } from "./cell-content";

/** Larger parts are read in pieces, so that they never stand in memory as one string. */
const longest = 2 ** 27;
/** How deep elements are nested below the cell data: row, c, is, r, t. */
const depthOfCells = 5;
const opening = "<sheetData";

/** Reads a sheet part in one pass. */
export function readSheet(part: string, bytes: Uint8Array, context: ReadContext): SheetData {
  return readPlainSheet(part, bytes, context) ?? readAnySheet(part, bytes, context);
}

/** The reading that knows all of XML and tells what is wrong, and where. */
export function readAnySheet(part: string, bytes: Uint8Array, context: ReadContext): SheetData {
  const content = new SheetContent(part, context);
  readXml(part, bytes, context.depth, new SheetElements(part, content, context));
  context.cells.take(content.arrayCells);
  return content.data;
}

/**
 * The reading for sheets as spreadsheet programs write them, several times as fast: the cells are
 * scanned by hand, and the XML parser sees only what stands around them. Undefined for a sheet with
 * anything else in it, right or wrong; then nothing was counted against the limits.
 */
export function readPlainSheet(
  part: string,
  bytes: Uint8Array,
  context: ReadContext,
): SheetData | undefined {
  if (bytes.length > longest) return undefined;
  try {
    const text = decodeText(part, bytes);
    const start = startOfCells(text);
    if (start < 0) return undefined;
    const content = new SheetContent(part, context);
    const cells = new PlainCells(text, content, context.cells.left);
    const end = cells.read(start);
    const elements = new SheetElements(part, content, context);
    const around = [text.slice(0, start), text.slice(end)];
    readXmlText(part, around, context.depth - depthOfCells, elements);
    if (!elements.sawCells) return undefined;
    context.cells.take(cells.count + content.arrayCells);
    return content.data;
  } catch (problem) {
    if (problem instanceof NotPlain || problem instanceof WorkbookError) return undefined;
    throw problem;
  }
}

/** Where the first row stands; -1 when what comes before it is not plain. */
function startOfCells(text: string): number {
  const at = text.indexOf(opening);
  const start = at + opening.length + 1;
  if (at < 0 || text[start - 1] !== ">") return -1;
  const before = text.slice(0, at);
  // "<sheetData" could stand in a comment, and XML 1.1 has further line ends.
  const declaration = before.startsWith("<?") ? before.slice(0, before.indexOf("?>")) : "";
  const hasMore = before.includes("<!") || before.lastIndexOf("<?") > 0;
  return hasMore || declaration.includes("1.1") ? -1 : start;
}
