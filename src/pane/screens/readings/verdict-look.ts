import type { FanVerdict } from "../../model/readings-view";
import { chart } from "../../parts/chart-colours";

/** A shape and a colour for each verdict; the shape alone tells them apart. */
export const verdictLook = {
  meets: { symbol: "circle", sign: "●", colour: chart.good },
  short: { symbol: "square", sign: "■", colour: chart.bad },
  "too close to call": { symbol: "star", sign: "★", colour: chart.doubt },
  "out of range": { symbol: "diamond", sign: "◆", colour: chart.doubt },
  "rate unknown": { symbol: "triangle", sign: "▲", colour: chart.quiet },
  "none required": { symbol: "triangle", sign: "△", colour: chart.quiet },
  "read again": { symbol: "circle", sign: "○", colour: chart.quiet },
  "part of a mean": { symbol: "plus", sign: "+", colour: chart.quiet },
  "not measured": { symbol: "times", sign: "×", colour: chart.quiet },
} as const satisfies Record<FanVerdict, unknown>;
