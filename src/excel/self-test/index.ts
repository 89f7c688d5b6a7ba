/** "Test in this Excel": what can only be known in the host, tried line by line on a sheet of its own. */
export { type Prompt, prompts } from "./prompts";
export { type Answer, reportRows, reportText, writeReport } from "./report";
export { lines, type Result, selfTest } from "./self-test";
export { ownSheets } from "./sheets";
