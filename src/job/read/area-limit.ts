import { areaOf, openingsNamed } from "../rules";
import type { BoxList } from "./box-list";

/**
 * Half width of the area of the openings in use: the sum over those named, since one rule cut them
 * all; 0 where the Boxes sheet states none. Throws an OpeningsError for a label that is not listed.
 */
export function areaLimitOf(boxes: BoxList | undefined, box: string, label: string): number {
  if (!boxes?.table.has("areaLimit")) return 0;
  const limits = boxes.rows(box).map((row) => ({
    label: boxes.table.text("opening", row),
    area: boxes.table.number("areaLimit", row) || 0,
  }));
  return areaOf(openingsNamed(label, limits));
}
