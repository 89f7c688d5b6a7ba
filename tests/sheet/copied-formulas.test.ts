import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import { SheetModel, type WorkbookView } from "../../src/sheet";
import { type CellSpec, CopiedFormula, type Sheet, Workbook } from "../../src/workbook";

/** A workbook whose every formula comes by its own text, none as a copy of another. */
function textByText(workbook: Workbook): WorkbookView {
  const inTexts = (sheet: Sheet) =>
    new Proxy(sheet, {
      get(target, key) {
        if (key !== "visit") return Reflect.get(target, key, target);
        const visit: Sheet["visit"] = (see) =>
          target.visit((row, col, value, source, arrayRef) =>
            see(
              row,
              col,
              value,
              source instanceof CopiedFormula ? source.at(row) : source,
              arrayRef,
            ),
          );
        return visit;
      },
    });
  const sheets = new Map(
    workbook.sheets.map((sheet) => [sheet.name.toLowerCase(), inTexts(sheet)]),
  );
  return {
    sheets: [...sheets.values()],
    sheet: (name) => sheets.get(name.toLowerCase()),
    names: workbook.names,
    tables: workbook.tables,
    date1904: workbook.date1904,
  };
}

/** Every formula cell with its text and its value worked out afresh. */
function results(view: WorkbookView) {
  const model = new SheetModel(view, worksheetFunctions);
  return view.sheets.flatMap((sheet) => {
    const cells = model.cells(sheet.name);
    const found: unknown[] = [];
    for (let row = 0; row < sheet.rowCount; row++)
      for (let col = 0; col < sheet.colCount; col++)
        if (cells.hasFormula(row, col))
          found.push([row, col, cells.formula(row, col), model.recompute(sheet.name, row, col)]);
    return found;
  });
}

/** How many formulas of a workbook came as copies. */
function copies(workbook: Workbook): number {
  let count = 0;
  for (const sheet of workbook.sheets)
    sheet.visit((_, __, ___, source) => {
      if (source instanceof CopiedFormula) count++;
    });
  return count;
}

const content = fc.oneof(
  { weight: 4, arbitrary: fc.double({ min: -5, max: 60, noNaN: true }) },
  fc.constantFrom<CellSpec["value"]>(null, "", "A", "A+C", "text", "5", true, { error: "#N/A" }),
);

/** Formulas over the columns A to D of their row and over fixed ranges. */
const formulas: ((row: number) => string)[] = [
  (row) => `_xldudf_FANROW_FLOW(A${row},B${row},$C$1)`,
  (row) => `_xldudf_FANROW_FLOW(A${row},B${row})`,
  (row) => `_xldudf_FANROW_RANGE_STATUS(B${row},1,$D$1)`,
  (row) => `_xldudf_FANROW_VERDICT(A${row},C${row})`,
  (row) => `_xldudf_FANROW_OPEN_AREA(D${row},$A$1:$A$3,$B$1:$B$3)`,
  (row) => `IF(COUNT(A${row}:C${row})=0,"",AVERAGE(A${row}:C${row}))`,
  (row) => `IF(D${row}="","",SUMIFS($A$1:$A$9,$D$1:$D$9,D${row}))`,
  (row) => `A${row}&"<"&B${row + 1}`,
  (row) => `SUM(A$1:A${row})`,
  (row) => `INDEX($A$1:$D$9,MATCH(D${row},$D$1:$D$9,0),2)`,
  (row) => `E${row}*2`,
];

describe("formulas known to be copies of each other", () => {
  it("give cell by cell what each text gives by itself", () => {
    const picked = fc.constantFrom(...formulas);
    const sheet = fc.record({
      cells: fc.array(fc.tuple(content, content, content, content), { minLength: 3, maxLength: 9 }),
      columns: fc.array(picked, { minLength: 1, maxLength: 3 }),
      odd: fc.tuple(fc.nat(8), picked),
    });
    let seen = 0;
    fc.assert(
      fc.property(sheet, ({ cells, columns, odd: [oddRow, oddFormula] }) => {
        const made = Workbook.create();
        const rows = cells.map((values, i): CellSpec[] => [
          ...values.map((value) => ({ value })),
          ...columns.map((formula) => ({
            formula: (i === oddRow ? oddFormula : formula)(i + 1),
          })),
        ]);
        made.addSheet("S", { rows });
        const workbook = Workbook.open(made.save());
        seen += copies(workbook);
        expect(results(workbook)).toEqual(results(textByText(workbook)));
      }),
      { numRuns: 300 },
    );
    expect(seen).toBeGreaterThan(1000);
  });

  it("give what each text gives by itself in the demo job", () => {
    const workbook = Workbook.open(readFileSync("workbooks/alder-terrace.xlsx"));
    expect(copies(workbook)).toBeGreaterThan(300);
    expect(results(workbook)).toEqual(results(textByText(workbook)));
  });
});
