import { checkedColor } from "../color";
import type { Dialect } from "../dialect";
import { escapeAttribute, escapeText } from "../text";
import type { ChartAxis, ChartSeries, ChartSpec } from "./spec";

/** A range of a series as the chart names it, with the numbers stored in its cells. */
export interface SeriesNumbers {
  /** "'Proof Box 1'!$A$2:$A$9" */
  readonly formula: string;
  /** Null for cells without a number. */
  readonly numbers: readonly (number | null)[];
}

export interface SeriesData {
  readonly series: ChartSeries;
  readonly x: SeriesNumbers;
  readonly y: SeriesNumbers;
}

const colors = ["1F4E4A", "B4551D", "3A5FA0", "7A5195", "5B6B2F", "444444"];
const ink = "404040";
const grid = "D9DEDC";

/** The part of a scatter chart, its elements in the order of ECMA-376 part 1, 21.2. */
export function chartXml(spec: ChartSpec, data: readonly SeriesData[], dialect: Dialect): string {
  const { title, legend = "bottom" } = spec;
  const plot = [
    "<c:layout/>",
    '<c:scatterChart><c:scatterStyle val="lineMarker"/><c:varyColors val="0"/>',
    ...data.map(seriesXml),
    '<c:axId val="100001"/><c:axId val="100002"/></c:scatterChart>',
    axisXml(spec.x, "b", "100001", "100002"),
    axisXml(spec.y, "l", "100002", "100001"),
    "<c:spPr><a:noFill/></c:spPr>",
  ].join("");
  const legendXml = `<c:legend><c:legendPos val="${legend === "right" ? "r" : "b"}"/><c:overlay val="0"/></c:legend>`;
  return [
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n',
    `<c:chartSpace xmlns:c="${dialect.chart}" xmlns:a="${dialect.drawing}" xmlns:r="${dialect.relationships}">`,
    '<c:roundedCorners val="0"/><c:chart>',
    title === undefined ? "" : titleXml(title, 1200),
    `<c:autoTitleDeleted val="${title === undefined ? 1 : 0}"/>`,
    `<c:plotArea>${plot}</c:plotArea>${legendXml}`,
    '<c:plotVisOnly val="0"/><c:dispBlanksAs val="gap"/></c:chart>',
    `<c:spPr>${fillXml("FFFFFF")}${lineXml(grid, 9525)}</c:spPr>`,
    `<c:txPr><a:bodyPr/><a:lstStyle/><a:p><a:pPr><a:defRPr sz="900">${fillXml(ink)}</a:defRPr></a:pPr><a:endParaRPr lang="en-US"/></a:p></c:txPr>`,
    "</c:chartSpace>",
  ].join("");
}

function titleXml(text: string, size: number): string {
  const run = `<a:r><a:rPr lang="en-US" sz="${size}" b="1">${fillXml(ink)}</a:rPr><a:t>${escapeText(text)}</a:t></a:r>`;
  const properties = `<a:pPr><a:defRPr sz="${size}" b="1"/></a:pPr>`;
  return `<c:title><c:tx><c:rich><a:bodyPr/><a:lstStyle/><a:p>${properties}${run}</a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`;
}

function fillXml(color: string): string {
  return `<a:solidFill><a:srgbClr val="${color}"/></a:solidFill>`;
}

function lineXml(color: string, width: number, dash = ""): string {
  const dashes = dash === "" ? "" : `<a:prstDash val="${dash}"/>`;
  return `<a:ln w="${width}">${fillXml(color)}${dashes}<a:round/></a:ln>`;
}

function seriesXml({ series, x, y }: SeriesData, index: number): string {
  const { name, marker = "circle", line = "none" } = series;
  const color = checkedColor(series.color ?? (colors[index % colors.length] as string));
  const stroke =
    line === "none"
      ? '<a:ln w="19050"><a:noFill/></a:ln>'
      : lineXml(color, 15875, line === "dash" ? "dash" : "");
  const sign =
    marker === "none"
      ? '<c:symbol val="none"/>'
      : `<c:symbol val="${marker}"/><c:size val="7"/><c:spPr>${fillXml(color)}${lineXml("FFFFFF", 6350)}</c:spPr>`;
  return [
    `<c:ser><c:idx val="${index}"/><c:order val="${index}"/><c:tx><c:v>${escapeText(name)}</c:v></c:tx>`,
    `<c:spPr>${stroke}</c:spPr><c:marker>${sign}</c:marker>`,
    `<c:xVal>${numbersXml(x)}</c:xVal><c:yVal>${numbersXml(y)}</c:yVal><c:smooth val="0"/></c:ser>`,
  ].join("");
}

function numbersXml({ formula, numbers }: SeriesNumbers): string {
  const points = numbers
    .map((number, i) => (number === null ? "" : `<c:pt idx="${i}"><c:v>${number}</c:v></c:pt>`))
    .join("");
  return `<c:numRef><c:f>${escapeText(formula)}</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val="${numbers.length}"/>${points}</c:numCache></c:numRef>`;
}

function axisXml(axis: ChartAxis, side: "b" | "l", id: string, crossed: string): string {
  const { title, min, max, numberFormat = "General" } = axis;
  const bounds = [
    max === undefined ? "" : `<c:max val="${max}"/>`,
    min === undefined ? "" : `<c:min val="${min}"/>`,
  ].join("");
  return [
    `<c:valAx><c:axId val="${id}"/><c:scaling><c:orientation val="minMax"/>${bounds}</c:scaling>`,
    `<c:delete val="0"/><c:axPos val="${side}"/>`,
    `<c:majorGridlines><c:spPr>${lineXml(grid, 6350)}</c:spPr></c:majorGridlines>`,
    title === undefined ? "" : titleXml(title, 900),
    `<c:numFmt formatCode="${escapeAttribute(numberFormat)}" sourceLinked="0"/>`,
    '<c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="low"/>',
    `<c:spPr>${lineXml("808080", 9525)}</c:spPr>`,
    `<c:crossAx val="${crossed}"/><c:crosses val="min"/><c:crossBetween val="midCat"/></c:valAx>`,
  ].join("");
}
