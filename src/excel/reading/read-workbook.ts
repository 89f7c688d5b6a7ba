import { serialOf } from "../../cells";
import type { JobFile } from "../../job";
import { type Book, type RunOptions, run } from "../run";
import type { ReadProgress, WorkbookReading } from "../types";
import { hiddenLinesOf, loadSheets, noteHidden, noteMerged, readHeads } from "./head";
import { NamesAndTables } from "./names-and-tables";
import { notesOn } from "./notes";
import { readPieces } from "./pieces";

/**
 * Reads values and formulas of every sheet's used range, in blocks below the size that Excel on
 * the web hands over: at most 3 round trips and one more for every 5,000 rows of usual width.
 * Nothing is worked out again: the file has no calculator of its own.
 */
export function readWorkbook(
  onProgress: (progress: ReadProgress) => void = () => {},
  options?: RunOptions,
): Promise<WorkbookReading> {
  return run((book) => read(book, onProgress), options);
}

async function read(
  book: Book,
  onProgress: (progress: ReadProgress) => void,
): Promise<WorkbookReading> {
  const { workbook } = book;
  workbook.load("readOnly");
  const { application } = workbook;
  application.load("calculationMode");
  const day = workbook.functions.date(2000, 1, 1); // Less where days count from 1904.
  day.load("value");
  const sheets = loadSheets(book);
  const pointed = new NamesAndTables(book);
  await book.sync();

  const heads = await readHeads(book, sheets.items, () => pointed.ask());
  const hidden = hiddenLinesOf(heads);
  const pieces = heads.flatMap((head) => head.pieces);
  const total = heads.reduce((sum, head) => sum + head.usedRows, 0);
  const tell = (left: number) => onProgress({ done: Math.max(0, total - left), total });
  tell(pieces.reduce((sum, { top, bottom }) => sum + bottom - top + 1, 0));
  await readPieces(book, pieces, tell, hidden.isNeeded ? hidden : undefined);
  await noteHidden(book, heads, hidden);
  await noteMerged(book, heads);

  const file: JobFile = {
    sheets: heads.map(({ plan }) => plan.cells),
    ...pointed.answer(),
    dateOffset: serialOf(new Date("2000-01-01")) - day.value,
  };
  const notes = heads.flatMap(({ facts }) => notesOn(facts));
  if (heads.some(({ facts }) => facts.merged === null))
    notes.push(
      "Merged cells could not be listed, as a rule because there are very many. Only the first cell of a merge holds a value.",
    );
  if (application.calculationMode === "Manual")
    notes.unshift("Calculation is set to manual: press F9 before you trust the values.");
  if (workbook.readOnly)
    notes.unshift("The workbook is open for reading only: save a copy to keep what you change.");
  return { file, notes, trips: book.trips };
}
