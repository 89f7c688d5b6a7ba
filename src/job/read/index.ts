/** A job workbook read into tables, in the job's own units. */
export { BoxList } from "./box-list";
export { FanRows, type Maybe } from "./fan-rows";
export { type Job, readJob } from "./job";
export { readSettings, type Settings } from "./settings";
export { type Gap, Table } from "./table";
