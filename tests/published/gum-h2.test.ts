import { describe, expect, it } from "vitest";
import { propagate, repeats } from "../../src/spread";
import { formulaOf } from "../spread/formula";

/**
 * JCGM 100:2008 (GUM), H.2, resistance, reactance and impedance measured at once (two sources: the
 * data in an open uncertainty calculator's tests; the results recomputed). V, A and radians.
 */
const V = [5.007, 4.994, 5.005, 4.99, 4.999];
const I = [19.663, 19.639, 19.64, 19.685, 19.678].map((mA) => mA / 1000);
const phi = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];

/** Formula texts know no cosine: twelve terms of its series are exact to 1e-16 at 1 rad. */
function series(first: 0 | 1): string {
  let factorial = 1;
  const terms: string[] = [];
  for (let n = 0, sign = ""; n < 24; n++) {
    if (n > 0) factorial *= n;
    if (n % 2 !== first) continue;
    terms.push(`${sign}phi ^ ${n} / ${factorial}`);
    sign = sign === "" || sign === " + " ? " - " : " + ";
  }
  return terms.join("");
}
const symbols = ["V", "I", "phi"];
const results = [
  formulaOf("resistance", "V / I * c", symbols, [["c", series(0)]]),
  formulaOf("reactance", "V / I * s", symbols, [["s", series(1)]]),
  formulaOf("impedance", "V / I", ["V", "I"]),
];

const means = { V: repeats(V), I: repeats(I), phi: repeats(phi) };
const inputs = Object.fromEntries(
  Object.entries(means).map(([label, { mean, u, dof }]) => [
    label,
    { value: mean, spreads: [{ label, u, dof }] },
  ]),
);

function correlation(a: readonly number[], b: readonly number[]): number {
  const [ma, mb] = [repeats(a).mean, repeats(b).mean];
  const products = a.map((x, i) => (x - ma) * ((b[i] as number) - mb));
  const sum = products.reduce((total, each) => total + each, 0);
  return sum / (a.length - 1) / (repeats(a).s * repeats(b).s);
}

const full = [correlation(V, I), correlation(V, phi), correlation(I, phi)] as const;
const ties = ([vi, vp, ip]: readonly [number, number, number]) =>
  [
    { between: ["V", "I"], r: vi },
    { between: ["V", "phi"], r: vp },
    { between: ["I", "phi"], r: ip },
  ] as const;

const budgetsWith = (correlations: ReturnType<typeof ties>) =>
  results.map((formula) => propagate(formula, inputs, correlations));

describe("GUM H.2, three results of the same readings", () => {
  it("has the published means, uncertainties and correlations of the inputs", () => {
    expect(means.V.mean).toBeCloseTo(4.999, 12);
    expect(means.I.mean * 1000).toBeCloseTo(19.661, 12);
    expect(means.phi.mean).toBeCloseTo(1.04446, 12);
    expect(means.V.u).toBeCloseTo(0.0032094, 7);
    expect(means.I.u * 1000).toBeCloseTo(0.009471, 6);
    expect(means.phi.u).toBeCloseTo(0.00075206, 8);
    expect(full).toEqual([-0.35531, 0.85762, -0.64511].map((r) => expect.closeTo(r, 5)));
  });

  it("gives the results to all digits from the unrounded correlations", () => {
    const budgets = budgetsWith(ties(full));
    expect(budgets.map(({ value }) => value)).toEqual(
      [127.73217, 219.84651, 254.2597].map((value) => expect.closeTo(value, 5)),
    );
    expect(budgets.map(({ u }) => u)).toEqual(
      [0.07107, 0.29558, 0.23634].map((u) => expect.closeTo(u, 5)),
    );
    // Five readings behind every input: four degrees of freedom behind every result.
    for (const { dof } of budgets) expect(dof).toBeCloseTo(4, 10);
  });

  it("gives the printed 0.070 for R only where the correlations are rounded first", () => {
    const rounded = budgetsWith(ties([-0.36, 0.86, -0.65]));
    expect(rounded[0]?.u).toBeCloseTo(0.07, 3);
    expect(rounded[1]?.u.toFixed(2)).toBe("0.30");
    expect(budgetsWith(ties(full))[0]?.u.toFixed(3)).toBe("0.071");
  });
});
