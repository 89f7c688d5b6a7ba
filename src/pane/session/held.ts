import type { Grid } from "../../job";
import type { PaneHost, Reading } from "./host";
import type { SessionState } from "./state";

/** What the session lends to a piece of work that stands in a file of its own. */
export interface Held {
  readonly host: PaneHost;
  /** The workbook as it was read last; undefined before the first check. */
  readonly reading: Reading | undefined;
  readonly set: (change: Partial<SessionState>) => void;
  /** Says that a sheet is written by us and read by nobody, so that edits there mean nothing. */
  readonly own: (sheet: string) => void;
}

/** A sheet as it was read last. */
export function sheetOf(reading: Reading | undefined, sheet: string): Grid | undefined {
  return reading?.file.sheets.find(({ name }) => name === sheet);
}
