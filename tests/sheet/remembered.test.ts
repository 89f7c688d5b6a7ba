import { expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import { SheetModel } from "../../src/sheet";
import { Workbook } from "../../src/workbook";

it("a remembered call forgets when a cell of its fixed range changes, and tells rows apart", () => {
  const workbook = Workbook.create();
  const area = (row: number) => ({
    formula: `_xldudf_FANROW_OPEN_AREA(A${row},$D$1:$D$2,$E$1:$E$2)`,
  });
  workbook.addSheet("S", {
    rows: [
      [{ value: "A" }, area(1), null, { value: "A" }, { value: 12 }],
      [{ value: "B" }, area(2), null, { value: "B" }, { value: 24 }],
      [{ value: "A" }, area(3)],
      [{ value: "A+B" }, area(4)],
    ],
  });
  const model = new SheetModel(workbook, worksheetFunctions);
  model.recalculateAll();
  const areas = () => [0, 1, 2, 3].map((row) => model.value("S", row, 1));
  expect(areas()).toEqual([12, 24, 12, 36]);
  model.set("S", 0, 4, 10);
  expect(areas()).toEqual([10, 24, 10, 34]);
  model.set("S", 0, 0, "B");
  expect(areas()).toEqual([24, 24, 10, 34]);
});

it("a call copied across looks at the range of its own column", () => {
  const workbook = Workbook.create();
  const across = (column: string) => ({
    formula: `_xldudf_FANROW_OPEN_AREA("A+B",$A$1:$A$2,${column}$1:${column}$2)`,
  });
  workbook.addSheet("S", {
    rows: [
      [{ value: "A" }, { value: 1 }, { value: 10 }],
      [{ value: "B" }, { value: 2 }, { value: 20 }],
      [null, across("B"), across("C")],
    ],
  });
  const model = new SheetModel(workbook, worksheetFunctions);
  model.recalculateAll();
  expect([model.value("S", 2, 1), model.value("S", 2, 2)]).toEqual([3, 30]);
});

it("a stored value is compared with what its own row gives, also where rows read the same", () => {
  const workbook = Workbook.create();
  const rows = Array.from({ length: 30 }, (_, i) => [
    { value: 4 },
    { value: i },
    { formula: `A${i + 1}*2`, value: 0 },
    { formula: `A${i + 1}+ROW()`, value: 0 },
    { formula: `A${i + 1}+B$1:B$30`, value: 0 },
  ]);
  workbook.addSheet("S", { rows });
  const model = new SheetModel(Workbook.open(workbook.save()), worksheetFunctions);
  const given = (col: number) => rows.map((_, row) => model.recompute("S", row, col));
  expect(given(2)).toEqual(rows.map(() => ({ value: 8 })));
  expect(given(3)).toEqual(rows.map((_, row) => ({ value: 4 + row + 1 })));
  expect(given(4)).toEqual(rows.map((_, row) => ({ value: 4 + row })));
  model.set("S", 5, 0, 7);
  expect(model.recompute("S", 5, 2)).toEqual({ value: 14 });
  expect(model.recompute("S", 6, 2)).toEqual({ value: 8 });
});
