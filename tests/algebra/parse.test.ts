import { describe, expect, it } from "vitest";
import { parseText } from "../../src/algebra";
import { formulas } from "../../src/formulas";

describe("the parser of formula texts", () => {
  it.each([
    ["an assignment", "x = 2"],
    ["a function definition", "f(x) = x ^ 2"],
    ["several statements", "x; y"],
    ["a text", '"abc"'],
    ["a text of digits", '"5"'],
    ["an index", "x[1]"],
    ["a property", "x.y"],
    ["a function of a property", "x.sqrt(4)"],
    ["a list", "[1, 2]"],
    ["an object", "{a: 1}"],
    ["a range", "1:3"],
    ["an unknown function", "sin(x)"],
    ["a function that could run text", 'evaluate("1")'],
    ["a function with too many arguments", "sqrt(x, 2)"],
    ["a function with no argument", "sqrt()"],
    ["a logarithm to another base", "log(x, 10)"],
    ["a number with a unit", "5 cm"],
    ["a conversion", "x to cm"],
    ["a forgotten times sign", "2 x"],
    ["two brackets side by side", "(x)(y)"],
    ["a factorial", "x!"],
    ["a remainder", "x % 2"],
    ["a transpose", "x'"],
    ["an elementwise product", "x .* y"],
    ["a logical word", "x and y"],
    ["a negation in words", "not x"],
    ["an equality, which rounding makes a trap", "x == y"],
    ["a chain of comparisons", "1 < x < 2"],
    ["a plus sign in front", "+x"],
    ["a bit operation", "x | y"],
    ["nothing", ""],
  ])("refuses %s", (_, text) => {
    expect(() => parseText(text)).toThrow(/formula text may not/);
  });

  it.each(["true", "null", "Infinity", "NaN"])("takes %s for a name, which none may be", (name) => {
    expect(parseText(name)).toEqual({ kind: "symbol", name });
    expect(formulas.flatMap(({ symbols }) => symbols).some((each) => each.name === name)).toBe(
      false,
    );
  });

  it("throws on a text that is no formula at all", () => {
    expect(() => parseText("x +")).toThrow();
    expect(() => parseText("(x")).toThrow();
  });

  it("reads pi as a number", () => {
    expect(parseText("pi")).toEqual({ kind: "number", value: Math.PI });
  });

  it("binds a minus sign in front more weakly than a power", () => {
    expect(parseText("-x ^ 2").kind).toBe("negate");
  });

  it("reads a tower of powers from the right", () => {
    const tree = parseText("a ^ b ^ c");
    expect(tree).toMatchObject({ kind: "binary", left: { name: "a" }, right: { kind: "binary" } });
  });

  it("leaves parentheses out of the tree", () => {
    expect(parseText("((x))")).toEqual({ kind: "symbol", name: "x" });
  });
});
