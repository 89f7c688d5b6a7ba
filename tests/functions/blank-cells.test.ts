// A blank cell reaches a function as 0, null or "" by the version of Excel (office-js issues 1951,
// 4702 and 5262): wherever 0 can never be meant, the three have one outcome.
import { describe, expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import { call, cellOf, column, isProblem, type Matrix } from "./call";
import { type Argument, contracts, rowArguments, soundArguments, withCell } from "./contract";

/** The code of an error, since its message may tell 0 from a blank; any other cell as it is. */
const outcome = (cell: unknown) => (isProblem(cell) ? cell.code : cell);
const outcomes = (result: Matrix) => result.map((row) => row.map(outcome));

const neverZero = rowArguments.filter(([, , , { zero }]) => zero === "as blank");
// WORKING leaves its text blank until all is there.
const told = rowArguments.filter(([id, , , { zero }]) => zero === "told" && id !== "WORKING");

describe("a blank cell as 0, as null and as an empty text", () => {
  it.each(neverZero)("has one outcome in %s's %s", (id, _name, contract, argument) => {
    const given = (blank: unknown) =>
      outcomes(call(id, ...soundArguments(contract, withCell(argument, 1, blank))));
    const asText = given("");
    for (const blank of [0, -0, null, undefined, "  "]) expect(given(blank)).toEqual(asText);
  });

  it.each(told)(
    "is told as 0 or blank in %s's %s where it is 0",
    (id, _name, contract, argument) => {
      const result = call(id, ...soundArguments(contract, withCell(argument, 1, 0)));
      for (const cell of result[1] ?? [])
        expect(cell).toMatchObject({
          code: "#N/A",
          message: expect.stringContaining("0 or blank"),
        });
    },
  );

  const units = contracts.filter(({ arguments: all }) => all.some(({ role }) => role === "units"));
  it.each(units.map((contract) => [contract.id, contract] as const))(
    "has one outcome in the units of %s",
    (id, contract) => {
      const given = (units: unknown) =>
        call(
          id,
          ...contract.arguments.map(({ role, good }) => (role === "units" ? units : good[0])),
        );
      const lists = contract.arguments.some(({ role }) => role === "list");
      if (lists) return;
      for (const blank of [0, "", [[0]], [[null]]]) expect(given(blank)).toEqual(given(null));
    },
  );

  it("is passed over among openings, repeats, ratings and pairs", () => {
    const openings = (blank: unknown) =>
      call("OPEN_AREA", "A+C", column("A", blank, "C"), column(4, blank, 24));
    const ratings = (blank: unknown) => call("FAN_SIZE", 50, 10, column(110, blank, 80));
    const repeats = (blank: unknown) =>
      call("FLOW_SPREAD", [[4, blank, 4.2]], 24, 0.2, 1.07, 2, 1, 0.25);
    const pairs = (blank: unknown) =>
      call("PAIR_CONSTANT", column(12, blank, 24), column(4, blank, 4), column(25.5, blank, 52));
    for (const each of [openings, ratings, repeats, pairs])
      for (const blank of [0, null]) expect(each(blank)).toEqual(each(""));
  });
});

describe("an object in a cell", () => {
  const cell = (passed: unknown) => cellOf("FLOW", [[passed]], 4);

  it("is the value in it where it carries one", () => {
    const formatted = { type: "FormattedNumber", basicType: "Double", basicValue: 24 };
    expect(cell(formatted)).toBe(cellOf("FLOW", 24, 4));
    const named = { type: "String", basicValue: "62.2-2016" };
    expect(cellOf("ROOM_RATE", [[named]], "bathroom", "on demand")).toBe(50);
  });

  it("is an error only if it says so, and comes back as an error of ours", () => {
    for (const error of [
      { code: "#DIV/0!", message: "from a cell" },
      { error: "#DIV/0!" },
      { type: "Error", basicType: "Error", basicValue: "#DIV/0!" },
    ]) {
      const found = cell(error);
      expect(found).toMatchObject({ code: "#DIV/0!" });
      expect(found).not.toBe(error);
    }
    expect(cell({ code: "#BUSY!", message: "" })).toMatchObject({ code: "#N/A" });
  });

  it("is refused where it is neither, and never handed back", () => {
    for (const odd of [{}, { a: 1 }, { basicValue: {} }, new Map(), () => 1, Symbol("x")])
      expect(cell(odd)).toMatchObject({
        code: "#VALUE!",
        message: expect.stringContaining("area is neither a number nor a text"),
      });
  });
});

describe("what comes out", () => {
  const everyArgument = worksheetFunctions.flatMap(({ id }) =>
    (contracts.find((each) => each.id === id)?.arguments ?? []).map(
      (argument) => [id, argument] as const,
    ),
  );
  const values = [0, -0, 1e308, -1e308, 5e-324, 1e-200, 1e200, -1, 0.5, true, "", "x", null, {}];

  it.each(everyArgument.map(([id, argument]) => [id, argument.name, argument] as const))(
    "of %s is a number, a text or an error, whatever stands in %s",
    (id, _name, argument: Argument) => {
      const contract = contracts.find((each) => each.id === id);
      if (!contract) return;
      for (const value of values) {
        const args = soundArguments(contract, (each, cells) =>
          each === argument && each.role !== "units"
            ? column(value, ...cells.slice(1))
            : each.role === "units"
              ? "ip"
              : cells.map((cell) => [cell]),
        );
        let cells: unknown[];
        try {
          cells = call(id, ...args).flat();
        } catch (problem) {
          cells = [problem];
        }
        for (const cell of cells) {
          if (isProblem(cell)) expect(cell.code).toMatch(/^#/);
          else if (typeof cell === "number") {
            expect(Number.isFinite(cell)).toBe(true);
            expect(Object.is(cell, -0)).toBe(false);
          } else expect(typeof cell).toBe("string");
        }
      }
    },
  );
});

describe("a large list of openings", () => {
  it("of a whole column is searched at once", () => {
    const labels = Array.from({ length: 1_048_576 }, (_, i) => [`L${i}`]);
    const areas = Array.from({ length: 1_048_576 }, (_, i) => [1 + (i % 5000) / 100]);
    const start = performance.now();
    // 16 Pa at 12 in² asks for 24 in²: an opening of 24 is there, the first of them 2300.
    expect(cellOf("NEXT_OPENING", 16, 12, labels, areas)).toBe("L2300");
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});

describe("repeats beside a range of several columns", () => {
  it("cross with it: each cell of the row with the repeats of its own row", () => {
    const readings = [
      [4, 4.2],
      [2, 2.2],
    ];
    const areas = [
      [12, 24],
      [36, 48],
    ];
    const spread = (r: number, area: number) =>
      call("FLOW_SPREAD", [readings[r]], area, 0.2, 1.07, 2, 1, 0.25)[0];
    expect(call("FLOW_SPREAD", readings, areas, 0.2, 1.07, 2, 1, 0.25)).toEqual([
      spread(0, 12),
      spread(0, 24),
      spread(1, 36),
      spread(1, 48),
    ]);
  });
});
