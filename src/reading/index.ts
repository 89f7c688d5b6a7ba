/** Reading any job workbook: which cells hold the readings, what each is, and why it was taken so. */
export { fitEntries } from "./fit-entries";
export { habitsInWords } from "./habits/in-words";
export type * from "./host";
export { readWorkbook } from "./read-workbook";
export type * from "./types";
