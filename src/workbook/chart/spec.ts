/** A scatter chart as it is handed in. */

export interface ChartSeries {
  readonly name: string;
  /** Cells with the numbers across, "A2:A9"; on the chart's own sheet unless they name another. */
  readonly x: string;
  readonly y: string;
  readonly marker?: "circle" | "square" | "diamond" | "none" | undefined;
  /** A straight line through the points, in their order. */
  readonly line?: "none" | "solid" | "dash" | undefined;
  /** "RRGGBB". */
  readonly color?: string | undefined;
}

export interface ChartAxis {
  readonly title?: string | undefined;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly numberFormat?: string | undefined;
}

export interface ChartSpec {
  readonly title?: string | undefined;
  /** What the picture shows, for those who cannot see it. */
  readonly alternative?: string | undefined;
  /** The cells that it covers, "A10:F28". */
  readonly over: string;
  readonly series: readonly ChartSeries[];
  readonly x: ChartAxis;
  readonly y: ChartAxis;
  readonly legend?: "bottom" | "right" | undefined;
}
