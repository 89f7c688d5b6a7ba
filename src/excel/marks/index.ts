/** Marks on the cells of findings: conditional formats that come and go as a set. */
export { clearMarks, hasMarks, markFindings } from "./marks";
