import type { Element } from "./xml";

/** A manifest with what it is checked against. */
export interface Checked {
  readonly root: Element;
  /** Files of the built site, relative to its address, with forward slashes. */
  readonly builtFiles: ReadonlySet<string>;
  /** Names that the site's code has given to `Office.actions.associate`. */
  readonly actions: readonly string[];
  /** The address that every URL begins with, ending in a slash. */
  readonly address: string;
}

/** Looks for one kind of fault; each finding names the element and the mend. */
export type Check = (manifest: Checked) => string[];
