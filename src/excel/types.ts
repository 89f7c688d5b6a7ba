import type { CellValue } from "../cells";
import type { Finding, JobFile, OpeningPlan, Settings } from "../job";

/** The unit system of a job: "ip" or "si". */
export type System = Settings["system"];

/** How far a read has come, in rows of all sheets together. */
export interface ReadProgress {
  readonly done: number;
  readonly total: number;
}

/** The open workbook as the job reads it. */
export interface WorkbookReading {
  readonly file: JobFile;
  /** What a reader should know: hidden and filtered rows, merged cells, protected sheets. */
  readonly notes: readonly string[];
  /** Round trips to Excel that it took. */
  readonly trips: number;
}

/** A cell, counted from 0, with its address as Excel writes it. */
export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly col: number;
  readonly address: string;
}

/** What one cell holds: the formula without "=" (null where there is none), its value, and the text shown. */
export interface CellContent {
  readonly formula: string | null;
  readonly value: CellValue;
  readonly text: string;
}

/** What stood in the cells before a mend. */
export interface Undo {
  readonly label: string;
  readonly sheet: string;
  readonly cells: readonly UndoCell[];
}

export interface UndoCell {
  readonly cell: string;
  /** As Excel takes it back: a formula with "=", a value, or "" for a blank. */
  readonly formula: string | number | boolean;
  /** What the mend left in the cell, in the same form. */
  readonly written?: string | number | boolean;
  /** Given where the mend had to change it. */
  readonly numberFormat?: string;
}

/** A finding that someone takes as it is, with why and who. */
export interface NewAcceptance {
  readonly finding: Pick<Finding, "sheet" | "cell" | "kind" | "about">;
  /** Of the row as it was when it was looked at. */
  readonly fingerprint: string;
  readonly reason: string;
  readonly initials: string;
  /** Serial number of the day in this workbook. */
  readonly date: number;
}

/** A planned box as it goes to the sheet of the boxes. */
export interface PlannedBox {
  readonly box: string;
  readonly openings: readonly OpeningPlan[];
  /** The flow constant it was planned with. */
  readonly constant?: number;
  /** Area of the side they are cut into, where it was given. */
  readonly face?: number | undefined;
}
