import { describe, expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import { InputError } from "../../src/cells";
import { callLines, callText, explainCall, isByRow, ruleFor } from "../../src/rules";
import { call, cellOf, column, isProblem, type Matrix } from "../functions/call";
import { contracts, soundArguments, withCell } from "../functions/contract";

/** They tell of other numbers and have no sum of their own. */
const withoutSum = ["WORKING", "EDITIONS"];
const summed = contracts.filter(({ id }) => !withoutSum.includes(id));
const labels = column("A", "B", "C");
const areas = column(4, 12, 24);

describe("the workings", () => {
  it.each(worksheetFunctions.map((entry) => [entry.id, entry] as const))(
    "know %s, with its arguments in their order",
    (id, { parameters }) => {
      const rule = ruleFor(id);
      expect(Object.keys(rule?.arguments ?? {})).toEqual(parameters.map(({ name }) => name));
      expect(rule?.title).not.toBe("");
    },
  );

  it.each(summed.map((contract) => [contract.id, contract] as const))(
    "of %s come to what the function itself gives, row by row",
    (id, contract) => {
      const args = soundArguments(contract);
      const result = call(id, ...args);
      result.forEach((cells, row) => {
        const { gives, problem } = explainCall(id, args, { row, col: 0 });
        expect(problem).toBeUndefined();
        expect(gives).toEqual(
          cells.map((cell) => (typeof cell === "number" ? expect.closeTo(cell, 9) : cell)),
        );
      });
    },
  );

  it.each(summed.map((contract) => [contract.id, contract] as const))(
    "of %s need no optional argument",
    (id, contract) => {
      const args = soundArguments(contract, (argument, cells) =>
        argument.optional ? null : cells.map((cell) => [cell]),
      );
      const result = call(id, ...args);
      result.forEach((cells, row) => {
        const { gives } = explainCall(id, args, { row, col: 0 });
        if (cells.every(isProblem)) expect(gives).toEqual([]);
        else
          expect(gives).toEqual(
            cells.map((cell) => (typeof cell === "number" ? expect.closeTo(cell, 9) : cell)),
          );
      });
    },
  );

  const bad = summed.flatMap((contract) =>
    contract.arguments
      .filter(({ role }) => role === "number")
      .flatMap((argument) =>
        [...(argument.wrong ?? []).map(([value]) => value), "24 in", true, Number.NaN].map(
          (value) => [contract.id, argument.name, value, contract, argument] as const,
        ),
      ),
  );

  it.each(bad)(
    "of %s refuse %s %j, as the function does",
    (id, _name, value, contract, argument) => {
      const args = soundArguments(contract, withCell(argument, 1, value));
      expect((call(id, ...args)[1] ?? []).every(isProblem)).toBe(true);
      const { gives, problem } = explainCall(id, args, { row: 1, col: 0 });
      expect(gives).toEqual([]);
      expect(problem).toBeInstanceOf(Error);
    },
  );

  it("pass on an error that stands in a cell", () => {
    const error = { code: "#DIV/0!" };
    const { problem } = explainCall("FLOW", [[[error]], 4]);
    expect(problem).toBeInstanceOf(InputError);
    expect(problem).toMatchObject({ reason: "unusable", message: "area holds #DIV/0!" });
    expect(cellOf("WORKING", "FLOW", [[error]], 4)).toMatchObject(error);
  });

  it("show the formula in symbols where a number is still missing", () => {
    const call = explainCall("FLOW", [24, ""]);
    expect(callLines(call)).toEqual(["Q = K · A · √ΔP"]);
    expect(call.problem).toMatchObject({ reason: "blank", message: "pressure is blank" });
  });

  it("say what stood in for arguments left out", () => {
    expect([...explainCall("REACH", [24]).stoodIn]).toEqual([
      ["constant", 1.07],
      ["low", 1],
      ["high", 8],
    ]);
  });
});

describe("the text of a call", () => {
  // The numbers: 1.07 · 24 · √4 = 51.36 by hand; the SI twin is 51.36 cfm of 154.838 cm².
  it("gives the formula in symbols, in numbers, the result with its unit, and the source", () => {
    expect(callText(explainCall("FLOW", [24, 4]))).toMatch(
      /^Q = K · A · √ΔP = 1\.07 · 24 · √4 = 51\.36 cfm — orifice equation .*ISO 5167-2:2003.*\(two sources\)$/,
    );
    expect(callText(explainCall("FLOW", [154.838, 4, null, "si"]))).toContain(" = 24.2392 L/s");
  });

  it("leaves a unit away that the call does not tell: inches or centimetres", () => {
    expect(callLines(explainCall("ROUND_AREA", [4.25]))).toEqual([
      "A = π / 4 · d² = π / 4 · 4.25² = 14.1863",
    ]);
  });

  it("gives each step of a formula its own line", () => {
    const lines = callLines(explainCall("AIR_DENSITY", [20, 50, 1013.25, null, "si"]));
    expect(lines[0]).toBe("T = t + 273.15 = 20 + 273.15 = 293.15 K");
    // ASHRAE Handbook of Fundamentals 2017, ch. 1, as the formula's own example: 1.198898 kg/m³.
    expect(lines.at(-1)).toMatch(/ = 1\.1989 kg\/m³$/);
  });

  it("names clause and mark of a rate that was looked up, and asks to verify what was recalled", () => {
    expect(callText(explainCall("ROOM_RATE", ["62.2-2016", "bathroom", "on demand"]))).toBe(
      "50 cfm, bathroom, on demand; a delivered flow: what is measured at the grille → 50 cfm — ASHRAE 62.2-2016, table 5.1 (two sources)",
    );
    expect(callText(explainCall("ROOM_RATE", ["62.2-2016", "kitchen", "on demand"]))).toContain(
      "(from memory, verify against your copy)",
    );
  });

  it("puts the symbols before a sum of a rule", () => {
    expect(callLines(explainCall("DWELLING_RATE", ["62.2-2016", 1800, 3]))).toEqual([
      "Q_req = a · A_floor + b · (N_br + 1) = 0.03 · 1800 + 7.5 · (3 + 1) = 84 cfm",
    ]);
    expect(callLines(explainCall("DWELLING_RATE", ["62.2-2016", 1800, 3, "table"]))).toEqual([
      "table row 4, column 3: 90",
      "→ 90 cfm",
    ]);
  });

  it("names the openings that make up an area, and the opening that comes next", () => {
    expect(callLines(explainCall("OPEN_AREA", ["A+C", labels, areas]))).toEqual([
      "A 4 + C 24 = 28",
    ]);
    expect(callLines(explainCall("NEXT_OPENING", [16, 12, labels, areas]))).toEqual([
      "ΔP₂ = ΔP · (A₁ / A₂)² = 16 · (12 / 24)² = 4 Pa",
      "C (24) comes nearest to 4 Pa by ratio",
      "→ C",
    ]);
  });

  it("judges by simple acceptance, or by a chance where a spread is given", () => {
    expect(callLines(explainCall("VERDICT", [49.6, 50]))).toEqual([
      "M = Q − Q_req = 49.6 − 50 = −0.4",
      "simple acceptance: no tolerance below the rate",
      "→ short",
    ]);
    expect(callLines(explainCall("VERDICT", [49.6, 50, null, 1.5])).at(-1)).toBe(
      "→ too close to call",
    );
  });

  it("lists the lines of a spread, whose parts of the variance add up to 100 %", () => {
    const args = [[[4, 4.2, 4.1]], 24, 0.3, 1.07, 3, 1, 0.25, 0.1];
    const { words, result } = explainCall("FLOW_SPREAD", args);
    const parts = words.flatMap((line) => /, ([\d.]+) % of the variance$/.exec(line)?.[1] ?? []);
    expect(parts).toHaveLength(5);
    expect(parts.reduce((sum, part) => sum + Number(part), 0)).toBeCloseTo(100, 0);
    expect(result).toMatch(/cfm, with \d+ degrees of freedom; ± [\d.]+ cfm at 95 %$/);
  });
});

describe("WORKING", () => {
  it.each(summed.map((contract) => [contract.id, contract] as const))(
    "gives for %s the very text of its working, a text a row",
    (id, contract) => {
      const args = soundArguments(contract);
      const texts = call("WORKING", id, ...args) as Matrix;
      const takes = Object.values(ruleFor(id)?.arguments ?? {});
      const takesRows = takes.some((each) => isByRow(each) || each.kind === "repeats");
      expect(texts).toHaveLength(takesRows ? 3 : 1);
      texts.forEach(([text], row) => {
        expect(text).toBe(callText(explainCall(id, args, { row, col: 0 })));
      });
    },
  );

  it("takes the name with or without the namespace, in any case", () => {
    const text = cellOf("WORKING", "FLOW", 24, 4);
    expect(cellOf("WORKING", "fanrow.flow", 24, 4)).toBe(text);
    expect(cellOf("WORKING", " Flow ", [[24]], [[4]])).toBe(text);
  });

  it("is blank until everything is typed", () => {
    expect(cellOf("WORKING", "", 24, 4)).toBe("");
    expect(cellOf("WORKING", "FLOW", 24, "")).toBe("");
    expect(cellOf("WORKING", "FLOW", 24)).toBe("");
  });
});
