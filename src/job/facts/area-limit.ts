import { areaOf, openingsNamed } from "../../rules";
import type { FanRows } from "../read";

/**
 * Half width of the area of a fan's openings in use, or of its second ones: as stored in the row,
 * else the sum over those named, since one rule cut them all. A size of no stated tolerance counts
 * as exact. Throws an OpeningsError for a label that is not listed.
 */
export function areaLimitOf({ table, boxes }: FanRows, i: number, key = "openings"): number {
  const stored = key === "openings" ? table.number("areaLimit", i) : Number.NaN;
  if (stored >= 0) return stored;
  if (!boxes?.table.has("areaLimit")) return 0;
  const limits = boxes.rows(table.text("box", i)).map((row) => ({
    label: boxes.table.text("opening", row),
    area: boxes.table.number("areaLimit", row) || 0,
  }));
  return areaOf(openingsNamed(table.text(key, i), limits));
}
