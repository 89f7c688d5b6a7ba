import type { Opening } from "../src/job";
import { invalid } from "./problem";
import { isBlank, isError, type Matrix, toMatrix } from "./rows";

/** The openings of one or several boxes, from columns of the Boxes sheet. */
class BoxOpenings {
  private readonly byBox = new Map<string, Opening[]>();
  private readonly several: boolean;

  /**
   * `labels`, `areas` and `boxes` are of one length. A row without a label is passed over; one whose
   * area is not a number above 0 stays, with the area NaN, so that using it can be told apart from
   * a label that is not there.
   */
  constructor(labels: Matrix, areas: Matrix, boxes: Matrix | null | undefined) {
    const label = toMatrix(labels).flat();
    const area = toMatrix(areas).flat();
    const box = boxes ? toMatrix(boxes).flat() : [];
    this.several = box.length > 0;
    if (label.length !== area.length || (this.several && box.length !== label.length))
      throw invalid(
        `${label.length} labels, ${area.length} areas${this.several ? ` and ${box.length} boxes` : ""}: give columns of one length`,
      );
    label.forEach((cell, i) => {
      if (isBlank(cell) || isError(cell)) return;
      const value = area[i];
      const usable = typeof value === "number" && value > 0 && Number.isFinite(value);
      const key = this.several ? keyOf(box[i]) : "";
      const list = this.byBox.get(key) ?? [];
      list.push({ label: String(cell).trim(), area: usable ? value : Number.NaN });
      this.byBox.set(key, list);
    });
  }

  /** The openings of this box; of all rows where the list has no box column. */
  of(box: string): Opening[] {
    if (!this.several) return this.byBox.get("") ?? [];
    const found = this.byBox.get(keyOf(box));
    if (found) return found;
    const known = [...this.byBox.keys()].join(", ");
    throw new RangeError(`unknown box "${box}": the list has ${known}`);
  }
}

function keyOf(cell: unknown): string {
  return isBlank(cell) ? "" : String(cell).trim().toUpperCase();
}

const lately = new WeakMap<Matrix, { areas: unknown; boxes: unknown; list: BoxOpenings }>();

/**
 * The openings in these columns. A host that passes the very same columns to many calls gets the
 * list made for the first one.
 */
export function boxOpenings(
  labels: Matrix,
  areas: Matrix,
  boxes: Matrix | null | undefined,
): BoxOpenings {
  const cached = Array.isArray(labels) ? lately.get(labels) : undefined;
  if (cached && cached.areas === areas && cached.boxes === boxes) return cached.list;
  const list = new BoxOpenings(labels, areas, boxes);
  if (Array.isArray(labels)) lately.set(labels, { areas, boxes, list });
  return list;
}
