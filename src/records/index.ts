/**
 * Records to print and sign: of a job, of a dwelling, of the proof of a box. A record is a sheet as
 * plain data, which a workbook file takes here and Excel takes through the room that speaks to it.
 */
export { addPlan, codesOf, margins } from "./add-plan";
export { dwellingRecord } from "./dwelling-record";
export { boxCard } from "./field/box-card";
export { firstOpening } from "./field/first-opening";
export { readingForm } from "./field/form";
export { usefulSets } from "./field/opening-sets";
export { allRecords, fieldPapers, proofRecords, recordedDwellings } from "./job-plans";
export { jobRecord } from "./job-record";
export { type KnownSheet, placeOf } from "./names";
export type {
  Look,
  PlanCell,
  PlanChart,
  PlanMargin,
  PlanPage,
  PlanRow,
  PlanSeries,
  SheetPlan,
} from "./plan";
export { proofRecord } from "./proof-record";
