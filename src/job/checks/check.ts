import type { Place } from "../../cells";
import type { SheetKind } from "../columns";
import type { Job } from "../read";
import type { Report } from "../report";

export interface CheckContext {
  /** Today as a serial number of the workbook, to tell dates that lie ahead. */
  readonly today: number;
  /** The cells that an edit bears on; undefined where all are to be looked at. */
  readonly cells?: readonly Place[] | undefined;
  /**
   * What is worked out for each row of a table by these words; after an edit only for the rows that
   * it bears on, of which the job that is handed over consists.
   */
  readonly byRow: <T>(
    words: string,
    kind: SheetKind,
    make: (job: Job) => readonly T[],
  ) => readonly T[];
}

/** One check: reads the job, adds what it finds. */
export type Check = (job: Job, report: Report, context: CheckContext) => void;
