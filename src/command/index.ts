/** The headless command: checks job workbooks from the command line. */
export { run } from "./run";
