/**
 * A second look at a workbook's formulas, on every sheet, known to the job or not: what most rows
 * of a column do, and the rows that do otherwise. It knows nothing of flows; what a formula should
 * say is told by the formulas beside it.
 */
export { auditFormulas } from "./audit-formulas";
