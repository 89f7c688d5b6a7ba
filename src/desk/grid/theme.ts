import { themeQuartz } from "ag-grid-community";

export const rowHeight = 26;

/** Left and right of the text of a cell, px. */
export const cellPadding = 6;

/** The grid in the colours of the page, whichever theme is on. */
export const gridTheme = themeQuartz.withParams({
  backgroundColor: "var(--desk-ground)",
  foregroundColor: "var(--desk-text)",
  accentColor: "var(--desk-accent)",
  borderColor: "var(--desk-line)",
  chromeBackgroundColor: "var(--desk-chrome)",
  headerBackgroundColor: "var(--desk-chrome)",
  headerTextColor: "var(--desk-quiet)",
  headerFontWeight: 500,
  headerHeight: 26,
  rowHeight,
  fontFamily: "inherit",
  fontSize: 13,
  cellHorizontalPadding: cellPadding,
  columnBorder: "solid 1px var(--desk-line)",
  rowBorder: "solid 1px var(--desk-line)",
  headerColumnBorder: "solid 1px var(--desk-line)",
  pinnedColumnBorder: "solid 1px var(--desk-line-strong)",
  pinnedRowBorder: "solid 1px var(--desk-line-strong)",
  rowHoverColor: "transparent",
  wrapperBorder: false,
  wrapperBorderRadius: 0,
  cellEditingBorder: "none",
  cellEditingShadow: "none",
});
