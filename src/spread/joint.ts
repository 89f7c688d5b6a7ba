import { InputError } from "../cells";
import type { Correlation, Input } from "./budget";

interface Known {
  readonly symbol: string;
  readonly label: string;
  readonly value: number;
  readonly u: number;
  readonly dof: number;
}

/** The spreads of all inputs in one list, and how they are tied by correlations. */
export class Joint {
  readonly spreads: readonly Known[];
  /** By spread: the others it is correlated with, and how. */
  private readonly ties: ReadonlyMap<number, number>[];

  constructor(inputs: Readonly<Record<string, Input>>, correlations: readonly Correlation[]) {
    this.spreads = Object.entries(inputs).flatMap(([symbol, { value, spreads = [] }]) =>
      spreads.map(({ label, u, dof = Infinity }) => {
        if (u < 0) throw new InputError(`${label}: a spread of ${u} is below 0`);
        if (dof < 1) throw new RangeError(`${label}: ${dof} degrees of freedom are below 1`);
        return { symbol, label, value, u, dof };
      }),
    );
    const ties = this.spreads.map(() => new Map<number, number>());
    for (const { between, r } of correlations) {
      const [a, b] = [this.find(between[0]), this.find(between[1])];
      if (!(Math.abs(r) <= 1) || a === b)
        throw new RangeError(
          `correlation ${r} between ${between.join(" and ")}: give one from −1 to 1 between two spreads`,
        );
      ties[a]?.set(b, r);
      ties[b]?.set(a, r);
    }
    this.ties = ties;
  }

  private find(label: string): number {
    const labels = this.spreads.map((spread) => spread.label);
    const at = labels.indexOf(label);
    if (at < 0)
      throw new RangeError(`no spread is labelled "${label}": there are ${labels.join(", ")}`);
    if (labels.indexOf(label, at + 1) >= 0)
      throw new RangeError(
        `two spreads are labelled "${label}": tell them apart to correlate them`,
      );
    return at;
  }

  /** What each spread does to a result with these slopes: slope · u, with its sign. */
  effects(slopeBy: ReadonlyMap<string, number>): number[] {
    // A spread of 0 does nothing, even where the slope is infinite.
    return this.spreads.map(({ symbol, u }) => (u === 0 ? 0 : (slopeBy.get(symbol) ?? 0) * u));
  }

  /** Effect `i` with what is tied to it: Σ r·effect. */
  tied(effects: readonly number[], i: number): number {
    let total = effects[i] as number;
    for (const [j, r] of this.ties[i] ?? []) total += r * (effects[j] as number);
    return total;
  }

  /** The variance of a result, from what the spreads do to it. */
  variance(effects: readonly number[]): number {
    let total = 0;
    let size = 0;
    effects.forEach((effect, i) => {
      total += effect * this.tied(effects, i);
      size += effect * effect;
    });
    // Full correlation may leave some last digits below 0; more than that is no correlation matrix.
    if (total >= 0 || Number.isNaN(total)) return total;
    if (total < -1e-9 * size) throw new RangeError("the correlations contradict one another");
    return 0;
  }

  /** Effective degrees of freedom of a result: u⁴ / Σ (variance²/dof) over what is tied together. */
  freedom(effects: readonly number[], u: number): number {
    const left = new Set(effects.keys());
    let sum = 0;
    for (const first of left) {
      let variance = 0;
      let dof = Infinity;
      const group = [first];
      for (const i of group) {
        if (!left.delete(i)) continue;
        const effect = effects[i] as number;
        if (effect === 0) continue;
        variance += effect * this.tied(effects, i);
        dof = Math.min(dof, this.spreads[i]?.dof ?? Infinity);
        group.push(...(this.ties[i]?.keys() ?? []));
      }
      // In shares of the whole, so that neither large nor small units over- or underflow.
      if (variance !== 0) sum += (variance / (u * u)) ** 2 / dof;
    }
    return sum === 0 ? Infinity : 1 / sum;
  }
}
