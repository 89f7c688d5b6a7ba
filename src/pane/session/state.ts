import type { ReadProgress } from "../../excel";
import type { JobCheck } from "../../job";
import type { ScreenKey } from "../model/screens";
import type { Place } from "./host";
import { noRecords, type RecordState } from "./record-state";

/** A mend that was applied and can be taken back. */
export interface AppliedMend {
  readonly key: string;
  /** "Restore the formula, Lot 01, B2 (Fans!M3)" */
  readonly words: string;
}

/** What keeps Excel from answering, where it has not for a while. */
export const waitsForExcel =
  "Waiting for Excel: where a cell is being typed in, end that with Enter or Esc";

/** What the screens show. */
export interface SessionState {
  /** The screen that is shown. */
  readonly screen: ScreenKey;
  /** "" while nothing goes on; else what does, for the eye. */
  readonly busy:
    | ""
    | "Testing"
    | "Reading the workbook"
    | typeof waitsForExcel
    | "Checking"
    | "Writing"
    | "Reading the file"
    | "Comparing"
    | "Making the copy"
    | "Making the estimate";
  readonly progress: ReadProgress | undefined;
  readonly check: JobCheck | undefined;
  readonly notes: readonly string[];
  /** The last thing done, for the eye and the live region. */
  readonly message: string;
  /** Why the last thing could not be done; "" where it could. */
  readonly problem: string;
  readonly marks: boolean;
  /** Latest last. */
  readonly applied: readonly AppliedMend[];
  readonly selection: Place | undefined;
  /** Of whoever accepted a finding last. */
  readonly initials: string;
  readonly record: RecordState;
}

export const fresh: SessionState = {
  screen: "check",
  busy: "",
  progress: undefined,
  check: undefined,
  notes: [],
  message: "",
  problem: "",
  marks: false,
  applied: [],
  selection: undefined,
  initials: "",
  record: noRecords,
};
