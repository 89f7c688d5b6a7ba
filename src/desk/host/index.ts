/**
 * The workbook host: it answers the Office.js client library in place of Excel, for the pane, and
 * gives the page cells, marks, selection and undo. Sheets are calculated by the sheet model and
 * kept in the workbook, so that saving loses nothing that Excel or another program put there.
 */

export { type ClientLibrary, connect, type HostBridge } from "./bridge";
export type { Change } from "./change";
export { type HostOptions, type SheetInfo, WorkbookHost } from "./host";
export type { Mark } from "./marks/marks";
export type { TypedCell } from "./page-side";
