/**
 * Copies of a workbook that need no add-in. The plain copy has native formulas in place of our
 * worksheet functions, with the numbers they draw on laid open on sheets of their own; the values
 * copy has no formulas at all.
 */

export { leftInWords } from "./left-in-words";
export { type PlainCopy, plainCopy } from "./plain-copy";
export { valuesCopy } from "./values-copy";
