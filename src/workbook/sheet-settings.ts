import { maxCols } from "../cells";
import type { SheetData } from "./sheet-data";
import { isTrue, type Tag } from "./xml";

function readColumns(data: SheetData, attributes: Record<string, string>): void {
  const first = Math.max(0, Number(attributes.min) - 1);
  const last = Math.min(maxCols, Number(attributes.max)) - 1;
  const width = Number(attributes.width);
  const style = Number(attributes.style);
  for (let col = first; col <= last; col++) {
    // The first statement about a column counts, and a file cannot make the loop run over it again.
    if (data.columnStyles.has(col)) return;
    data.columnStyles.set(col, Number.isInteger(style) ? style : 0);
    if (isTrue(attributes.hidden)) data.hiddenCols.add(col);
    if (attributes.width !== undefined && Number.isFinite(width)) data.columnWidths.set(col, width);
  }
}

/** Takes up what an element outside the cells says about the sheet, when it is one of interest. */
export function readSheetSetting(
  data: SheetData,
  tag: Tag,
  prefix: string,
  beforeCells: boolean,
): void {
  const { name, attributes } = tag;
  if (!name.startsWith(prefix)) return;
  switch (name.slice(prefix.length)) {
    case "col":
      readColumns(data, attributes);
      break;
    case "mergeCell":
      if (attributes.ref !== undefined) data.merges.push(attributes.ref);
      break;
    case "pane":
      // Those after the cells belong to custom views.
      if (!beforeCells) break;
      if (attributes.state === "frozen" || attributes.state === "frozenSplit") {
        data.frozenRows = Number(attributes.ySplit ?? 0);
        data.frozenCols = Number(attributes.xSplit ?? 0);
      }
      break;
    case "filterColumn":
      data.isFiltered = true;
      break;
    case "sheetProtection":
      data.isProtected = isTrue(attributes.sheet);
      break;
  }
}
