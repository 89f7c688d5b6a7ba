import { rectangleOf } from "../cells";
import type { Grid } from "../job";
import type { Sheet } from "../workbook";

/** What is known of a sheet's cells besides what they hold: what is hidden, merged, how numbers are shown. */
export function looksOf(
  sheet: Sheet,
): Required<Pick<Grid, "hiddenRow" | "hiddenCol" | "numberFormat" | "isUnseen" | "merges">> &
  Pick<Grid, "hiddenSheet"> {
  return {
    hiddenSheet: sheet.state === "visible" ? undefined : sheet.state,
    merges: sheet.merges.flatMap((text) => rectangleOf(text) ?? []),
    hiddenRow: (row) => sheet.isHiddenRow(row),
    hiddenCol: (col) => sheet.isHiddenCol(col),
    numberFormat: (row, col) => sheet.numberFormat(row, col),
    isUnseen: (row, col) => sheet.isUnseen(row, col),
  };
}
