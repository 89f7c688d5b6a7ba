import type { PlanChart, PlanSeries } from "../../records";
import type { Book } from "../run";

/** Adds a scatter chart over cells of a sheet. */
export async function writeChart(
  book: Book,
  sheet: Excel.Worksheet,
  plan: PlanChart,
): Promise<void> {
  const [first] = plan.series;
  if (!first) return;
  const chart = sheet.charts.add("XYScatter", sheet.getRange(first.y), "Columns");
  chart.series.load("items/name");
  await book.sync();
  // Excel makes a series of its own from the cells that a chart is begun with.
  for (const made of chart.series.items) made.delete();
  for (const series of plan.series) addSeries(sheet, chart, series);
  chart.title.text = plan.title;
  chart.legend.position = "Bottom";
  const { categoryAxis, valueAxis } = chart.axes;
  for (const [axis, { title, min, max }] of [
    [categoryAxis, plan.x],
    [valueAxis, plan.y],
  ] as const) {
    axis.title.text = title;
    axis.minimum = min;
    axis.maximum = max;
  }
  const [from, to] = plan.over.split(":");
  chart.setPosition(from ?? plan.over, to);
  await book.sync();
}

function addSeries(sheet: Excel.Worksheet, chart: Excel.Chart, plan: PlanSeries): void {
  const series = chart.series.add(plan.name);
  series.setXAxisValues(sheet.getRange(plan.x));
  series.setValues(sheet.getRange(plan.y));
  series.markerStyle = plan.marker === "none" ? "None" : "Circle";
  if (plan.marker !== "none") {
    series.markerBackgroundColor = `#${plan.color}`;
    series.markerForegroundColor = `#${plan.color}`;
  }
  const { line } = series.format;
  if (plan.line === "none") line.clear();
  else {
    line.color = `#${plan.color}`;
    line.lineStyle = plan.line === "dash" ? "Dash" : "Continuous";
  }
}
