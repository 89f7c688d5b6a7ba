import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { call, column, isProblem } from "./call";
import { contracts, numberArguments, rowArguments, soundArguments, withCell } from "./contract";

const blanks = [null, undefined, "", "   "];
const hostError = { code: "#DIV/0!", message: "from a cell" };

describe("a blank cell", () => {
  it.each(rowArguments)(
    "in %s's %s does what the contract says, and is never 0",
    (id, name, contract, argument) => {
      const sound = call(id, ...soundArguments(contract));
      for (const blank of blanks) {
        const result = call(id, ...soundArguments(contract, withCell(argument, 1, blank)));
        expect([result[0], result[2]]).toEqual([sound[0], sound[2]]);
        for (const cell of result[1] ?? []) {
          if (argument.blank === "as if left out") {
            expect(isProblem(cell)).toBe(false);
            expect(cell).not.toBe("");
          } else if (argument.blank.startsWith("#")) {
            expect(cell).toMatchObject({ code: argument.blank });
            expect((cell as { message: string }).message).not.toBe("");
          } else expect(cell).toBe(argument.blank);
          if (argument.blank === "#N/A")
            expect((cell as { message: string }).message).toMatch(/is blank/);
        }
        expect(name).toBe(argument.name);
      }
    },
  );

  const filledIn = contracts.filter(({ table }) => !table);
  it.each(filledIn.map((contract) => [contract.id, contract] as const))(
    "in every argument of %s gives a blank row: a row not yet filled in",
    (id, contract) => {
      const nothing = contract.arguments.map((argument) =>
        argument.role === "list"
          ? argument.good.map((cell) => [cell])
          : argument.optional
            ? null
            : "",
      );
      for (const cell of call(id, ...nothing).flat()) expect(cell).toBe("");
    },
  );

  it("as the area beside a pressure is missing, and beside no pressure is nothing yet", () => {
    const result = call("FLOW", column("", ""), column(4, ""));
    expect(result[0]?.[0]).toMatchObject({ code: "#N/A", message: "area is blank" });
    expect(result[1]?.[0]).toBe("");
  });
});

describe("text where a number goes", () => {
  it.each(numberArguments)(
    "in %s's %s spoils its cell, says text, and how to mend it",
    (id, name, contract, argument) => {
      const sound = call(id, ...soundArguments(contract));
      for (const text of ["24 in", "24", "n/a"]) {
        const result = call(id, ...soundArguments(contract, withCell(argument, 1, text)));
        expect([result[0], result[2]]).toEqual([sound[0], sound[2]]);
        for (const cell of result[1] ?? [])
          expect(cell).toMatchObject({
            code: "#VALUE!",
            message: `${name} "${text}" is text: type it as a number`,
          });
      }
    },
  );
});

describe("a number that cannot be meant", () => {
  const wrong = numberArguments.flatMap(([id, name, contract, argument]) =>
    (argument.wrong ?? []).map(
      ([value, word]) => [id, name, value, word, contract, argument] as const,
    ),
  );

  it.each(wrong)(
    "in %s's %s, %d, is refused with a message about it",
    (id, name, value, word, contract, argument) => {
      const sound = call(id, ...soundArguments(contract));
      const result = call(id, ...soundArguments(contract, withCell(argument, 1, value)));
      expect([result[0], result[2]]).toEqual([sound[0], sound[2]]);
      for (const cell of result[1] ?? []) {
        expect(cell).toMatchObject({ code: "#VALUE!" });
        const { message } = cell as { message: string };
        expect(message).toContain(word);
        expect(message).toContain(String(value));
      }
      expect(name).toBe(argument.name);
    },
  );
});

