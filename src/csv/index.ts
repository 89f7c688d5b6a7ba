/** Tables as text files: read as a workbook of one sheet, and written. */
export { CsvError, workbookOfCsv } from "./read-csv";
export { csvOf } from "./write-csv";
