/**
 * The task pane: checks the open workbook, shows the fit of its headings, its boxes, readings and
 * rates, and starts a new job. Pure view models stand in `model`, what goes on with the workbook
 * in `session`, the screens in `screens`.
 */
export { mountPane } from "./mount";
export type { PageMark } from "./session/page-marks";
