/** Reading any job workbook: which cells hold the readings, what each is, and why it was taken so. */
export type * from "./host";
export type * from "./types";
export { roles } from "./types";
