import { describe, expect, it } from "vitest";
import type { FunctionParameter, WorksheetFunction } from "../../functions";
import { SheetModel } from "../../src/sheet";
import { book, desk } from "./book";

type Part = Partial<FunctionParameter>;

/** A function that records the arguments it was called with. */
function recorder(id: string, parts: readonly Part[], answer: unknown = 1) {
  const calls: unknown[][] = [];
  const made: WorksheetFunction = {
    id,
    description: "",
    parameters: parts.map((part) => ({
      name: "x",
      description: "",
      dimensionality: "scalar",
      optional: false,
      repeating: false,
      ...part,
    })),
    call: (...args) => {
      calls.push(args.slice(0, -1));
      if (answer instanceof Error) throw answer;
      return typeof answer === "function" ? answer(...args) : answer;
    },
  };
  return { made, calls };
}

const matrix: Part = { dimensionality: "matrix" };
const fault = (code: string, message?: string) => Object.assign(new Error(message), { code });

describe("our worksheet functions", () => {
  const cells = { A1: 1, A2: "x", A4: { error: "#N/A" }, A5: true };

  it.each(["FANROW.TAKE(A1:A5)", "_xldudf_FANROW_TAKE(A1:A5)", "[2]!_xldudf_FANROW_TAKE(A1:A5)"])(
    "answer to the spelling %s",
    (formula) => {
      const { made, calls } = recorder("TAKE", [matrix]);
      const own = desk({ ...cells, B1: { formula, value: 0 } }, { functions: [made] });
      expect(own.value("B1")).toBe(1);
      expect(calls[0]).toEqual([[[1], ["x"], [""], [{ code: "#N/A" }], [true]]]);
    },
  );

  it("get one cell as a matrix, a left-out argument as null and a repeating one as an array", () => {
    const { made, calls } = recorder("TAKE", [
      matrix,
      { ...matrix, optional: true },
      { optional: true },
      { ...matrix, repeating: true, optional: true },
    ]);
    const own = desk(
      { ...cells, B1: "=FANROW.TAKE(A1)", B2: "=FANROW.TAKE(A1,,A3,A1,A1:A2)" },
      { functions: [made] },
    );
    expect(own.value("B1")).toBe(1);
    expect(calls).toContainEqual([[[1]], null, null, []]);
    expect(calls).toContainEqual([[[1]], null, null, [[[1]], [[1], ["x"]]]]);
  });

  it("get the invocation after every declared argument", () => {
    const { made } = recorder(
      "TAKE",
      [matrix, { optional: true }],
      (...args: unknown[]) => args.length,
    );
    expect(desk({ ...cells, B1: "=FANROW.TAKE(A1)" }, { functions: [made] }).value("B1")).toBe(3);
  });

  it("give errors with their message, thrown or returned; one that is at fault itself is listed", () => {
    const thrown = recorder("THROWN", [], fault("#N/A", "the flow is missing"));
    const given = recorder("GIVEN", [], fault("#DIV/0!"));
    const broken = recorder("BROKEN", [], new Error("out of luck"));
    const own = desk(
      { B1: "=FANROW.THROWN()", B2: "=FANROW.GIVEN()", B3: "=FANROW.BROKEN()" },
      { functions: [thrown.made, given.made, broken.made] },
    );
    expect(own.values("B1:B3")).toEqual([
      [{ error: "#N/A", message: "the flow is missing" }],
      [{ error: "#DIV/0!" }],
      [null],
    ]);
    expect(own.model.unsupported().map(({ what }) => what)).toEqual([
      "a fault of Fanrow, please report it: out of luck",
    ]);
  });

  it("spill an array when typed, and take a 1 × 1 array as a value", () => {
    const pair = recorder(
      "PAIR",
      [],
      [
        [1, fault("#N/A", "no second")],
        [Number.NaN, "b"],
      ],
    );
    const single = recorder("SINGLES", [], [[7]]);
    const own = desk({}, { functions: [pair.made, single.made] });
    own.type("B1", "=FANROW.PAIR()");
    own.type("E1", "=FANROW.SINGLES()+1");
    expect(own.values("B1:C2")).toEqual([
      [1, { error: "#N/A", message: "no second" }],
      [{ error: "#NUM!" }, "b"],
    ]);
    expect(own.value("E1")).toBe(8);
    expect(own.workbook.sheet("Main")?.cell(0, 1)).toMatchObject({
      formula: "_xldudf_FANROW_PAIR()",
      arrayRef: "B1:C2",
    });
  });

  it("tell two ids apart where one is the start of the other", () => {
    const short = recorder("ROUND", [], "short");
    const long = recorder("ROUND_AREA", [], "long");
    const own = desk(
      { B1: "=_xldudf_FANROW_ROUND_AREA()", B2: "=_xldudf_FANROW_ROUND()" },
      { functions: [short.made, long.made] },
    );
    expect(own.values("B1:B2")).toEqual([["long"], ["short"]]);
  });

  it.each([0, null, ""] as const)("get a blank as %j where a test asks for that", (blank) => {
    const { made, calls } = recorder("TAKE", [{}, matrix]);
    const workbook = book({ A1: 1, B1: "=FANROW.TAKE(A9,A1:A2)" });
    new SheetModel(workbook, [made], { blank }).recalculateAll();
    expect(calls[0]).toEqual([blank, [[1], [blank]]]);
  });
});
