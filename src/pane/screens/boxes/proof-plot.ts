import { axisX, axisY, dot, gridX, gridY, line, plot, text } from "@observablehq/plot";
import { axisEnd, type PairView, type ProofView } from "../../model/proof-view";
import { chart } from "../../parts/chart-colours";

/** Signs of the openings, in their order; the shape alone tells them apart. */
const openingSigns = [
  { symbol: "circle", sign: "●" },
  { symbol: "square", sign: "■" },
  { symbol: "triangle", sign: "▲" },
  { symbol: "diamond", sign: "◆" },
  { symbol: "star", sign: "★" },
  { symbol: "times", sign: "×" },
  { symbol: "cross", sign: "✚" },
] as const;

const margin = { left: 44, right: 40, top: 24, bottom: 36 };

/** The box's flow against that of the reference, with equality and the accuracy asked for. */
export function proofPlot(
  { pairs, coverage, requirement }: ProofView,
  unit: string,
  width: number,
): SVGSVGElement | HTMLElement {
  const most = axisEnd(pairs);
  const openings = coverage.map(({ opening }) => opening);
  const side = Math.min(width, 360);
  const limits = [requirement / 100, -requirement / 100].map((off) => ({
    off,
    // The upper line leaves the picture at the top, before the right end.
    end: off > 0 ? most / (1 + off) : most,
  }));
  return plot({
    width: side,
    // Both axes to one scale, so that equality runs at 45 degrees.
    height: side - margin.left - margin.right + margin.top + margin.bottom,
    marginTop: margin.top,
    marginLeft: margin.left,
    marginRight: margin.right,
    marginBottom: margin.bottom,
    x: { domain: [0, most] },
    y: { domain: [0, most] },
    symbol: {
      domain: openings,
      range: openings.map((_, i) => (openingSigns[i] ?? openingSigns[0]).symbol),
    },
    marks: [
      gridX({ ticks: 5 }),
      gridY({ ticks: 5 }),
      axisX({ ticks: 5, label: `reference, ${unit}`, labelArrow: "none", labelAnchor: "center" }),
      axisY({ ticks: 5, label: `box, ${unit}`, labelArrow: "none" }),
      line([0, most], { x: (flow: number) => flow, y: (flow: number) => flow, stroke: chart.ink }),
      ...limits.map(({ off, end }) =>
        line([0, end], {
          x: (flow: number) => flow,
          y: (flow: number) => flow * (1 + off),
          stroke: chart.bad,
          strokeDasharray: "5 3",
        }),
      ),
      ...limits.map((limit) =>
        text([limit], {
          x: "end",
          y: ({ off, end }: { off: number; end: number }) => end * (1 + off),
          text: () => `${limit.off > 0 ? "+" : "−"}${requirement} %`,
          dx: limit.off > 0 ? -12 : 3,
          dy: limit.off > 0 ? -8 : 0,
          textAnchor: limit.off > 0 ? "middle" : "start",
          fill: chart.bad,
        }),
      ),
      dot(pairs, {
        x: "reference",
        y: "box",
        symbol: "opening",
        r: 4,
        fill: chart.bar,
        stroke: chart.paper,
        strokeWidth: 0.75,
      }),
    ],
  });
}

/** "● A, ■ B" */
export function openingLegend(pairs: readonly PairView[]): string {
  return [...new Set(pairs.map(({ opening }) => opening))]
    .map((opening, i) => `${(openingSigns[i] ?? openingSigns[0]).sign} ${opening}`)
    .join(", ");
}
