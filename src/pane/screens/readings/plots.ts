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

/** Beside numbers and at the right, in pixels. */
const margin = { narrow: 44, right: 14 };
/** Names of fans take this share of the width at most; a letter of them takes so many pixels. */
const [mostForNames, letterWidth] = [0.42, 5.6];

type Element = SVGSVGElement | HTMLElement;

// The ticks are given with their texts, since a logarithmic axis of its own leaves some unlabelled.

/** One line a fan: the flow as a dot, the spread of its readings, the required rate as a tick. */
export function flowPlot(fans: readonly FanReading[], unit: string, width: number): Element {
  const axis = flowAxis(fans.flatMap((fan) => [fan.flow, fan.required, ...(fan.spread ?? [])]));
  const longest = Math.max(...fans.map(({ label }) => label.length));
  const wide = Math.ceil(Math.min(mostForNames * width, longest * letterWidth + 8));
  const ticks = ticksFor(axis, width - wide - margin.right);
  const labels = fans.map(({ label }) => shorten(label, Math.floor((wide - 8) / letterWidth)));
  // Several fans may stand in one row of a sheet, and in the same rows of others.
  const y = (fan: FanReading) => fans.indexOf(fan);
  return plot({
    width,
    height: fans.length * 18 + 60,
    marginLeft: wide,
    marginRight: margin.right,
    x: { type: "log", domain: [axis.low, axis.high] },
    y: { type: "band", domain: [...fans.keys()], label: null, padding: 0.2 },
    symbol: symbols,
    marks: [
      gridX(ticks),
      axisX(ticks, { anchor: "top", label: null, text: String }),
      axisX(ticks, { anchor: "bottom", label: `flow, ${unit}`, text: String }),
      axisY({ tickFormat: (at: number) => labels[at] ?? "", tickSize: 0, label: null }),
      link(
        fans.filter((fan) => fan.spread),
        {
          x1: (fan: FanReading) => fan.spread?.[0],
          x2: (fan: FanReading) => fan.spread?.[1],
          y,
          stroke: chart.ink,
          strokeWidth: 1.5,
        },
      ),
      tickX(known(fans, "required"), {
        x: "required",
        y,
        stroke: chart.ink,
        strokeWidth: 2.5,
      }),
      dot(known(fans, "flow"), {
        x: "flow",
        y,
        symbol: "verdict",
        r: 4.5,
        ...inkOf(0.75),
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
        ...inkOf(0.5),
      }),
    ],
  });
}

/** A mark in the colour of its verdict with an edge of paper; a mark of mere lines has no inside to fill. */
function inkOf(edge: number) {
  const colour = ({ verdict }: FanReading) => verdictLook[verdict].colour;
  const isLines = ({ verdict }: FanReading) =>
    ["plus", "times"].includes(verdictLook[verdict].symbol);
  return {
    fill: colour,
    stroke: (fan: FanReading) => (isLines(fan) ? colour(fan) : chart.paper),
    strokeWidth: (fan: FanReading) => (isLines(fan) ? 1.5 : edge),
  };
}

function known(fans: readonly FanReading[], key: "flow" | "required"): readonly FanReading[] {
  return fans.filter((fan) => fan[key] > 0);
}

/** A name in so many letters: both its beginning and its end tell it from others. */
function shorten(label: string, most: number): string {
  if (label.length <= most) return label;
  const end = Math.floor((most - 1) / 2);
  return `${label.slice(0, most - 1 - end)}…${label.slice(label.length - end)}`;
}
