/**
 * The four readers of a formula text: `columns` (values over rows), `slopes` (partial
 * derivatives), `plain` (a native spreadsheet formula) and `typeset` (for the reviewer). The trees
 * they read stand ready in `made`; `make` makes them.
 */
export { type Column, columns } from "./columns";
export { makeTreesWith } from "./maker";
export { oneValue } from "./one-value";
export { parseText } from "./parse";
export { plain } from "./plain";
export { requireTrees } from "./require-trees";
export { slopes } from "./slopes";
export { typeset } from "./typeset";
