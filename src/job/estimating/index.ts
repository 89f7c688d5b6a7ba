/** An estimate: what the planned fans of a job need, cost and take. */
export { type Estimate, estimateOf, type Item, type PlannedRate, type Total } from "./estimate";
export { type PlannedRows, rowsFromLots } from "./from-lots";
export { type EstimateSection, estimateNotes, estimateSections, sectionText } from "./sections";
export { totalsRows } from "./totals-rows";
