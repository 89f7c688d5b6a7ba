import type { LineStats } from "../evidence/stats";

/** How much a row may stray from the law: what rounding of the flow or the pressure makes of it. */
const strays = 0.025;
/** More rows would tell no more. */
const mostRows = 200;

interface Fit {
  readonly share: number;
  /** Share of the flows beside which pressure and area stand. */
  readonly covered: number;
  readonly constant: number;
  /** Different sets of flow, pressure and area among the rows that follow it. */
  readonly different: number;
  /** Different pressures among them: where one recurs, a flow in proportion to an area is no law. */
  readonly pressures: number;
}

/** How much a flow may depart from the law for its rounding alone. */
const allowed = (flow: number, isWhole = Number.isInteger(flow)) =>
  Math.max(strays, (isWhole ? 0.51 : 0.06) / flow);

const ratios = new Float64Array(2 * mostRows);
const sorted = new Float64Array(2 * mostRows);
const rows = new Uint32Array(2 * mostRows);

/**
 * How well flow = constant × hole^power × √|pressure| holds over the rows; without a hole, flow over
 * √|pressure|. Undefined where less than a share of the rows follow it.
 */
export function lawFit(
  flow: LineStats,
  pressure: LineStats,
  hole: LineStats | undefined,
  power: number,
  leastShare: number,
): Fit | undefined {
  const step = Math.max(1, Math.floor(flow.numbers.length / mostRows));
  let [flows, count] = [0, 0];
  for (let at = 0; at < flow.numbers.length; at += step) {
    const f = flow.numbers[at]!;
    const p = Math.abs(pressure.numbers[at]!);
    const a = hole ? hole.numbers[at]! : 1;
    if (f > 0) flows++;
    if (!(f > 0 && p > 0 && a > 0)) continue;
    rows[count] = at;
    ratios[count++] = f / ((power === 2 ? a * a : a) * Math.sqrt(p));
  }
  if (count < 3) return undefined;
  sorted.set(ratios.subarray(0, count));
  const constant = sorted.subarray(0, count).sort()[Math.floor(count / 2)]!;
  let fits = 0;
  for (let i = 0; i < count; i++)
    if (Math.abs(ratios[i]! / constant - 1) <= allowed(flow.numbers[rows[i]!]!))
      rows[fits++] = rows[i]!;
  if (fits < leastShare * count) return undefined;
  const sets = new Set<number>();
  const pressures = new Set<number>();
  for (const at of rows.subarray(0, fits)) {
    const p = Math.abs(pressure.numbers[at]!);
    sets.add(flow.numbers[at]! * 7919 + p * 31 + (hole?.numbers[at] ?? 1));
    pressures.add(p);
  }
  return {
    share: fits / count,
    covered: count / flows,
    constant,
    different: sets.size,
    pressures: pressures.size,
  };
}

/** Rows that a law is tried on first, and how few of them may follow it. */
const firstRows = 24;
const firstShare = 0.4;

/** Whether it is worth while to ask how well a law holds over all rows: whether it does in some of them. */
export class FirstLook {
  private readonly rows: number[] = [];
  /** How far apart the ratios of rows that follow a law may lie. */
  private readonly widest: number;

  constructor(private readonly flow: LineStats) {
    const { numbers, low, whole } = flow;
    const off = allowed(low, whole > 0.5);
    this.widest = off < 1 ? (1 + off) / (1 - off) : Number.POSITIVE_INFINITY;
    const step = Math.max(1, Math.ceil(flow.numeric / firstRows));
    let seen = 0;
    for (let at = 0; at < numbers.length; at++)
      if (numbers[at]! > 0 && seen++ % step === 0) this.rows.push(at);
  }

  mayFollow(pressure: LineStats, hole: LineStats, power: 1 | 2): boolean {
    let count = 0;
    for (const at of this.rows) {
      const a = hole.numbers[at]!;
      const size = (power === 2 ? a * a : a) * Math.sqrt(Math.abs(pressure.numbers[at]!));
      if (size > 0) sorted[count++] = this.flow.numbers[at]! / size;
    }
    // Too few to tell.
    if (count < firstRows / 2) return true;
    sorted.subarray(0, count).sort();
    const others = Math.ceil(count * firstShare) - 1;
    for (let from = 0; from + others < count; from++)
      if (sorted[from + others]! <= sorted[from]! * this.widest) return true;
    return false;
  }
}

/** Whether the areas are those of round holes of these diameters, in whatever units. */
export function isRound(area: LineStats, diameter: LineStats): boolean {
  const ratios: number[] = [];
  const sizes = new Set<number>();
  for (let at = 0; at < area.numbers.length; at++) {
    const [a, d] = [area.numbers[at]!, diameter.numbers[at]!];
    if (!(a > 0 && d > 0)) continue;
    ratios.push(a / d ** 2);
    sizes.add(d);
  }
  if (ratios.length < 3 || sizes.size < 2) return false;
  const middle = Float64Array.from(ratios).sort()[Math.floor(ratios.length / 2)]!;
  return (
    ratios.filter((ratio) => Math.abs(ratio / middle - 1) < 0.02).length >= ratios.length * 0.8
  );
}
