import { cellName } from "../../cells";
import type { Element } from "../tree";
import { mergedAttributes, type SheetFrame } from "./frame";

/** Attributes of the pane that holds rows and columns in view, and the pane that moves; null for none. */
export function paneOf(rows: number, cols: number) {
  if (rows === 0 && cols === 0) return null;
  const active = rows === 0 ? "topRight" : cols === 0 ? "bottomLeft" : "bottomRight";
  const attributes: Record<string, string> = {};
  if (cols > 0) attributes.xSplit = String(cols);
  if (rows > 0) attributes.ySplit = String(rows);
  attributes.topLeftCell = cellName(rows, cols);
  attributes.activePane = active;
  attributes.state = "frozen";
  return { active, attributes };
}

/** Freezes the first rows and columns of every view of the sheet; 0 and 0 frees them. */
export function arrangeFrozen(frame: SheetFrame, rows: number, cols: number): void {
  const list = frame.first("sheetViews");
  const views = list === undefined ? [] : frame.doc.children(list, "sheetView");
  const pane = paneOf(rows, cols);
  if (views.length === 0) {
    const panes = pane === null ? "" : frame.element("pane", pane.attributes);
    frame.put(
      "sheetViews",
      frame.element("sheetViews", {}, frame.element("sheetView", { workbookViewId: "0" }, panes)),
    );
    return;
  }
  for (const view of views) frame.doc.replace(view, viewXml(frame, view, pane));
}

function viewXml(frame: SheetFrame, view: Element, pane: ReturnType<typeof paneOf>): string {
  const { doc } = frame;
  const before = doc.child(view, "pane")?.attributes.activePane ?? "topLeft";
  const selections = doc.children(view, "selection");
  const shown = selections.find(({ attributes }) => (attributes.pane ?? "topLeft") === before);
  const kept = mergedAttributes(shown?.attributes ?? {}, { pane: pane?.active ?? null });
  const panes = pane === null ? "" : frame.element("pane", pane.attributes);
  const selection = Object.keys(kept).length === 0 ? "" : frame.element("selection", kept);
  const inner = panes + selection + frame.rest(view, "pane", "selection");
  return frame.element("sheetView", view.attributes, inner);
}
