import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellName } from "../../src/cells";
import { FormulaSyntaxError } from "../../src/sheet";
import { book, Desk, desk } from "./book";

const rows = 6;
const cols = 5;

const cell = fc.record({ row: fc.nat(rows - 1), col: fc.nat(cols - 1) });
const value = fc.oneof(
  fc.integer({ min: -50, max: 50 }),
  fc.constantFrom("", "x", "7", true),
  fc.constant(null),
);

/** A formula for a cell that reads only cells before it, so that nothing runs in a circle. */
const formula = (at: { row: number; col: number }) => {
  const place = at.row * cols + at.col;
  if (place === 0) return fc.constant("=1+1");
  const before = fc.nat(place - 1).map((n) => cellName(Math.floor(n / cols), n % cols));
  const above =
    at.row === 0 ? before : fc.nat(cols - 1).map((c) => `A1:${cellName(at.row - 1, c)}`);
  return fc
    .tuple(before, before, above, fc.nat(7))
    .map(
      ([a, b, range, kind]) =>
        [
          `=${a}+${b}`,
          `=IF(${a}>${b},${a},${b})`,
          `=SUM(${range})`,
          `=COUNTIF(${range},">0")`,
          `=IFERROR(${a}*${b},"bad")`,
          `=${a}&${b}`,
          `=MAX(${range})-${a}`,
          `=SUMPRODUCT((${range}=${a})*1)`,
        ][kind]!,
    );
};

const step = cell.chain((at) =>
  fc.oneof(
    value.map((content) => ({ at, content, isFormula: false })),
    formula(at).map((content) => ({ at, content, isFormula: true })),
  ),
);

describe("changing cells one by one", () => {
  it("gives what a full recalculation of the same workbook gives", () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 40 }), (steps) => {
        const own = desk({ A1: 1 });
        for (const { at, content, isFormula } of steps) {
          if (isFormula) own.model.enter("Main", at.row, at.col, String(content));
          else own.model.set("Main", at.row, at.col, content);
        }
        const incremental = own.values("A1:J12");
        // The stored values are spoilt first, so that only recalculation can restore them.
        const fresh = new Desk(own.workbook);
        const sheet = own.workbook.sheet("Main")!;
        for (const { row, col, formula, arrayRef } of [...sheet.cells()])
          if (formula !== null && arrayRef === null) sheet.setFormula(row, col, formula, "spoilt");
        fresh.model.recalculateAll();
        expect(fresh.values("A1:J12")).toEqual(incremental);
      }),
      { numRuns: 150, seed: 20 },
    );
  });

  it("survives random formula text: every cell keeps a value and nothing is thrown", () => {
    const piece = fc.constantFrom(
      "A1",
      "B$2",
      "A1:B2",
      "(",
      ")",
      "+",
      "-",
      "*",
      "^",
      "%",
      "&",
      "=",
      "<>",
      ",",
      " ",
      "1",
      '"t"',
      "SUM(",
      "IF(",
      "INDEX(",
      "MATCH(",
      "@",
      "#",
      "{1,2}",
      "TRUE",
      "LET(",
      "x",
      "A:A",
      "ROW(",
      "LEFT(",
    );
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 9 }), (pieces) => {
        const own = new Desk(
          book({ A1: 1, B2: 2, D4: { formula: `1*${pieces.join("")}`, value: 42 } }),
        );
        own.model.recalculateAll();
        const listed = own.model.unsupported().length > 0;
        if (listed) expect(own.value("D4")).toBe(42);
        else expect(own.value("D4")).not.toBeNull();
        try {
          own.type("E5", `=${pieces.join("")}`);
        } catch (problem) {
          expect(problem).toBeInstanceOf(FormulaSyntaxError);
          expect(own.value("E5")).toBeNull();
        }
      }),
      { numRuns: 400, seed: 21 },
    );
  });
});
