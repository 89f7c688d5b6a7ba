import { type ReadContext, SheetContent } from "./cell-content";
import { decodePieces } from "./decode";
import { WorkbookError } from "./error";
import { megabytes } from "./limits";
import { PlainCells } from "./plain-cells";
import { NotPlain } from "./plain-text";
import type { SheetData } from "./sheet-data";
import { SheetElements } from "./sheet-elements";
import { readXml, readXmlText } from "./xml";

/** A sheet is read in pieces, so that it never stands in memory as one string. */
const usualPiece = 1 << 18;
/** More than this before the first row is no sheet as programs write it. */
const longestBefore = 1 << 22;
const row = "<row";
const rowBytes = new TextEncoder().encode(row);
const endOfRows = "</sheetData>";
/** A row that is longer is left to the full parser. */
const longestRow = 1 << 24;
/** How deep elements are nested below the cell data: row, c, is, r, t. */
const depthOfCells = 5;
const opening = "<sheetData";

/** Reads a sheet part in one pass. */
export function readSheet(part: string, bytes: Uint8Array, context: ReadContext): SheetData {
  return readPlainSheet(part, bytes, context) ?? readAnySheet(part, bytes, context);
}

/** The reading that knows all of XML and tells what is wrong, and where. */
export function readAnySheet(part: string, bytes: Uint8Array, context: ReadContext): SheetData {
  if (bytes.length > context.markup.left)
    throw new WorkbookError(
      "too-large",
      `${part} is written in another form than spreadsheet programs write, of which ${megabytes(context.markup.left)} are read: open the file in a spreadsheet program and save it anew.`,
    );
  context.markup.take(bytes.length);
  const content = new SheetContent(part, context);
  readXml(part, bytes, context.depth, new SheetElements(part, content));
  return content.done();
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
  pieceBytes = usualPiece,
): SheetData | undefined {
  try {
    const text = decodePieces(part, bytes, pieceBytes, rowBytes);
    const [before, first] = upToCells(text);
    if (!isPlainBefore(before)) return undefined;
    const content = new SheetContent(part, context);
    const rows = wholeRows(first, text);
    const around = [before, new PlainCells(rows, content).read()];
    for (const piece of rows) {
      context.markup.take(piece.length);
      around.push(piece);
    }
    const elements = new SheetElements(part, content);
    readXmlText(part, around, context.depth - depthOfCells, elements);
    return elements.sawCells ? content.done() : undefined;
  } catch (problem) {
    const isTooLarge = problem instanceof WorkbookError && problem.code === "too-large";
    if (isTooLarge || !(problem instanceof NotPlain || problem instanceof WorkbookError))
      throw problem;
    return undefined;
  }
}

/** The text up to the first row, and what was read beyond; blank texts where there are no cells. */
function upToCells(pieces: Iterator<string>): [string, string] {
  let text = "";
  for (let next = pieces.next(); !next.done; next = pieces.next()) {
    text += next.value;
    const at = text.indexOf(opening);
    const start = at + opening.length + 1;
    if (at >= 0 && start <= text.length)
      return text[start - 1] === ">" ? [text.slice(0, start), text.slice(start)] : ["", ""];
    if (text.length > longestBefore) break;
  }
  return ["", ""];
}

/** "<sheetData" could stand in a comment, and XML 1.1 has further line ends. */
function isPlainBefore(before: string): boolean {
  const declaration = before.startsWith("<?") ? before.slice(0, before.indexOf("?>")) : "";
  const hasMore = before.includes("<!") || before.lastIndexOf("<?") > 0;
  return before !== "" && !hasMore && !declaration.includes("1.1");
}

/** The pieces cut before a row, where they are not yet, up to the last; from there on as they come. */
function* wholeRows(first: string, pieces: Iterator<string>): Generator<string> {
  let text = first;
  let isPast = false;
  for (let next = pieces.next(); !next.done; next = pieces.next()) {
    const isCut = next.value.startsWith(row);
    isPast ||= !isCut && text.includes(endOfRows);
    const at = isPast || isCut ? text.length : text.lastIndexOf(row);
    if (at > 0) {
      yield text.slice(0, at);
      text = text.slice(at);
    }
    if (text.length > longestRow) throw new NotPlain();
    text += next.value;
  }
  if (text !== "") yield text;
}
