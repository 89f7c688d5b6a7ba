import { oneValue, slopes } from "../algebra";
import type { Formula } from "../formulas";
import type { Budget, Correlation, Input, Line } from "./budget";
import { Joint } from "./joint";
import { coverage, usualChance } from "./student";

type Inputs = Readonly<Record<string, Input>>;

/**
 * The law of propagation of uncertainty (JCGM 100:2008, 5.1.2 and 5.2.2) over the slopes of a
 * formula: its value, and its spread to first order from the spreads of its inputs.
 *
 * `inputs` holds one entry for each symbol of the formula, in the units of the formula; several
 * spreads of one input add up as lines of their own with one slope. `correlations` names pairs of
 * spreads by label; what is not named is taken as independent. Second-order terms (5.1.2, note)
 * are not taken: they matter only where a slope is 0 and the formula bends.
 *
 * Effective degrees of freedom are those of Welch and Satterthwaite (G.4.1), which hold for
 * independent contributions. Contributions tied by correlations are first drawn together into one,
 * with its covariances, and the least degrees of freedom among them: exact where they share one
 * set of readings, cautious otherwise.
 *
 * Throws a RangeError where an input is missing, a spread is negative or has fewer than one degree
 * of freedom, or a correlation is out of −1 to 1, names a label there is not, or contradicts others.
 */
export function propagate(
  formula: Formula,
  inputs: Inputs,
  correlations: readonly Correlation[] = [],
  chance: number = usualChance,
): Budget {
  const joint = new Joint(inputs, correlations);
  const value = oneValue(formula, valuesOf(formula, inputs));
  const slopeBy = slopesOf(formula, inputs);
  const effects = joint.effects(slopeBy);
  const u = Math.sqrt(joint.variance(effects));
  const dof = joint.freedom(effects, u);
  const k = Number.isFinite(u) ? coverage(dof, chance) : Number.NaN;
  const quantity = new Map(formula.symbols.map((symbol) => [symbol.name, symbol]));
  const lines = joint.spreads.flatMap((spread, i): Line[] => {
    const symbol = quantity.get(spread.symbol);
    const effect = effects[i] as number;
    if (!symbol) return [];
    return [
      {
        symbol: spread.symbol,
        shown: symbol.shown,
        label: spread.label,
        value: spread.value,
        unit: symbol.unit,
        u: spread.u,
        dof: spread.dof,
        slope: slopeBy.get(spread.symbol) as number,
        contribution: Math.abs(effect),
        share: u === 0 ? 0 : (effect * joint.tied(effects, i)) / (u * u),
      },
    ];
  });
  const { shown, unit } = formula.result;
  return { formula: formula.id, shown, unit, value, lines, u, dof, chance, k, expanded: k * u };
}

function slopesOf(formula: Formula, inputs: Inputs): ReadonlyMap<string, number> {
  const values = valuesOf(formula, inputs);
  return new Map(
    formula.symbols
      .filter(({ name }) => (inputs[name]?.spreads ?? []).length > 0)
      .map(({ name }) => [name, slopes(formula, name, values, 1)[0] as number]),
  );
}

function valuesOf(formula: Formula, inputs: Inputs): Record<string, number> {
  const values: Record<string, number> = {};
  for (const { name } of formula.symbols) {
    const input = inputs[name];
    if (!input) throw new RangeError(`no input for the symbol ${name} of ${formula.id}`);
    values[name] = input.value;
  }
  return values;
}
