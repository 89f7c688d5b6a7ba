import type { ChartSpec, Sheet } from "../../../workbook";

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** One series of a chart that is being made. */
export interface HostSeries {
  name: string;
  /** "Sheet!A1:A9"; "" until it is set. */
  x: string;
  y: string;
  marker: "circle" | "square" | "diamond" | "none";
  line: "none" | "solid" | "dash";
  color: string | undefined;
}

/** A chart of a sheet: one of the file, of which only the name is known, or one made in this session. */
export class HostChart {
  title: string | undefined;
  over = "A1:H16";
  legend: "bottom" | "right" = "bottom";
  readonly series: HostSeries[] = [];
  readonly x: Mutable<ChartSpec["x"]> = {};
  readonly y: Mutable<ChartSpec["y"]> = {};
  /** Differs from what the file has. */
  isChanged = true;

  constructor(
    public name: string,
    /** Its name in the file; null until it is written. */
    public inFile: string | null,
  ) {
    this.isChanged = inFile === null;
  }

  spec(): ChartSpec {
    const { title = "Chart", over, legend, x, y } = this;
    return {
      title,
      over,
      legend,
      series: this.series.filter((each) => each.x !== "" && each.y !== ""),
      x,
      y,
    };
  }
}

/** The charts that a sheet's file has. */
export function chartsOf(sheet: Sheet): HostChart[] {
  return sheet.charts.map((name) => new HostChart(name, name));
}

/** Brings the charts of the file up to date with those of the session. */
export function keepCharts(sheet: Sheet, charts: readonly HostChart[]): void {
  const kept = new Set(charts.filter(({ isChanged }) => !isChanged).map(({ inFile }) => inFile));
  for (const name of sheet.charts) if (!kept.has(name)) sheet.removeChart(name);
  for (const chart of charts) {
    if (!chart.isChanged) continue;
    chart.inFile = sheet.addChart(chart.spec());
    chart.isChanged = false;
  }
}
