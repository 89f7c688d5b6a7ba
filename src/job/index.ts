/** The job as data: the rules for a reading, the sheets of a job workbook and the checks on them. */
export * from "./rules";
