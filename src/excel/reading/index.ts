/** Reading the open workbook for the job. */
export { readAgain, readWorkbook } from "./read-workbook";
