import type { HostChart, HostSeries } from "../charts/host-chart";
import { readColor } from "../formats";
import type { Arguments } from "../wire/arguments";
import { invalidArgument, notFound } from "../wire/errors";
import { keeping, type Members, serve } from "../wire/served";
import type { ChartOnSheet, Desk } from "./desk";

interface AxisOfChart extends ChartOnSheet {
  readonly axis: HostChart["x"];
}

interface SeriesOfChart extends ChartOnSheet {
  readonly series: HostSeries;
}

type Changed = (self: ChartOnSheet) => void;

const orEmpty = (value: unknown) => value ?? "";

export function chartAxisMembers(changed: Changed): Members<AxisOfChart> {
  const kept = keeping(changed, ({ axis }: AxisOfChart) => axis);
  const end = (value: unknown) => {
    if (typeof value === "number") return value;
    if (value !== "") throw invalidArgument("The end of an axis must be a number.");
    return undefined;
  };
  const title = serve<AxisOfChart>({
    className: "ChartAxisTitle",
    values: { text: kept("title", orEmpty, String) },
  });
  return {
    className: "ChartAxis",
    values: { minimum: kept("min", orEmpty, end), maximum: kept("max", orEmpty, end) },
    links: { title },
  };
}

export function chartSeriesMembers(desk: Desk, changed: Changed): Members<ChartOnSheet> {
  const one = serve(oneSeriesMembers(desk, changed));
  // By this the client finds again what it listed.
  const at = (self: ChartOnSheet, args: Arguments) => {
    const series = self.chart.series[args.integer(0, "The place")];
    if (series === undefined) throw notFound("The chart has not so many series.");
    return one({ ...self, series });
  };
  return {
    className: "ChartSeriesCollection",
    values: { count: { get: ({ chart }) => chart.series.length } },
    items: (self) => self.chart.series.map((series) => one({ ...self, series })),
    item: at,
    methods: {
      getItemAt: at,
      add(self, args) {
        const name = args.optionalText(0, "The name") ?? `Series${self.chart.series.length + 1}`;
        const series: HostSeries = {
          ...{ name, x: "", y: "", color: undefined },
          ...{ marker: "circle", line: "none" },
        };
        self.chart.series.push(series);
        changed(self);
        return one({ ...self, series });
      },
    },
  };
}

const markers: Readonly<Record<string, HostSeries["marker"]>> = {
  None: "none",
  Circle: "circle",
  Square: "square",
  Diamond: "diamond",
  Automatic: "circle",
};

const lines: Readonly<Record<string, HostSeries["line"]>> = {
  None: "none",
  Continuous: "solid",
  Automatic: "solid",
  Dash: "dash",
};

function oneSeriesMembers(desk: Desk, changed: Changed): Members<SeriesOfChart> {
  const kept = keeping(changed, ({ series }: SeriesOfChart) => series);
  const named =
    <T>(known: Readonly<Record<string, T>>, what: string) =>
    (value: unknown): T => {
      const found = known[String(value)];
      if (found === undefined)
        throw invalidArgument(`The ${what} "${String(value)}" is not available.`);
      return found;
    };
  const nameIn =
    <T>(known: Readonly<Record<string, T>>) =>
    (value: T) =>
      Object.keys(known).find((key) => known[key] === value);
  /** Lines and markers of a series share one colour here. */
  const color = kept("color", (digits) => (digits === undefined ? "" : `#${digits}`), readColor);
  const line = serve<SeriesOfChart>({
    className: "ChartLineFormat",
    values: { color, lineStyle: kept("line", nameIn(lines), named(lines, "line style")) },
    methods: {
      clear(self) {
        self.series.line = "none";
        changed(self);
      },
    },
  });
  const format = serve<SeriesOfChart>({ className: "ChartSeriesFormat", links: { line } });
  const cells = (key: "x" | "y") => (self: SeriesOfChart, args: Arguments) => {
    const range = args.range(0);
    if (range === undefined) throw invalidArgument("The values of a series must be a range.");
    changed(self);
    self.series[key] = range.address;
  };
  return {
    className: "ChartSeries",
    values: {
      name: kept("name", orEmpty, String),
      markerStyle: kept("marker", nameIn(markers), named(markers, "marker")),
      markerBackgroundColor: color,
      markerForegroundColor: color,
    },
    links: { format },
    methods: {
      setXAxisValues: cells("x"),
      setValues: cells("y"),
      delete(self) {
        self.chart.series.splice(self.chart.series.indexOf(self.series), 1);
        self.chart.isChanged = true;
        desk.book.touched({ kind: "layout", sheet: self.tab.name });
      },
    },
  };
}
