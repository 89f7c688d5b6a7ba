import { columnLetters, sheetNameOf } from "../cells";
import { codesText, type Job, paperOf, provenanceOf } from "../job";
import type { PlanPage, SheetPlan } from "./plan";
import type { PlanRows } from "./plan-rows";

interface Printed
  extends Pick<SheetPlan, "name" | "mark">,
    Pick<PlanPage, "landscape" | "onePage" | "titleRows" | "breaksBefore"> {
  /** What is printed below on the left. */
  readonly left: string;
}

/** Points that a page has between its margins, upright and across, of the lower of the two papers. */
const [upright, across] = [695, 498];
/** A record a little longer than a page is shrunk to one, so that no page holds a few last lines alone. */
const mostShrunk = 1.35;

export function fitsOnePage({ height }: PlanRows, landscape: boolean): boolean {
  return height <= mostShrunk * (landscape ? across : upright);
}

/** The rows as a sheet of a job, all of them printed: its pages counted, and the job's codes on each. */
export function printedSheet(
  job: Job,
  { columns, rows, merges }: PlanRows,
  { name, mark, left, ...page }: Printed,
): SheetPlan {
  const footer = {
    left,
    center: "Page {page} of {pages}",
    right: `Codes ${codesText(provenanceOf(job).codes)}`,
  };
  const area = `A1:${columnLetters(columns.length - 1)}${rows.length}`;
  return {
    ...{ name: sheetNameOf(name, "Record"), mark, columns, rows, merges },
    page: { ...page, paper: paperOf(job.settings.system), footer, area },
  };
}
