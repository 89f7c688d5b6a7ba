import { addressText, sheetPrefix } from "../../../cells";
import { longestAddress } from "../address";
import type { CellArea } from "../book";
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
    values: { address: { get: prefixed } },
    links: { format, conditionalFormats: (cells) => desk.marks(cells) },
  };
}
