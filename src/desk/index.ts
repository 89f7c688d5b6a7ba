/**
 * The desk: a page with a spreadsheet grid for people without Excel. A workbook host recalculates
 * the sheets and answers the task pane, which runs beside the grid as it does in Excel.
 */
import "./desk.css";

export { startDesk } from "./start";
