/** The screens of the pane, in the order of their tabs. */
export const screens = [
  { key: "check", title: "Check" },
  { key: "fit", title: "Fit" },
  { key: "boxes", title: "Openings" },
  { key: "readings", title: "Readings" },
  { key: "rates", title: "Rates" },
  { key: "trace", title: "Trace" },
  { key: "record", title: "Record" },
  { key: "start", title: "Start" },
] as const;

export type ScreenKey = (typeof screens)[number]["key"];
