import type { Job } from "../read";
import type { Report } from "../report";

export interface CheckContext {
  /** Today as a serial number of the workbook, to tell dates that lie ahead. */
  readonly today: number;
}

/** One check: reads the job, adds what it finds. */
export type Check = (job: Job, report: Report, context: CheckContext) => void;
