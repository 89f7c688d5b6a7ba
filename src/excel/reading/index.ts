/** Reading the open workbook for the job. */
export { readWorkbook } from "./read-workbook";
