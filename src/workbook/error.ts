import { InputError } from "../cells";
import type { WorkbookErrorReason } from "./types";

/**
 * A file that cannot be opened or saved. The message is one line that says what is wrong and how to
 * mend it; it holds no file name, the caller knows that better.
 */
export class WorkbookError extends InputError {
  override readonly name = "WorkbookError";

  constructor(
    readonly code: WorkbookErrorReason,
    message: string,
  ) {
    super(message);
  }
}

/** Damage inside one part, with the line where it was met. */
export function damaged(part: string, what: string, line?: number): WorkbookError {
  const where = line === undefined ? part : `${part}, line ${line}`;
  return new WorkbookError(
    "damaged",
    `The workbook is damaged (${where}): ${what}. Open it in a spreadsheet program, let it repair the file and save a copy.`,
  );
}

export function noSheets(message: string): WorkbookError {
  return new WorkbookError("no-sheets", message);
}

/** A text of a file in quotes, cut where it is long. */
export function quoted(text: string): string {
  return text.length > 40 ? `"${text.slice(0, 40)}…"` : `"${text}"`;
}
