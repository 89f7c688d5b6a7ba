/** Marks on the cells of findings: conditional formats that come and go as a set. */
export { looks as markLooks } from "./looks";
export { clearMarks, hasMarks, markFindings } from "./marks";
