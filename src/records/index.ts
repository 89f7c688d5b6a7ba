/**
 * Records to print and sign: of a job, of a dwelling, of the proof of a box. A record is a sheet as
 * plain data, which a workbook file takes here and Excel takes through the room that speaks to it.
 */
export { addPlan, pageSpecOf } from "./add-plan";
export { dwellingRecord } from "./dwelling-record";

export { firstOpening } from "./field/first-opening";

export { usefulSets } from "./field/opening-sets";
export {
  allRecords,
  fieldPapers,
  hasJobRecord,
  proofRecords,
  recordedDwellings,
} from "./job-plans";
export { jobRecord } from "./job-record";
export { placeOf } from "./names";
export type {
  Look,
  PlanChart,
  PlanPage,
  PlanSeries,
  SheetPlan,
} from "./plan";
export { proofRecord } from "./proof-record";
