import { makeStyles, tokens } from "@fluentui/react-components";

/** Layout and text shared by the screens. Everything holds at a width of 320 px. */
export const useShared = makeStyles({
  screen: {
    display: "flex",
    flexDirection: "column",
    gap: tokens.spacingVerticalM,
    padding: `${tokens.spacingVerticalM} ${tokens.spacingHorizontalM}`,
  },
  stack: { display: "flex", flexDirection: "column", gap: tokens.spacingVerticalS },
  figure: { display: "flex", flexDirection: "column", gap: tokens.spacingVerticalS, margin: 0 },
  tight: { display: "flex", flexDirection: "column", gap: tokens.spacingVerticalXXS },
  line: {
    display: "flex",
    flexWrap: "wrap",
    alignItems: "center",
    gap: tokens.spacingHorizontalS,
  },
  spread: {
    display: "flex",
    flexWrap: "wrap",
    alignItems: "center",
    justifyContent: "space-between",
    gap: tokens.spacingHorizontalS,
  },
  heading: {
    margin: 0,
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase400,
    fontWeight: tokens.fontWeightSemibold,
  },
  subheading: {
    margin: 0,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
  },
  text: { margin: 0 },
  muted: { margin: 0, color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
  plainList: { listStyleType: "none", margin: 0, padding: 0 },
  unseen: {
    position: "absolute",
    width: "1px",
    height: "1px",
    margin: "-1px",
    overflow: "hidden",
    clipPath: "inset(50%)",
    whiteSpace: "nowrap",
  },
  table: {
    width: "100%",
    borderCollapse: "collapse",
    fontSize: tokens.fontSizeBase200,
    "& th, & td": {
      textAlign: "start",
      // Words stay whole: breaking anywhere would let columns shrink to single letters.
      overflowWrap: "break-word",
      verticalAlign: "middle",
      padding: `${tokens.spacingVerticalXS} ${tokens.spacingHorizontalXS}`,
      borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    },
    "& th": { fontWeight: tokens.fontWeightSemibold },
    "& .number": { textAlign: "end", fontVariantNumeric: "tabular-nums" },
  },
  scroll: { overflowX: "auto" },
  panel: {
    display: "flex",
    flexDirection: "column",
    gap: tokens.spacingVerticalS,
    padding: tokens.spacingHorizontalM,
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground1,
  },
});
