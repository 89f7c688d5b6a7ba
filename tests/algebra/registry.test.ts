import { describe, expect, it } from "vitest";
import { columns, oneValue, parseText } from "../../src/algebra";
import { symbolsOf } from "../../src/algebra/expression";
import { formulas, unitIn } from "../../src/formulas";
import { exampleOf } from "./examples";

const marks = ["read", "two sources", "from memory", "common practice", "by definition"];
const usedIn = (text: string) => symbolsOf(parseText(text));

describe("the registry of formulas", () => {
  it("holds formulas", () => {
    expect(formulas.length).toBeGreaterThan(20);
  });

  it("gives every formula an id of its own", () => {
    const ids = formulas.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
  });
});

describe.each(formulas.map((formula) => [formula.id, formula] as const))("%s", (_, formula) => {
  const steps = formula.steps ?? [];
  const symbolNames = formula.symbols.map(({ name }) => name);

  it("uses only symbols it declares, and steps only after they are made", () => {
    const known = new Set(symbolNames);
    for (const step of steps) {
      for (const name of usedIn(step.text))
        expect(known, `${step.name} uses ${name}`).toContain(name);
      known.add(step.name);
    }
    for (const name of usedIn(formula.text)) expect(known).toContain(name);
  });

  it("uses every symbol and step it declares", () => {
    const used = new Set(
      [formula.text, ...steps.map(({ text }) => text)].flatMap((t) => [...usedIn(t)]),
    );
    for (const name of [...symbolNames, ...steps.map((step) => step.name)])
      expect(used).toContain(name);
  });

  it("declares no name twice, neither as it is written nor as it is shown", () => {
    const all = [...formula.symbols, ...steps];
    expect(new Set(all.map(({ name }) => name)).size).toBe(all.length);
    expect(new Set(all.map(({ shown }) => shown)).size).toBe(all.length);
  });

  it("says what it gives, in which unit, where it is valid and where it comes from", () => {
    expect(formula.title).not.toBe("");
    expect(formula.validity).not.toBe("");
    expect(formula.source.work).not.toBe("");
    expect(marks).toContain(formula.source.mark);
    for (const { meaning, unit, shown } of [formula.result, ...formula.symbols, ...steps]) {
      expect(meaning).not.toBe("");
      expect(shown).not.toBe("");
      expect(unitIn(unit, "ip")).not.toBe("");
      expect(unitIn(unit, "si")).not.toBe("");
    }
  });

  it("names a clause, unless it follows from a definition", () => {
    if (formula.source.mark !== "by definition") expect(formula.source.clause).not.toBe("");
  });

  it("states a valid range for each symbol, low below high, and finite", () => {
    for (const { valid } of formula.symbols) {
      expect(valid[0]).toBeLessThan(valid[1]);
      expect(valid.every(Number.isFinite)).toBe(true);
    }
  });

  it("gives the number of its worked example to the digits the example states", () => {
    const { given, gives, digits } = exampleOf(formula);
    expect(Object.keys(given).sort()).toEqual([...symbolNames].sort());
    // Half a unit of the last stated digit: the example is a rounded number.
    expect(Math.abs(oneValue(formula, given) - gives)).toBeLessThanOrEqual(
      0.5 * 10 ** -digits + 1e-12,
    );
  });

  it("works its example inside the valid range of every symbol", () => {
    for (const { name, valid } of formula.symbols) {
      const value = exampleOf(formula).given[name] as number;
      expect(value, name).toBeGreaterThanOrEqual(valid[0]);
      expect(value, name).toBeLessThanOrEqual(valid[1]);
    }
  });

  it.each(symbolNames)("gives NaN, not a number, where %s is not known", (name) => {
    const inputs = { ...exampleOf(formula).given, [name]: Number.NaN };
    expect(oneValue(formula, inputs)).toBeNaN();
    const mixed = columns(
      formula,
      {
        ...exampleOf(formula).given,
        [name]: Float64Array.of(
          Number.NaN,
          inputs[name] as number,
          exampleOf(formula).given[name] as number,
        ),
      },
      3,
    );
    expect([mixed[0], mixed[1]]).toEqual([Number.NaN, Number.NaN]);
    expect(mixed[2]).toBe(oneValue(formula, exampleOf(formula).given));
  });
});
