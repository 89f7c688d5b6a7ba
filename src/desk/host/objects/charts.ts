import { addressText } from "../../../cells";
import type { SheetTab } from "../book";
import { HostChart, type HostSeries } from "../charts/host-chart";
import { HostRange } from "../host-range";
import { HostError, invalidArgument } from "../wire/errors";
import { collection, keeping, type Members, serve } from "../wire/served";
import { chartAxisMembers, chartSeriesMembers } from "./chart-parts";
import type { ChartOnSheet, Desk } from "./desk";

/** Served kinds of charts, with whether points are joined and shown. */
const kinds: Readonly<Record<string, Pick<HostSeries, "line" | "marker">>> = {
  XYScatter: { line: "none", marker: "circle" },
  XYScatterLines: { line: "solid", marker: "circle" },
  XYScatterLinesNoMarkers: { line: "solid", marker: "none" },
};

export function chartsMembers(desk: Desk): Members<SheetTab> {
  return collection<SheetTab>({
    className: "ChartCollection",
    items: (tab) => tab.charts.map((chart) => desk.chart({ tab, chart })),
    find(tab, name) {
      const chart = tab.charts.find((each) => each.name === name);
      return chart === undefined ? null : desk.chart({ tab, chart });
    },
    missing: () => "The sheet has no such chart.",
    methods: {
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
    },
  });
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
  const kept = keeping(changed, ({ chart }: ChartOnSheet) => chart);
  const title = serve<ChartOnSheet>({
    className: "ChartTitle",
    values: { text: kept("title", (text) => text ?? "", String) },
  });
  const legend = serve<ChartOnSheet>({
    className: "ChartLegend",
    values: {
      position: kept(
        "legend",
        (at) => (at === "right" ? "Right" : "Bottom"),
        (value) => {
          if (value !== "Bottom" && value !== "Right")
            throw invalidArgument(`A legend at "${String(value)}" is not available.`);
          return value === "Right" ? "right" : "bottom";
        },
      ),
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
