import { describe, expect, it } from "vitest";
import { typeset } from "../../src/algebra";
import { type Formula, flowFromPressure, formulas, unitIn } from "../../src/formulas";
import { exampleOf } from "./examples";

const print = (text: string, given?: Record<string, number>) => {
  const names = ["x", "y", "z"];
  const formula: Formula = {
    ...flowFromPressure,
    result: { name: "r", shown: "r", meaning: "", unit: "1" },
    symbols: names.map((name) => ({ name, shown: name, meaning: "", unit: "1", valid: [0, 1] })),
    text,
  };
  const set = typeset(formula, "ip", given);
  return (given ? set.numbers : set.symbols).join("; ").replace("r = ", "");
};

describe.each(formulas.map((formula) => [formula.id, formula] as const))(
  "%s in print",
  (_, formula) => {
    const steps = formula.steps ?? [];

    it("shows every symbol and every step, each step on a line before the result", () => {
      const { symbols } = typeset(formula);
      expect(symbols).toHaveLength(steps.length + 1);
      steps.forEach((step, i) => {
        expect(symbols[i]?.startsWith(`${step.shown} = `)).toBe(true);
      });
      expect(symbols.at(-1)?.startsWith(`${formula.result.shown} = `)).toBe(true);
      const sums = symbols.map((line) => line.split(" = ")[1]).join(" ");
      for (const { shown } of [...formula.symbols, ...steps]) expect(sums).toContain(shown);
    });

    it.each(["ip", "si"] as const)("explains each symbol and step with its %s unit", (system) => {
      const { legend } = typeset(formula, system);
      [...formula.symbols, ...steps].forEach(({ shown, meaning, unit }, i) => {
        const text = unitIn(unit, system);
        expect(legend[i]).toBe(`${shown}  ${meaning}${text === "1" ? "" : `, ${text}`}`);
      });
    });

    it("fills in the numbers of a row and leaves no symbol standing", () => {
      const given = exampleOf(formula).given;
      const { numbers } = typeset(formula, "ip", given);
      expect(numbers).toHaveLength(steps.length + 1);
      const sums = numbers.map((line) => line.split(" = ")[1]).join(" ");
      const words = sums.replace(/\b(exp|ln|if|otherwise)\b|π/g, "");
      expect(words).not.toMatch(/\p{L}/u);
      for (const value of Object.values(given))
        expect(sums).toContain(String(Number(value.toPrecision(6))).replace("-", "−"));
    });
  },
);

describe("the typeset reader", () => {
  it.each([
    ["-x ^ 2", "−x²"],
    ["(-x) ^ 2", "(−x)²"],
    ["x ^ -2", "x^(−2)"],
    ["x ^ y ^ z", "x^(y^z)"],
    ["(x ^ y) ^ z", "(x^y)^z"],
    ["(x ^ 2) ^ 3", "(x²)³"],
    ["x ^ 0.7", "x⁰·⁷"],
    ["x - (y - z)", "x − (y − z)"],
    ["x - y - z", "x − y − z"],
    ["x / (y * z)", "x / (y · z)"],
    ["x / y / z", "x / y / z"],
    ["(x + y) * z", "(x + y) · z"],
    ["x * -y", "x · (−y)"],
    ["sqrt(x)", "√x"],
    ["sqrt(x + y)", "√(x + y)"],
    ["sqrt(x) ^ 2", "(√x)²"],
    ["sqrt(x ^ 2)", "√(x²)"],
    ["abs(x - y)", "|x − y|"],
    ["floor(x + 0.5)", "⌊x + 0.5⌋"],
    ["log(x) + exp(y)", "ln(x) + exp(y)"],
    ["x > y ? x : y", "x if x > y, otherwise y"],
    ["2 * (x >= y ? x : y)", "2 · (x if x ≥ y, otherwise y)"],
    ["1e-5 * x", "1·10⁻⁵ · x"],
    ["x / 1e-5", "x / (1·10⁻⁵)"],
    ["pi * x", "π · x"],
  ])("prints %s as %s", (text, printed) => {
    expect(print(text)).toBe(printed);
  });

  it("closes a negative number where a bare one would be misread", () => {
    expect(print("x ^ 2 - y * z", { x: -3, y: -2, z: 4 })).toBe("(−3)² − (−2) · 4");
    expect(print("x + sqrt(y)", { x: -3, y: -2, z: 4 })).toBe("−3 + √(−2)");
  });

  it("closes a power of ten where it is the base of a power", () => {
    expect(print("x ^ 2", { x: 2.5e-5, y: 0, z: 0 })).toBe("(2.5·10⁻⁵)²");
  });

  it("gives no numbers where none are given", () => {
    expect(typeset(flowFromPressure).numbers).toEqual([]);
  });
});
