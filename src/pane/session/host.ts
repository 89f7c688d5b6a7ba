import type { Place as Cells, Spot } from "../../cells";
import type { NewAcceptance, PlannedBox, ReadProgress } from "../../excel";
import type { Finding, FitChoice, Grid, JobCheck, JobFile, JobStart, Mend } from "../../job";
import type { SheetPlan } from "../../records";
import type { CellNow } from "../model/trace-now";

export interface Place {
  readonly sheet: string;
  /** Sheet row, from 0. */
  readonly row: number;
  readonly cell: string;
}

/** A workbook as read, with what a reader should know about the reading. */
export interface Reading {
  readonly file: JobFile;
  /** Hidden rows, protected sheets and the like, one sentence each. */
  readonly notes: readonly string[];
  /** Serial number of today in this workbook. */
  readonly today: number;
}

/** What a mend needs to be taken back. */
export interface Undoable {
  readonly undo: () => Promise<void>;
}

/** What the pane asks of the workbook it stands beside. Each call may reject with an Error. */
export interface PaneHost {
  /** Reads the workbook, once the user has left a cell that is being edited. */
  read(onProgress?: (progress: ReadProgress) => void): Promise<Reading>;
  /** A reading with some cells read again; undefined where the whole must be read. */
  readAgain(before: Reading, cells: readonly Cells[]): Promise<Reading | undefined>;
  /** Tells of the cells that were edited or worked out again. */
  watchEdits(onEdit: (cells: Cells) => void): Promise<() => void>;
  watchSelection(onMove: (place: Place) => void): Promise<() => void>;
  selection(): Promise<Place | undefined>;
  select(sheet: string, cell: string): Promise<void>;
  /** Puts the keyboard on the active cell, where the host can. */
  toSheet?(): void;
  /** What a cell holds at this moment. */
  describe(spot: Spot): Promise<CellNow>;
  /** Writes a mend where the cells hold what was checked. */
  apply(sheet: string, mend: Mend, checked: Grid | undefined): Promise<Undoable>;
  hasMarks(): Promise<boolean>;
  /** Returns how many cells are marked. */
  mark(findings: readonly Finding[]): Promise<number>;
  clearMarks(): Promise<void>;
  /** Returns the name of the sheet. */
  writeFindings(check: JobCheck): Promise<string>;
  /** Keeps an acceptance in the workbook; returns the name of the sheet. */
  accept(acceptance: NewAcceptance): Promise<string>;
  /** Takes the acceptance of a finding back; returns the name of the sheet. */
  withdraw(finding: NewAcceptance["finding"]): Promise<string>;
  /** Writes a record anew, or for the first time; returns the name of its sheet, and tells what of it was refused. */
  writeRecord(plan: SheetPlan, tell: (note: string) => void): Promise<string>;
  /** Whether `workbookBytes` and `openCopy` can be asked. */
  givesFile(): boolean;
  /** The open workbook as an .xlsx file. */
  workbookBytes(): Promise<Uint8Array>;
  /** Opens a file beside the open workbook. */
  openCopy(bytes: Uint8Array): Promise<void>;
  saveFit(choices: readonly FitChoice[]): Promise<void>;
  /** Adds the sheets of a new job; returns the names of those added, and tells what was refused. */
  addJobSheets(start: JobStart, tell: (note: string) => void): Promise<readonly string[]>;
  /** Whether nothing stands in the workbook. */
  isEmpty(): Promise<boolean>;
  /** Writes them and selects the first. */
  writeOpenings(plan: PlannedBox): Promise<void>;
  /** Puts a formula (without "=") into the active cell; returns that cell's address. */
  insertFormula(formula: string): Promise<string>;
}
