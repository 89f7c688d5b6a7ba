/** The headless command: checks job workbooks from the command line. */
export { toJobFile } from "./job-file";
export { run } from "./run";
