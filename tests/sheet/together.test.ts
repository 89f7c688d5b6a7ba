import { describe, expect, it } from "vitest";
import { type WorksheetFunction, worksheetFunctions } from "../../functions";
import { FormulaSyntaxError, SheetModel } from "../../src/sheet";
import { Workbook } from "../../src/workbook";

/** A function that counts how often it is worked out. */
function counter(): { calls: number; readonly functions: readonly WorksheetFunction[] } {
  const parameter = { name: "values", description: "", dimensionality: "matrix" };
  const state = {
    calls: 0,
    functions: [
      {
        id: "COUNTED",
        description: "",
        parameters: [{ ...parameter, optional: false, repeating: false }],
        call: (values: unknown) => {
          state.calls++;
          return (values as unknown[][]).flat().reduce<number>((sum, x) => sum + Number(x), 0);
        },
      } as WorksheetFunction,
    ],
  };
  return state;
}

describe("Several edits together", () => {
  it("work out once what depends on them", () => {
    const counted = counter();
    const workbook = Workbook.create();
    workbook.addSheet("Data", { rows: [] });
    const model = new SheetModel(workbook, counted.functions);
    model.enter("Data", 0, 1, "=FANROW.COUNTED(A1:A1000)");
    const before = counted.calls;
    const changes = model.together(() => {
      for (let row = 0; row < 1000; row++) model.set("Data", row, 0, row);
    });
    expect(counted.calls - before).toBe(1);
    expect(model.value("Data", 0, 1)).toBe(499_500);
    // The cells, all blank before, and the sum.
    expect(changes).toHaveLength(1001);
    for (let row = 0; row < 3; row++) model.set("Data", row, 0, 5);
    expect(counted.calls - before).toBe(4);
  });

  it("give what the same edits one after another give", () => {
    const make = () => {
      const workbook = Workbook.create();
      workbook.addSheet("Data", { rows: [[{ value: 1 }], [{ value: 2 }], [{ value: 3 }]] });
      return new SheetModel(workbook, []);
    };
    const edits = (model: SheetModel) => {
      model.enter("Data", 0, 1, "=A1:A3*2");
      model.enter("Data", 0, 2, "=SUM(B1:B3)+D1");
      model.enter("Data", 0, 3, "=A3^2");
      model.enter("Data", 5, 0, "=NO.SUCH.FUNCTION(A1)");
      model.set("Data", 2, 0, 10);
      model.set("Data", 1, 1, "in the way");
      model.set("Data", 1, 1, null);
    };
    const single = make();
    edits(single);
    const joint = make();
    joint.together(() => edits(joint));
    for (let row = 0; row < 7; row++)
      for (let col = 0; col < 4; col++)
        expect(joint.value("Data", row, col)).toEqual(single.value("Data", row, col));
    expect(joint.value("Data", 2, 1)).toBe(20);
  });

  it("stay made up to the one that is refused", () => {
    const workbook = Workbook.create();
    workbook.addSheet("Data", { rows: [] });
    const model = new SheetModel(workbook, []);
    model.enter("Data", 0, 1, "=A1+1");
    expect(() =>
      model.together(() => {
        model.set("Data", 0, 0, 4);
        model.enter("Data", 0, 2, "=SUM(");
      }),
    ).toThrow(FormulaSyntaxError);
    expect([model.value("Data", 0, 1), model.value("Data", 0, 2)]).toEqual([5, null]);
  });

  it("do not hide which formula spills over a cell", () => {
    const workbook = Workbook.create();
    workbook.addSheet("Data", { rows: [[{ value: 1 }], [{ value: 2 }]] });
    const model = new SheetModel(workbook, []);
    model.enter("Data", 0, 1, "=A1:A2*2");
    expect(model.anchorOf("Data", 1, 1)).toEqual({ row: 0, col: 1 });
    expect(model.anchorOf("Data", 0, 1)).toBeNull();
    expect(model.anchorOf("Data", 1, 0)).toBeNull();
  });
});

it("An edit leaves what would take too long to work out at its stored value, and lists it", () => {
  const workbook = Workbook.create();
  const endless = "A1+BINOM.DIST.RANGE(2000000000,0.5,0,1000000000)";
  workbook.addSheet("Job", { rows: [[{ value: 1 }, { formula: endless, value: 7 }]] });
  const model = new SheetModel(workbook, worksheetFunctions);
  expect(model.set("Job", 0, 0, 2)).toHaveLength(1);
  expect(model.value("Job", 0, 1)).toBe(7);
  model.recalculateAll();
  expect(model.unsupported().map(({ what }) => what)).toEqual([
    "more than 30,000,000 cells to look at",
  ]);
});
