import { parseRectangle } from "../../cells";
import { SheetFrame } from "../arrange/frame";
import type { Dialect } from "../dialect";
import { addRel, kindOf, openXml, readRels, removePart, removeRel, setContentType } from "../opc";
import type { Package } from "../package";
import { escapeAttribute } from "../text";
import type { Element, XmlPart } from "../tree";
import { attributeNamed } from "../xml";
import { chartXml, type SeriesData } from "./chart-xml";
import type { ChartSpec } from "./spec";

const drawingType = "application/vnd.openxmlformats-officedocument.drawing+xml";
const chartType = "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";

/** A chart of a sheet: its frame in the drawing, and the part that the frame shows. */
interface ChartFrame {
  readonly name: string;
  readonly anchor: Element;
  readonly relId: string;
}

/** Name of the drawing part of a sheet; undefined where it has none. */
function drawingOf(pkg: Package, sheetPart: string): string | undefined {
  const rel = readRels(pkg, sheetPart).find(({ type }) => kindOf(type) === "drawing");
  return rel !== undefined && pkg.has(rel.target) ? rel.target : undefined;
}

/** The first element below another with this local name, whatever its prefix. */
function within(element: Element, local: string): Element | undefined {
  for (const child of element.children) {
    const found = child.local === local ? child : within(child, local);
    if (found !== undefined) return found;
  }
  return undefined;
}

function chartFrames(doc: XmlPart): ChartFrame[] {
  return doc.root.children.flatMap((anchor) => {
    const frame = within(anchor, "graphicFrame");
    const chart = frame && within(frame, "chart");
    const relId = chart && attributeNamed(chart, "id");
    if (frame === undefined || relId === undefined) return [];
    return [{ name: within(frame, "cNvPr")?.attributes.name ?? "", anchor, relId }];
  });
}

/** The names of a sheet's charts. */
export function chartNames(pkg: Package, sheetPart: string): string[] {
  const drawing = drawingOf(pkg, sheetPart);
  if (drawing === undefined) return [];
  return chartFrames(openXml(pkg, drawing)).map(({ name }) => name);
}

/** Adds a chart to a sheet, with its parts; gives the chart's name. */
export function addChart(
  pkg: Package,
  sheetPart: string,
  dialect: Dialect,
  spec: ChartSpec,
  data: readonly SeriesData[],
): string {
  const xml = chartXml(spec, data, dialect);
  const drawing = drawingOf(pkg, sheetPart) ?? makeDrawing(pkg, sheetPart, dialect);
  const folder = drawing.slice(0, drawing.lastIndexOf("drawings/"));
  const part = freePart(pkg, `${folder}charts/chart`);
  pkg.set(part, new TextEncoder().encode(xml));
  setContentType(pkg, part, chartType);
  const relId = addRel(pkg, drawing, `${dialect.relationships}/chart`, part);
  const doc = openXml(pkg, drawing);
  const ids = doc.root.children.map((anchor) => Number(within(anchor, "cNvPr")?.attributes.id));
  const id = Math.max(1, ...ids.filter((each) => each > 0)) + 1;
  const names = new Set(chartFrames(doc).map(({ name }) => name));
  let number = names.size + 1;
  while (names.has(`Chart ${number}`)) number++;
  const name = `Chart ${number}`;
  doc.append(doc.root, anchorXml(spec, dialect, { id, name, relId }));
  pkg.set(drawing, doc.toBytes());
  return name;
}

/** Takes a chart off a sheet, with its parts; the drawing goes with the last thing on it. */
export function removeChart(pkg: Package, sheetPart: string, name: string): void {
  const drawing = drawingOf(pkg, sheetPart);
  const doc = drawing === undefined ? undefined : openXml(pkg, drawing);
  const frame = doc && chartFrames(doc).find((each) => each.name === name);
  if (drawing === undefined || doc === undefined || frame === undefined)
    throw new RangeError(`The sheet has no chart "${name}".`);
  doc.remove(frame.anchor);
  pkg.set(drawing, doc.toBytes());
  const rel = readRels(pkg, drawing).find(({ id }) => id === frame.relId);
  removeRel(pkg, drawing, frame.relId);
  if (rel !== undefined) removeWithOwn(pkg, rel.target);
  if (doc.root.children.length > 1) return;
  const sheetRel = readRels(pkg, sheetPart).find(({ target }) => target === drawing);
  const around = SheetFrame.of(pkg, sheetPart);
  around.put("drawing", "");
  pkg.set(sheetPart, around.doc.toBytes());
  if (sheetRel !== undefined) removeRel(pkg, sheetPart, sheetRel.id);
  removePart(pkg, drawing);
}

/** Removes a chart part and the parts that belong to it alone: its colours and style. */
function removeWithOwn(pkg: Package, part: string): void {
  for (const { external, target } of readRels(pkg, part)) if (!external) removePart(pkg, target);
  removePart(pkg, part);
}

function freePart(pkg: Package, start: string): string {
  let number = 1;
  while (pkg.has(`${start}${number}.xml`)) number++;
  return `${start}${number}.xml`;
}

function makeDrawing(pkg: Package, sheetPart: string, dialect: Dialect): string {
  const folder = sheetPart.slice(0, sheetPart.lastIndexOf("worksheets/"));
  const part = freePart(pkg, `${folder}drawings/drawing`);
  const xml = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<xdr:wsDr xmlns:xdr="${dialect.sheetDrawing}" xmlns:a="${dialect.drawing}"></xdr:wsDr>`;
  pkg.set(part, new TextEncoder().encode(xml));
  setContentType(pkg, part, drawingType);
  const id = addRel(pkg, sheetPart, `${dialect.relationships}/drawing`, part);
  const frame = SheetFrame.of(pkg, sheetPart);
  const attributes = { "xmlns:r": dialect.relationships, "r:id": id };
  frame.put("drawing", frame.element("drawing", attributes));
  pkg.set(sheetPart, frame.doc.toBytes());
  return part;
}

interface Frame {
  readonly id: number;
  readonly name: string;
  readonly relId: string;
}

function anchorXml(spec: ChartSpec, dialect: Dialect, { id, name, relId }: Frame): string {
  const { top, left, bottom, right } = parseRectangle(spec.over);
  const at = (col: number, row: number) =>
    `<xdr:col>${col}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff>`;
  const about = spec.alternative ?? spec.title ?? "";
  const descr = about === "" ? "" : ` descr="${escapeAttribute(about)}"`;
  return [
    `<xdr:twoCellAnchor xmlns:xdr="${dialect.sheetDrawing}" xmlns:a="${dialect.drawing}" editAs="oneCell">`,
    `<xdr:from>${at(left, top)}</xdr:from><xdr:to>${at(right + 1, bottom + 1)}</xdr:to>`,
    `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${id}" name="${name}"${descr}/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>`,
    '<xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>',
    `<a:graphic><a:graphicData uri="${dialect.chart}"><c:chart xmlns:c="${dialect.chart}" xmlns:r="${dialect.relationships}" r:id="${relId}"/></a:graphicData></a:graphic>`,
    "</xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>",
  ].join("");
}
