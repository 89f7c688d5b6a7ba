/** The sheet the lines run on, and the one that keeps the report. */
export const testSheet = "Fanrow self-test";
export const reportSheet = "Fanrow test report";
export const ownSheets: readonly string[] = [testSheet, reportSheet];
