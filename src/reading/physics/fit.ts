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

/** How well flow = constant × hole^power × √|pressure| holds over the rows; without a hole, flow over √|pressure|. */
export function lawFit(
  flow: LineStats,
  pressure: LineStats,
  hole: LineStats | undefined,
  power: number,
): Fit | undefined {
  const step = Math.max(1, Math.floor(flow.numbers.length / mostRows));
  const ratios: number[] = [];
  const allowed: number[] = [];
  const sets: number[] = [];
  const pressures: number[] = [];
  let flows = 0;
  for (let at = 0; at < flow.numbers.length; at += step) {
    const f = flow.numbers[at]!;
    const p = Math.abs(pressure.numbers[at]!);
    const a = hole ? hole.numbers[at]! : 1;
    if (f > 0) flows++;
    if (!(f > 0 && p > 0 && a > 0)) continue;
    ratios.push(f / ((power === 2 ? a * a : a) * Math.sqrt(p)));
    allowed.push(Math.max(strays, (Number.isInteger(f) ? 0.51 : 0.06) / f));
    sets.push(f * 7919 + p * 31 + a);
    pressures.push(p);
  }
  if (ratios.length < 3) return undefined;
  const constant = Float64Array.from(ratios).sort()[Math.floor(ratios.length / 2)]!;
  const fits = (_: number, at: number) => Math.abs(ratios[at]! / constant - 1) <= allowed[at]!;
  return {
    share: ratios.filter(fits).length / ratios.length,
    covered: ratios.length / flows,
    constant,
    different: new Set(sets.filter(fits)).size,
    pressures: new Set(pressures.filter(fits)).size,
  };
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
