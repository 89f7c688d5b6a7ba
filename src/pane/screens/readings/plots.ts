import {
  axisX,
  axisY,
  dot,
  gridX,
  gridY,
  link,
  plot,
  rect,
  ruleX,
  tickX,
} from "@observablehq/plot";
import type { Settings } from "../../../job";
import { flowAxis, ticksFor } from "../../model/flow-axis";
import type { FanReading } from "../../model/readings-view";
import { chart } from "../../parts/chart-colours";
import { verdictLook } from "./verdict-look";

const symbols = {
  domain: Object.keys(verdictLook),
  range: Object.values(verdictLook).map(({ symbol }) => symbol),
};

/** Beside the names of fans, beside numbers, and at the right, in pixels. */
const margin = { wide: 88, narrow: 44, right: 14 };

type Element = SVGSVGElement | HTMLElement;

// The ticks are given with their texts, since a logarithmic axis of its own leaves some unlabelled.

/** One line a fan: the flow as a dot, the spread of its readings, the required rate as a tick. */
export function flowPlot(fans: readonly FanReading[], unit: string, width: number): Element {
  const axis = flowAxis(fans.flatMap((fan) => [fan.flow, fan.required, ...(fan.spread ?? [])]));
  const ticks = ticksFor(axis, width - margin.wide - margin.right);
  const labels = new Map(fans.map((fan) => [fan.row, shorten(fan.label)]));
  return plot({
    width,
    height: fans.length * 18 + 60,
    marginLeft: margin.wide,
    marginRight: margin.right,
    x: { type: "log", domain: [axis.low, axis.high] },
    y: { type: "band", domain: fans.map((fan) => fan.row), label: null, padding: 0.2 },
    symbol: symbols,
    marks: [
      gridX(ticks),
      axisX(ticks, { anchor: "top", label: null, text: String }),
      axisX(ticks, { anchor: "bottom", label: `flow, ${unit}`, text: String }),
      axisY({ tickFormat: (row: number) => labels.get(row) ?? "", tickSize: 0, label: null }),
      link(
        fans.filter((fan) => fan.spread),
        {
          x1: (fan: FanReading) => fan.spread?.[0],
          x2: (fan: FanReading) => fan.spread?.[1],
          y: "row",
          stroke: chart.ink,
          strokeWidth: 1.5,
        },
      ),
      tickX(known(fans, "required"), {
        x: "required",
        y: "row",
        stroke: chart.ink,
        strokeWidth: 2.5,
      }),
      dot(known(fans, "flow"), {
        x: "flow",
        y: "row",
        symbol: "verdict",
        r: 4.5,
        fill: (fan: FanReading) => verdictLook[fan.verdict].colour,
        stroke: chart.paper,
        strokeWidth: 0.75,
      }),
    ],
  });
}

/** Every fan by its box pressure and its flow, with the window of the openings shaded. */
export function pressurePlot(
  fans: readonly FanReading[],
  { low, high }: Pick<Settings, "low" | "high">,
  unit: string,
  width: number,
): Element {
  const drawn = known(fans, "flow").filter((fan) => fan.pressure > 0);
  const axis = flowAxis(drawn.map((fan) => fan.flow));
  const pressures = drawn.map((fan) => fan.pressure);
  const across = flowAxis([low / 2, high * 1.5, ...pressures]);
  return plot({
    width,
    height: 240,
    marginLeft: margin.narrow,
    marginRight: margin.right,
    x: { type: "log", domain: [across.low, across.high] },
    y: { type: "log", domain: [axis.low, axis.high] },
    symbol: symbols,
    marks: [
      rect([{ low, high }], {
        x1: "low",
        x2: "high",
        fill: chart.window,
      }),
      gridY(axis.ticks),
      axisX(ticksFor(across, width - margin.narrow - margin.right), {
        label: "box pressure, Pa",
        text: String,
      }),
      axisY(axis.ticks, { label: `flow, ${unit}`, text: String }),
      ruleX([low, high], { stroke: chart.quiet, strokeDasharray: "4 3" }),
      dot(drawn, {
        x: "pressure",
        y: "flow",
        symbol: "verdict",
        r: 3.5,
        fill: (fan: FanReading) => verdictLook[fan.verdict].colour,
        stroke: chart.paper,
        strokeWidth: 0.5,
      }),
    ],
  });
}

function known(fans: readonly FanReading[], key: "flow" | "required"): readonly FanReading[] {
  return fans.filter((fan) => fan[key] > 0);
}

function shorten(label: string): string {
  return label.length > 14 ? `${label.slice(0, 13)}…` : label;
}
