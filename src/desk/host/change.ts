import type { Place } from "../../cells";
import type { Change as ValueChange } from "../../sheet";

/** Who changed something: the person at the grid, the pane, or undoing and redoing. */
export type Origin = "user" | "pane" | "undo" | "redo";

/** What changed in the open workbook. */
export type Change =
  | {
      readonly kind: "cells";
      readonly origin: Origin;
      /** The cells that were written. */
      readonly edited: readonly Place[];
      /** Every cell whose value is another now, recalculated ones included. */
      readonly values: readonly ValueChange[];
    }
  | { readonly kind: "formats"; readonly cells: Place }
  /** Conditional formats: every cell of the sheet may look different. */
  | { readonly kind: "marks"; readonly sheet: string }
  /** Column widths, frozen panes, validation rules, protection. */
  | { readonly kind: "layout"; readonly sheet: string }
  /** Sheets added, deleted, renamed, shown or hidden. */
  | { readonly kind: "sheets" }
  | { readonly kind: "names" }
  /** Another workbook was opened; nothing known before holds. */
  | { readonly kind: "opened" };

/** What the page wants to hear about. */
export class Listeners {
  readonly change = new Set<(change: Change) => void>();
  readonly select = new Set<(cells: Place) => void>();

  changed(change: Change): void {
    for (const listener of this.change) listener(change);
  }

  selected(cells: Place): void {
    for (const listener of this.select) listener(cells);
  }
}
