import { addressText } from "../../../cells";
import type { SheetTab } from "../book";
import { HostChart, type HostSeries } from "../charts/host-chart";
import { HostRange } from "../host-range";
import type { Arguments } from "../wire/arguments";
import { HostError, invalidArgument, notFound } from "../wire/errors";
import { type Members, type Served, serve } from "../wire/served";
import { chartAxisMembers, chartSeriesMembers } from "./chart-parts";
import type { ChartOnSheet, Desk } from "./desk";

/** Served kinds of charts, with whether points are joined and shown. */
const kinds: Readonly<Record<string, Pick<HostSeries, "line" | "marker">>> = {
  XYScatter: { line: "none", marker: "circle" },
  XYScatterLines: { line: "solid", marker: "circle" },
  XYScatterLinesNoMarkers: { line: "solid", marker: "none" },
};

export function chartsMembers(desk: Desk): Members<SheetTab> {
  const find = (tab: SheetTab, name: string): Served | null => {
    const chart = tab.charts.find((each) => each.name === name);
    return chart === undefined ? null : desk.chart({ tab, chart });
  };
  const named = (tab: SheetTab, args: Arguments): Served => {
    const found = find(tab, args.text(0, "The name"));
    if (found === null) throw notFound("The sheet has no such chart.");
    return found;
  };
  return {
    className: "ChartCollection",
    values: { count: { get: ({ charts }) => charts.length } },
    items: (tab) => tab.charts.map((chart) => desk.chart({ tab, chart })),
    item: named,
    methods: {
      getItem: named,
      add(tab, args) {
        const kind = kinds[args.text(0, "The type")];
        if (kind === undefined)
          throw new HostError("UnsupportedOperation", "Only XYScatter charts are available.");
        tab.checkWritable();
        let number = tab.charts.length + 1;
        while (tab.charts.some(({ name }) => name === `Chart ${number}`)) number++;
        const chart = new HostChart(`Chart ${number}`, null);
        chart.series.push(...seriesFrom(args.range(1), kind));
        tab.charts.push(chart);
        desk.book.touched({ kind: "layout", sheet: tab.name });
        return desk.chart({ tab, chart });
      },
      getCount: ({ charts }) => charts.length,
      getItemOrNullObject: (tab, args) => find(tab, args.text(0, "The name")),
    },
  };
}

/** The first column across, the others up; a single one is up, against nothing yet. */
function seriesFrom(
  source: HostRange | undefined,
  kind: Pick<HostSeries, "line" | "marker">,
): HostSeries[] {
  if (source === undefined) throw invalidArgument("The source of a chart must be a range.");
  const column = (col: number) => source.with({ left: col, right: col }).address;
  const x = source.cols > 1 ? column(source.left) : "";
  const first = source.cols > 1 ? source.left + 1 : source.left;
  return Array.from({ length: source.right - first + 1 }, (_, i) => {
    return { name: `Series${i + 1}`, x, y: column(first + i), ...kind, color: undefined };
  });
}

export function chartMembers(desk: Desk): Members<ChartOnSheet> {
  const changed = ({ tab, chart }: ChartOnSheet) => {
    if (chart.inFile !== null && chart.series.length === 0)
      throw new HostError(
        "UnsupportedOperation",
        `The chart "${chart.name}" belongs to the file: it can be deleted here, but not changed.`,
      );
    tab.checkWritable();
    chart.isChanged = true;
    desk.book.touched({ kind: "layout", sheet: tab.name });
  };
  const title = serve<ChartOnSheet>({
    className: "ChartTitle",
    values: {
      text: {
        get: ({ chart }) => chart.title ?? "",
        set(self, value) {
          self.chart.title = String(value);
          changed(self);
        },
      },
      visible: {
        get: ({ chart }) => chart.isTitled,
        set(self, value) {
          self.chart.isTitled = value === true;
          changed(self);
        },
      },
    },
  });
  const legend = serve<ChartOnSheet>({
    className: "ChartLegend",
    values: {
      position: {
        get: ({ chart }) => (chart.legend === "right" ? "Right" : "Bottom"),
        set(self, value) {
          if (value !== "Bottom" && value !== "Right")
            throw invalidArgument(`A legend at "${String(value)}" is not available.`);
          self.chart.legend = value === "Right" ? "right" : "bottom";
          changed(self);
        },
      },
      visible: {
        get: ({ chart }) => chart.legend !== "none",
        set(self, value) {
          self.chart.legend = value === true ? "bottom" : "none";
          changed(self);
        },
      },
    },
  });
  const axis = serve(chartAxisMembers(changed));
  const axes = serve<ChartOnSheet>({
    className: "ChartAxes",
    links: {
      categoryAxis: (self) => axis({ ...self, axis: self.chart.x }),
      valueAxis: (self) => axis({ ...self, axis: self.chart.y }),
    },
  });
  const series = serve(chartSeriesMembers(desk, changed));
  return {
    className: "Chart",
    identify: ({ chart }) => ({ Id: chart.name }),
    values: { name: { get: ({ chart }) => chart.name }, id: { get: ({ chart }) => chart.name } },
    links: { title, legend, axes, series },
    methods: {
      delete({ tab, chart }) {
        tab.checkWritable();
        tab.charts.splice(tab.charts.indexOf(chart), 1);
        desk.book.touched({ kind: "layout", sheet: tab.name });
      },
      setPosition(self, args) {
        const at = (place: number) =>
          args.range(place) ?? desk.book.range(self.tab, args.text(place, "The cell"));
        const first = at(0);
        const last = args.range(1) === undefined && args.json(1) === null ? first : at(1);
        const over = new HostRange(self.tab, first).boundingRect(last);
        self.chart.over = addressText(over);
        changed(self);
      },
    },
  };
}