describe("a value that is no number", () => {
  it.each(numberArguments)(
    "in %s's %s is refused, in a range and alone",
    (id, name, contract, argument) => {
      for (const value of [
        true,
        false,
        Number.NaN,
        Number.POSITIVE_INFINITY,
        Number.NEGATIVE_INFINITY,
      ]) {
        const inRange = call(id, ...soundArguments(contract, withCell(argument, 1, value)));
        const alone = call(
          id,
          ...soundArguments(contract, (each, cells) =>
            each.role === "list"
              ? cells.map((cell) => [cell])
              : each === argument
                ? value
                : cells[0],
          ),
        );
        for (const cell of [...(inRange[1] ?? []), ...alone.flat()])
          expect(cell).toMatchObject({
            code: "#VALUE!",
            message: `${name} ${value} is not a number`,
          });
      }
    },
  );
});

describe("an error value", () => {
  it.each(rowArguments)("in %s's %s spoils only its own row", (id, _name, contract, argument) => {
    const sound = call(id, ...soundArguments(contract));
    const result = call(id, ...soundArguments(contract, withCell(argument, 1, hostError)));
    expect([result[0], result[2]]).toEqual([sound[0], sound[2]]);
    for (const cell of result[1] ?? []) {
      expect(isProblem(cell)).toBe(true);
      expect(cell).toMatchObject(hostError);
    }
  });

  it("in a list of openings spoils only what uses that opening", () => {
    const labels = column("A", "B", "C");
    for (const bad of [hostError, "12 in²", -12, 0, true, "", null]) {
      const open = call("OPEN_AREA", column("A", "B", "A+B", "A+C"), labels, column(4, bad, 24));
      expect([open[0], open[3]]).toEqual([[4], [28]]);
      for (const r of [1, 2])
        expect(open[r]?.[0]).toMatchObject({
          code: "#VALUE!",
          message: "opening B has no area above 0 in the list: type it there as a number",
        });
      const next = call("NEXT_OPENING", column(16, 9), column(12, 4), labels, column(4, bad, 24));
      expect(next).toEqual([["C"], ["A"]].map(([label], i) => [i === 0 ? label : nextWithout()]));
    }
    expect(call("OPEN_AREA", "A", column(hostError, "A"), column(4, 5))).toEqual([[5]]);

    // 9 Pa at 4 in² is 12 cfm·√: 4 gives 9, 24 gives 0.25 Pa: none is in range, 4 is nearest.
    function nextWithout(): string {
      return "none in range, nearest A";
    }
  });
});

describe("results that are no number", () => {
  it.each([
    ["ROUND_AREA", [1e200]],
    ["RECT_AREA", [1e200, 1e200]],
    ["AREA_FOR", [1e308, 1e-300]],
    ["DIAMETER_FOR", [1e308, 1e-300]],
    ["FLOW", [1e308, 8]],
    ["BOX_PRESSURE", [1e-300, 1e300]],
    ["REACH", [1e308, 1e10]],
    ["ROOM_RATE", ["62.2-2016", "kitchen", "continuous", 1e308, null, "yes"]],
    ["OPEN_AREA", ["A+B", column("A", "B"), column(1.7e308, 1.7e308)]],
  ] as const)("of %s become errors that say so, as a NaN would show as 0", (id, args) => {
    for (const cell of call(id, ...args).flat())
      expect(cell).toMatchObject({
        code: "#VALUE!",
        message: expect.stringContaining("not a number"),
      });
  });
});

describe("one bad cell", () => {
  it("anywhere never changes the result of another row", () => {
    const anyBad = fc.constantFrom<unknown>(
      null,
      "",
      "text",
      true,
      Number.NaN,
      Number.POSITIVE_INFINITY,
      -1,
      0,
      hostError,
    );
    const anyArgument = fc.constantFrom(...rowArguments);
    fc.assert(
      fc.property(anyArgument, fc.nat(2), anyBad, ([id, , contract, argument], row, bad) => {
        const sound = call(id, ...soundArguments(contract));
        const result = call(id, ...soundArguments(contract, withCell(argument, row, bad)));
        for (const other of [0, 1, 2])
          if (other !== row) expect(result[other]).toEqual(sound[other]);
      }),
      { seed: 3, numRuns: 500 },
    );
  });
});
