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

/** Places tried along a side, beside those that touch what is placed already. */
const tries = 64;

/**
 * Places holes on the face, the largest first, each as low and then as far left as it goes;
 * undefined where they do not all fit. Round ones may stand beside each other at a slant.
 */
export function layOut(
  holes: readonly Hole[],
  face: BoxFace,
  shape: "round" | "square",
): PlacedHole[] | undefined {
  const placed: PlacedHole[] = [];
  for (const hole of [...holes].sort((a, b) => b.size - a.size)) {
    const along = (side: number, middle: "x" | "y") => {
      const [from, to] = [face.rim + hole.size / 2, side - face.rim - hole.size / 2];
      const even = Array.from({ length: tries }, (_, i) => from + (i * (to - from)) / (tries - 1));
      const touching = placed.map((each) => each[middle] + gapOf(each, hole, face));
      return [...even, ...touching].filter((at) => at <= to + 1e-9).sort((a, b) => a - b);
    };
    const isFree = (x: number, y: number) =>
      placed.every((each) => {
        const [across, up] = [Math.abs(each.x - x), Math.abs(each.y - y)];
        const apart = shape === "round" ? Math.hypot(across, up) : Math.max(across, up);
        return apart >= gapOf(each, hole, face) - 1e-9;
      });
    const xs = along(face.width, "x");
    const y = along(face.height, "y").find((up) => xs.some((each) => isFree(each, up)));
    const x = y === undefined ? undefined : xs.find((each) => isFree(each, y));
    if (x === undefined || y === undefined) return undefined;
    placed.push({ ...hole, x, y });
  }
  return placed;
}

/** How far apart the middles of two holes are at least. */
function gapOf(one: Hole, other: Hole, { rim }: BoxFace): number {
  return (one.size + other.size) / 2 + rim;
}
