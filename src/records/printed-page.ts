import { columnLetters } from "../cells";
import { codesText, type Job, paperOf, provenanceOf } from "../job";
import type { PlanPage } from "./plan";
import type { PlanRows } from "./plan-rows";

interface Printed extends Pick<PlanPage, "landscape" | "onePage" | "titleRows" | "breaksBefore"> {
  /** What is printed below on the left. */
  readonly left: string;
  /** Columns and rows of the sheet that are printed. */
  readonly width: number;
  readonly height: number;
}

/** Points that a page has between its margins, upright and across, of the lower of the two papers. */
const [upright, across] = [695, 498];
/** A record a little longer than a page is shrunk to one, so that no page holds a few last lines alone. */
const mostShrunk = 1.35;

export function fitsOnePage({ height }: PlanRows, landscape: boolean): boolean {
  return height <= mostShrunk * (landscape ? across : upright);
}

/** How a sheet of a job is printed: its pages counted, and the job's codes on each. */
export function printedPage(job: Job, { left, width, height, ...page }: Printed): PlanPage {
  return {
    ...page,
    paper: paperOf(job.settings.system),
    footer: {
      left,
      center: "Page {page} of {pages}",
      right: `Codes ${codesText(provenanceOf(job).codes)}`,
    },
    area: `A1:${columnLetters(width - 1)}${height}`,
  };
}
