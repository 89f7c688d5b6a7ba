import { beforeAll, describe, expect, it } from "vitest";
import { columns, plain } from "../../src/algebra";
import { type Formula, formulas } from "../../src/formulas";
import { type FlatCell, recalculated } from "./flat-workbook";
import { asColumns, randomPoints } from "./points";

const rowsEach = 8;

/** The formula in column A, its inputs from column B on. */
function sheetRow(formula: Formula, point: Record<string, number>, row: number): FlatCell[] {
  const letter = (i: number) => String.fromCharCode(66 + i);
  const references = Object.fromEntries(
    formula.symbols.map(({ name }, i) => [name, `${letter(i)}${row}`]),
  );
  return [
    { formula: plain(formula, references) },
    ...formula.symbols.map(({ name }) => point[name] as number),
  ];
}

describe("the plain reader against LibreOffice's recalculation", () => {
  const cases = formulas.map((formula) => ({ formula, points: randomPoints(formula, rowsEach) }));
  let shown: string[][] = [];

  beforeAll(() => {
    let row = 0;
    shown = recalculated(
      cases.flatMap(({ formula, points }) =>
        points.map((point) => sheetRow(formula, point, ++row)),
      ),
    );
  });

  it("gets every row back", () => {
    expect(shown).toHaveLength(formulas.length * rowsEach);
  });

  // 1e-9: the spreadsheet hands back 15 digits and computes its own powers and exponentials; any
  // fault in writing the formula is far larger.
  it.each(cases.map((entry, i) => [entry.formula.id, entry, i] as const))(
    "agrees for %s",
    (_, { formula, points }, at) => {
      const values = columns(formula, asColumns(formula, points), rowsEach);
      points.forEach((_point, i) => {
        const text = shown[at * rowsEach + i]?.[0] ?? "";
        expect(text).toMatch(/^-?[\d.]+(E[+-]?\d+)?$/);
        const expected = values[i] as number;
        expect(Math.abs(Number(text) - expected)).toBeLessThanOrEqual(1e-9 * Math.abs(expected));
      });
    },
  );

  it("computes a minus before a power, and a tower of powers, as the formula text means them", () => {
    const formula: Formula = {
      ...(formulas[0] as Formula),
      steps: [{ name: "s", shown: "s", meaning: "", unit: "1", text: "x - 5" }],
      text: "-x ^ 2 + 2 ^ x ^ 2 / 10 - s ^ 2",
    };
    const [row] = recalculated([[{ formula: plain(formula, { x: "B1" }) }, 3]]);
    expect(Number(row?.[0])).toBeCloseTo(-9 + 51.2 - 4, 12);
  });
});
