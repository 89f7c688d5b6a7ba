import type { HostChart, HostSeries } from "../charts/host-chart";
import { readColor } from "../formats";
import type { Arguments } from "../wire/arguments";
import { invalidArgument, notFound } from "../wire/errors";
import { type Members, serve } from "../wire/served";
import type { ChartOnSheet, Desk } from "./desk";

interface AxisOfChart extends ChartOnSheet {
  readonly axis: HostChart["x"];
}

interface SeriesOfChart extends ChartOnSheet {
  readonly series: HostSeries;
}

type Changed = (self: ChartOnSheet) => void;

export function chartAxisMembers(changed: Changed): Members<AxisOfChart> {
  const bound = (key: "min" | "max") => ({
    get: ({ axis }: AxisOfChart) => axis[key] ?? "",
    set(self: AxisOfChart, value: unknown) {
      if (typeof value !== "number" && value !== "")
        throw invalidArgument("The end of an axis must be a number.");
      self.axis[key] = value === "" ? undefined : value;
      changed(self);
    },
  });
  const title = serve<AxisOfChart>({
    className: "ChartAxisTitle",
    values: {
      text: {
        get: ({ axis }) => axis.title ?? "",
        set(self, value) {
          self.axis.title = String(value);
          changed(self);
        },
      },
    },
  });
  return {
    className: "ChartAxis",
    values: { minimum: bound("min"), maximum: bound("max") },
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
          name,
          x: "",
          y: "",
          marker: "circle",
          line: "none",
          color: undefined,
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
  const named = <T>(known: Readonly<Record<string, T>>, value: unknown, what: string): T => {
    const found = known[String(value)];
    if (found === undefined)
      throw invalidArgument(`The ${what} "${String(value)}" is not available.`);
    return found;
  };
  const nameOf = <T>(known: Readonly<Record<string, T>>, value: T) =>
    Object.keys(known).find((key) => known[key] === value);
  /** Lines and markers of a series share one colour here. */
  const color = {
    get: ({ series }: SeriesOfChart) => (series.color === undefined ? "" : `#${series.color}`),
    set(self: SeriesOfChart, value: unknown) {
      self.series.color = readColor(value);
      changed(self);
    },
  };
  const lineFormat = serve<SeriesOfChart>({
    className: "ChartLineFormat",
    values: {
      color,
      lineStyle: {
        get: ({ series }) => nameOf(lines, series.line),
        set(self, value) {
          self.series.line = named(lines, value, "line style");
          changed(self);
        },
      },
    },
    methods: {
      clear(self) {
        self.series.line = "none";
        changed(self);
      },
    },
  });
  const format = serve<SeriesOfChart>({
    className: "ChartSeriesFormat",
    links: { line: lineFormat },
  });
  const cells = (self: SeriesOfChart, args: Arguments) => {
    const range = args.range(0);
    if (range === undefined) throw invalidArgument("The values of a series must be a range.");
    changed(self);
    return range.address;
  };
  return {
    className: "ChartSeries",
    values: {
      name: {
        get: ({ series }) => series.name,
        set(self, value) {
          self.series.name = String(value);
          changed(self);
        },
      },
      markerStyle: {
        get: ({ series }) => nameOf(markers, series.marker),
        set(self, value) {
          self.series.marker = named(markers, value, "marker");
          changed(self);
        },
      },
      markerBackgroundColor: color,
      markerForegroundColor: color,
    },
    links: { format },
    methods: {
      setXAxisValues(self, args) {
        self.series.x = cells(self, args);
      },
      setValues(self, args) {
        self.series.y = cells(self, args);
      },
      delete(self) {
        self.chart.series.splice(self.chart.series.indexOf(self.series), 1);
        self.chart.isChanged = true;
        desk.book.touched({ kind: "layout", sheet: self.tab.name });
      },
    },
  };
}
