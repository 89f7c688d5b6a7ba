import { oneValue } from "../../algebra";
import { approachFactor } from "../../formulas";

/** The side of a box that the openings are cut into: its sizes in the job's length unit. */
export interface BoxFace {
  readonly width: number;
  readonly height: number;
  /** What stays at the edges and between holes, so that the wall holds and covers can be taped. */
  readonly rim: number;
}

/** Up to this share the approach raises it by less than 0.4 % (β = 0.3). */
export const freeOfFace = 0.09;

/** A hole to be cut: as wide and as high as its size. */
interface Hole {
  readonly opening: string;
  readonly size: number;
}

export interface PlacedHole extends Hole {
  /** Of its middle, from the lower left corner of the face. */
  readonly x: number;
  readonly y: number;
}

/** By how much the flow comes out too high through an area of the face, as a share of it. */
export function approachError(area: number, face: Pick<BoxFace, "width" | "height">): number {
  const share = area / (face.width * face.height);
  return share < 1
    ? oneValue(approachFactor, { beta: Math.sqrt(share) }) - 1
    : Number.POSITIVE_INFINITY;
}

/** The widest hole that the face takes. */
export function widestHole({ width, height, rim }: BoxFace): number {
  return Math.min(width, height) - 2 * rim;
}

/** Places holes on the face in rows, the largest first; undefined where they do not all fit. */
export function layOut(holes: readonly Hole[], face: BoxFace): PlacedHole[] | undefined {
  const { width, height, rim } = face;
  const sorted = [...holes].sort((a, b) => b.size - a.size);
  const placed: PlacedHole[] = [];
  let [left, bottom, rowHeight] = [rim, rim, 0];
  for (const hole of sorted) {
    if (left + hole.size + rim > width + 1e-9) {
      bottom += rowHeight + rim;
      [left, rowHeight] = [rim, 0];
    }
    if (left + hole.size + rim > width + 1e-9) return undefined;
    if (bottom + hole.size + rim > height + 1e-9) return undefined;
    rowHeight = Math.max(rowHeight, hole.size);
    placed.push({ ...hole, x: left + hole.size / 2, y: bottom + hole.size / 2 });
    left += hole.size + rim;
  }
  return placed;
}
