import type { Rectangle } from "../../cells";
import type { Validation as FileValidation } from "../../workbook";

/** Entries a cell may take: a list "a,b,c", or a formula with "=" that yields them. */
export interface ListRule {
  readonly list: { readonly inCellDropDown: boolean; readonly source: string };
}

/** A validation rule of some cells. */
export interface Validation {
  ranges: readonly Rectangle[];
  /** Null for a rule of another kind, which is only kept. */
  readonly rule: ListRule | null;
  /** The rule of the file that it stands for. */
  readonly inFile?: FileValidation;
}
