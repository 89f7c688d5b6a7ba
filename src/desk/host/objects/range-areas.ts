import { addressText, sheetPrefix } from "../../../cells";
import { longestAddress } from "../address";
import type { CellArea } from "../book";
import { HostRange } from "../host-range";
import { type Members, serve } from "../wire/served";
import { ofAreas } from "./area-format";
import type { Desk } from "./desk";
import {
  rangeFillMembers,
  rangeFontMembers,
  rangeFormatMembers,
  rangeProtectionMembers,
} from "./range-format";

/** Several ranges of one sheet. */
export function rangeAreasMembers(desk: Desk): Members<CellArea> {
  const ranges = ({ tab, rects }: CellArea) => rects.map((rect) => new HostRange(tab, rect));
  const areas = serve<CellArea>({
    className: "RangeCollection",
    items: (cells) => ranges(cells).map(desk.range),
  });
  const fill = serve(ofAreas(rangeFillMembers(desk), {}));
  const font = serve(ofAreas(rangeFontMembers(desk), {}));
  const protection = serve(ofAreas(rangeProtectionMembers(desk), {}));
  const borders = desk.borders;
  const format = serve(ofAreas(rangeFormatMembers(desk), { fill, font, protection, borders }));
  const prefixed = ({ tab, rects }: CellArea) =>
    // Cut off where it is too long, as in Excel.
    rects
      .map((rect) => sheetPrefix(tab.name) + addressText(rect))
      .join(",")
      .slice(0, longestAddress);
  return {
    className: "RangeAreas",
    isTracked: true,
    values: {
      address: { get: prefixed },
      areaCount: { get: ({ rects }) => rects.length },
    },
    links: {
      areas,
      format,
      conditionalFormats: (cells) => desk.marks(cells),
      worksheet: ({ tab }) => desk.worksheet(tab),
    },
  };
}
