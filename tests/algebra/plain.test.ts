import { describe, expect, it } from "vitest";
import { plain } from "../../src/algebra";
import { type Formula, flowFromPressure, rangeCode } from "../../src/formulas";

const write = (text: string, steps: Record<string, string> = {}) => {
  const formula: Formula = {
    ...flowFromPressure,
    steps: Object.entries(steps).map(([name, step]) => ({
      name,
      shown: name,
      meaning: "",
      unit: "1",
      text: step,
    })),
    text,
  };
  return plain(formula, { x: "A1", y: "B1", z: "C1" });
};

describe("the plain reader", () => {
  it.each([
    // A spreadsheet reads -A1^2 as (-A1)^2: the negation must carry its own parentheses.
    ["-x ^ 2", "(-(A1^2))"],
    ["(-x) ^ 2", "(-A1)^2"],
    ["x ^ -2", "A1^(-2)"],
    ["x - -y", "A1-(-B1)"],
    ["-(x + y)", "(-(A1+B1))"],
    // A spreadsheet runs powers from the left.
    ["x ^ y ^ z", "A1^(B1^C1)"],
    ["(x ^ y) ^ z", "(A1^B1)^C1"],
    ["x - y - z", "A1-B1-C1"],
    ["x - (y - z)", "A1-(B1-C1)"],
    ["x / y / z", "A1/B1/C1"],
    ["x / (y * z)", "A1/(B1*C1)"],
    ["(x + y) * z", "(A1+B1)*C1"],
    ["x + y * z", "A1+B1*C1"],
    ["(x * y) ^ 2", "(A1*B1)^2"],
    ["pi * x", "PI()*A1"],
    ["sqrt(x + y)", "SQRT(A1+B1)"],
    ["log(x)", "LN(A1)"],
    ["exp(-x)", "EXP((-A1))"],
    ["abs(x - y)", "ABS(A1-B1)"],
    ["floor(x + 0.5)", "INT(A1+0.5)"],
    ["x > y ? x : y", "IF(A1>B1,A1,B1)"],
    ["x < 0 ? -2 : x <= y ? -1 : x >= z ? 1 : 0", "IF(A1<0,(-2),IF(A1<=B1,(-1),IF(A1>=C1,1,0)))"],
    ["2 * (x > y ? 1 : 0)", "2*IF(A1>B1,1,0)"],
    ["x * 1e-7", "A1*1E-7"],
    ["x * 1e6", "A1*1000000"],
    ["x * 0.1", "A1*0.1"],
  ])("writes %s as %s", (text, native) => {
    expect(write(text)).toBe(native);
  });

  it("puts each step in its place, inside parentheses", () => {
    expect(write("u * v", { u: "x + y", v: "u / z" })).toBe("(A1+B1)*((A1+B1)/C1)");
  });

  it("writes numbers and names as it is given them", () => {
    expect(plain(flowFromPressure, { K: "1.07", A: "Open_area", P: "$D$7" })).toBe(
      "1.07*Open_area*SQRT($D$7)",
    );
  });

  it("names the symbol that has no reference", () => {
    expect(() => plain(rangeCode, { P: "A1", low: "B1" })).toThrow(
      "no reference for the symbol high",
    );
  });
});
