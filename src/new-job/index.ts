/** New job workbooks as files. */
export { estimateRows } from "./estimate-rows";
export type { JobRows, Row } from "./job-rows";
export { sizeOf } from "./job-rows";
export { jobWorkbook } from "./job-workbook";
