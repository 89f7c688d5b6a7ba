import { cellsText, sheetPrefix } from "../address";
import type { CellArea } from "../book";
import { HostRange } from "../host-range";
import { type Members, serve } from "../wire/served";
import type { Desk } from "./desk";

/** Several ranges of one sheet. */
export function rangeAreasMembers(desk: Desk): Members<CellArea> {
  const ranges = ({ tab, rects }: CellArea) => rects.map((rect) => new HostRange(tab, rect));
  const areas = serve<CellArea>({
    className: "RangeCollection",
    items: (cells) => ranges(cells).map(desk.range),
  });
  const prefixed = ({ tab, rects }: CellArea) =>
    rects.map((rect) => sheetPrefix(tab.name) + cellsText(rect)).join(",");
  return {
    className: "RangeAreas",
    isTracked: true,
    values: {
      address: { get: prefixed },
      areaCount: { get: ({ rects }) => rects.length },
      cellCount: { get: (cells) => ranges(cells).reduce((sum, range) => sum + range.cellCount, 0) },
    },
    links: {
      areas,
      conditionalFormats: (cells) => desk.marks(cells),
      worksheet: ({ tab }) => desk.worksheet(tab),
    },
  };
}
