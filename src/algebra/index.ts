/**
 * The four readers of a formula text: `columns` (values over rows), `slopes` (partial
 * derivatives), `plain` (a native spreadsheet formula) and `typeset` (for the reviewer).
 */
export { type Column, columns } from "./columns";
export { oneValue } from "./one-value";
export { parseText } from "./parse";
export { plain } from "./plain";
export { slopes } from "./slopes";
export { typeset } from "./typeset";
