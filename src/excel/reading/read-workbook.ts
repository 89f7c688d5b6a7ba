import { type Place, serialOf } from "../../cells";
import type { JobFile } from "../../job";
import { type Book, type RunOptions, run } from "../run";
import type { ReadProgress, WorkbookReading } from "../types";
import { Colors } from "./colors";
import { hiddenLinesOf, loadSheets, noteHidden, noteMerged, readHeads } from "./head";
import { NamesAndTables } from "./names-and-tables";
import { notesOn } from "./notes";
import { readPieces } from "./pieces";
import { SheetCells } from "./sheet-cells";

/**
 * Reads values and formulas of every sheet's used range, in blocks below the size that Excel on
 * the web hands over: at most 3 round trips and one more for every 4,000 rows of usual width.
 * Nothing is worked out again: the file has no calculator of its own.
 */
export function readWorkbook(
  onProgress: (progress: ReadProgress) => void = () => {},
  options?: RunOptions,
): Promise<WorkbookReading> {
  return run((book) => read(book, onProgress), options);
}

/** So many cells are read again by themselves; of more the whole workbook is read. */
const mostAgain = 10_000;

/**
 * A workbook as read before, with these cells read again in one round trip. undefined where that is not
 * enough: they are very many, or lie beyond what was read.
 */
export function readAgain(
  { sheets, ...file }: JobFile,
  places: readonly Place[],
  options?: RunOptions,
): Promise<JobFile | undefined> {
  const within = ({ sheet, bottom, right }: Place) =>
    sheets.some(
      ({ name, rowCount, colCount }) => name === sheet && bottom < rowCount && right < colCount,
    );
  const cells = places.reduce((sum, place) => sum + areaOf(place), 0);
  if (cells > mostAgain || !places.every(within)) return Promise.resolve(undefined);
  return run(async (book) => {
    const ranges = places.map(({ sheet, top, left, bottom, right }) => {
      const range = book.sheets
        .getItem(sheet)
        .getRangeByIndexes(top, left, bottom - top + 1, right - left + 1);
      range.load("values,formulas,valueTypes,numberFormat");
      return range;
    });
    await book.sync();
    const read = (grid: JobFile["sheets"][number]) =>
      places.reduce(
        (own, place, i) =>
          place.sheet === own.name && own instanceof SheetCells
            ? own.again(place, ranges[i] as Excel.Range)
            : own,
        grid,
      );
    return { ...file, sheets: sheets.map(read) };
  }, options);
}

const areaOf = ({ top, left, bottom, right }: Place) => (bottom - top + 1) * (right - left + 1);

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
  const colors = new Colors(heads);
  const pieces = heads.flatMap((head) => head.pieces);
  const total = heads.reduce((sum, head) => sum + head.usedRows, 0);
  const tell = (left: number) => onProgress({ done: Math.max(0, total - left), total });
  tell(pieces.reduce((sum, { top, bottom }) => sum + bottom - top + 1, 0));
  await readPieces(
    book,
    pieces,
    tell,
    [hidden, colors].filter(({ isNeeded }) => isNeeded),
  );
  await noteHidden(book, heads, hidden);
  await colors.answer(book);
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
