import { InputError, kept } from "../../cells";
import { CellFault, plainCell } from "../contract/cell";
import { listed, type Opening } from "./openings-label";

type List = readonly unknown[];

/** What a call is given of its openings. */
interface ListedOpenings {
  readonly labels: List;
  readonly areas: List;
  readonly box: string | undefined;
  readonly boxes: List;
}

interface Boxes {
  readonly areas: List;
  readonly boxes: List;
  readonly byBox: ReadonlyMap<string, Opening[]>;
}

/** By the labels: a host passes the very same columns to many rows and calls. */
const lately = new WeakMap<List, Boxes>();

/**
 * The openings of the box in use; of all rows where the list has no box column. A row without a
 * label is passed over; one whose area is not a number above 0 stays, with the area NaN, so that
 * using it can be told apart from a label that is not there.
 */
export function listedOpenings({ labels, areas, box = "", boxes }: ListedOpenings): Opening[] {
  let known = lately.get(labels);
  if (known?.areas !== areas || known.boxes !== boxes) {
    known = { areas, boxes, byBox: read(labels, areas, boxes) };
    lately.set(labels, known);
  }
  const { byBox } = known;
  if (boxes.length === 0) return byBox.get("") ?? [];
  const found = byBox.get(box.toUpperCase());
  if (found) return found;
  throw new InputError(`unknown box "${box}": the list has ${listed([...byBox.keys()])}`);
}

function read(labels: List, areas: List, boxes: List): Map<string, Opening[]> {
  const byBox = new Map<string, Opening[]>();
  labels.forEach((cell, i) => {
    const label = textOf(cell);
    if (label === "") return;
    const value = plainCell(areas[i]);
    const usable = typeof value === "number" && value > 0 && value < Infinity;
    const key = boxes.length > 0 ? textOf(boxes[i]).toUpperCase() : "";
    kept(byBox, key, () => []).push({ label, area: usable ? value : Number.NaN });
  });
  return byBox;
}

/** A label or a box; "" for a blank cell, an error, and the 0 that some hosts pass for a blank. */
function textOf(cell: unknown): string {
  const plain = plainCell(cell);
  return plain === null || plain === 0 || plain instanceof CellFault || typeof plain === "symbol"
    ? ""
    : String(plain).trim();
}
