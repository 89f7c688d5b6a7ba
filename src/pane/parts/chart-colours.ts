import { makeStyles, tokens } from "@fluentui/react-components";

/** Colours of the drawings, as CSS values that work in attributes too. */
export const chart = {
  ink: "var(--chart-ink)",
  quiet: "var(--chart-quiet)",
  faint: "var(--chart-faint)",
  paper: "var(--chart-paper)",
  hole: "var(--chart-hole)",
  bar: "var(--chart-bar)",
  window: "var(--chart-window)",
  good: "var(--chart-good)",
  bad: "var(--chart-bad)",
  doubt: "var(--chart-doubt)",
  gap: "var(--chart-gap)",
} as const;

/**
 * The class that gives the drawings inside it their colours. Where the system forces its own
 * colours, it leaves drawings alone, so they take the system's colours here.
 */
export const useChartColours = makeStyles({
  chart: {
    "--chart-ink": tokens.colorNeutralForeground1,
    "--chart-quiet": tokens.colorNeutralForeground2,
    "--chart-faint": tokens.colorNeutralStroke2,
    "--chart-paper": tokens.colorNeutralBackground1,
    "--chart-hole": tokens.colorNeutralBackground4,
    "--chart-bar": tokens.colorBrandBackground,
    "--chart-window": tokens.colorBrandBackground2,
    "--chart-good": tokens.colorStatusSuccessForeground1,
    "--chart-bad": tokens.colorStatusDangerForeground1,
    "--chart-doubt": tokens.colorStatusWarningForeground3,
    "--chart-gap": tokens.colorStatusDangerBackground2,
    "@media (forced-colors: active)": {
      "--chart-ink": "CanvasText",
      "--chart-quiet": "CanvasText",
      "--chart-faint": "GrayText",
      "--chart-paper": "Canvas",
      "--chart-hole": "Canvas",
      "--chart-bar": "Highlight",
      "--chart-window": "Canvas",
      "--chart-good": "CanvasText",
      "--chart-bad": "CanvasText",
      "--chart-doubt": "CanvasText",
      "--chart-gap": "Canvas",
    },
  },
});
