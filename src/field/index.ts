/** What goes to the fans and comes back: a small workbook for a phone, and its readings. */
export { type BringIn, type Brought, bringIn } from "./bring-in";
export { fieldCopy } from "./field-copy";
