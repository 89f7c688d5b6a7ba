// LibreOffice Calc recalculates the copies (OASIS OpenFormula 1.2): an independent implementation
// of every native function that stands in for one of ours.
import { beforeAll, describe, expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import { cellName, parseCell } from "../../src/cells";
import { plainCopy } from "../../src/plain-copy";
import { SheetModel } from "../../src/sheet";
import { Workbook } from "../../src/workbook";
import { demos } from "./demos";
import { rowsEach as formRows, forms, formsWorkbook } from "./forms";
import { callsEach, randomCalls, rowsEach, tried, widthOf } from "./random-calls";
import { recalculated } from "./recalculated";
import { differs } from "./same";

const calls = "random-calls.xlsx";
const written = "forms.xlsx";
const typed = "typed.xlsx";

/** Invented entries for the blank job: two boxes, three fans, one of them to be read again. */
const entries: Readonly<Record<string, readonly (readonly [string, string | number])[]>> = {
  Boxes: [
    ...["A", "B", "C", "Wide one"].flatMap((label, i) => [
      [`A${i + 2}`, i < 3 ? "First" : "second"] as const,
      [`B${i + 2}`, label] as const,
      [`C${i + 2}`, "round"] as const,
      [`D${i + 2}`, 3 + 1.25 * i] as const,
      [`F${i + 2}`, 1] as const,
      [`J${i + 2}`, 1.07] as const,
    ]),
  ],
  Job: [["B3", "IRC-2021"]],
  Fans: [
    ...["A", "a + C", "wide one"].flatMap((openings, i) => [
      [`A${i + 2}`, "Lot 1"] as const,
      [`D${i + 2}`, "bathroom"] as const,
      [`E${i + 2}`, i === 1 ? "continuous" : "on demand"] as const,
      [`H${i + 2}`, i < 2 ? "first" : "SECOND"] as const,
      [`I${i + 2}`, openings] as const,
      [`L${i + 2}`, [24, 5.5, 0.4][i] as number] as const,
    ]),
  ],
};

function type(workbook: Workbook): void {
  for (const [sheet, cells] of Object.entries(entries))
    for (const [ref, value] of cells) {
      const { row, col } = parseCell(ref);
      workbook.sheet(sheet)?.setValue(row, col, value);
    }
}

const originals: Record<string, Workbook> = {};
const models: Record<string, SheetModel> = {};
let theirs: Record<string, Workbook>;

beforeAll(() => {
  for (const [name, bytes] of Object.entries(demos)) originals[name] = Workbook.open(bytes);
  originals[calls] = randomCalls();
  originals[written] = formsWorkbook();
  const copies: Record<string, Uint8Array> = {};
  for (const [name, workbook] of Object.entries(originals)) {
    copies[name] = plainCopy(workbook).workbook.save();
    // What our own functions give; this writes into the workbook, so the copy was made before.
    models[name] = new SheetModel(workbook, worksheetFunctions);
    models[name].recalculateAll();
  }
  const blank = demos["blank-job.xlsx"]!;
  const { workbook: later } = plainCopy(Workbook.open(blank));
  type(later);
  copies[typed] = later.save();
  originals[typed] = Workbook.open(blank);
  type(originals[typed]);
  models[typed] = new SheetModel(originals[typed], worksheetFunctions);
  models[typed].recalculateAll();
  theirs = recalculated(copies);
}, 600_000);

/** What is wrong with one cell of a recalculated copy, with its formula. */
function wrongAt(file: string, sheet: string, row: number, col: number): string[] {
  const own = models[file]!.value(sheet, row, col);
  const native = theirs[file]!.sheet(sheet)?.cell(row, col)?.value;
  const why = differs(own, native);
  const formula = originals[file]!.sheet(sheet)?.cell(row, col)?.formula;
  return why === undefined ? [] : [`${sheet}!${cellName(row, col)} ${formula}: ${why}`];
}

describe("the plain copy, recalculated without our functions", () => {
  it.each(Object.keys(demos))("gives every value of %s", (file) => {
    let count = 0;
    const wrong: string[] = [];
    for (const sheet of originals[file]!.sheets)
      for (const { row, col, formula } of sheet.cells()) {
        if (formula === null) continue;
        count++;
        wrong.push(...wrongAt(file, sheet.name, row, col));
      }
    expect(wrong).toEqual([]);
    expect(count).toBeGreaterThan(50);
  });

  it.each(tried.map((contract) => [contract.id, contract] as const))(
    "gives what %s gives for sound, blank and faulty arguments",
    (id, contract) => {
      const wrong: string[] = [];
      let results = 0;
      for (let i = 0; i < callsEach; i++)
        for (let side = 0; side < widthOf(contract); side++) {
          const row = 1 + i * rowsEach;
          wrong.push(...wrongAt(calls, id, row, side));
          const own = models[calls]!.value(id, row, side);
          if (typeof own === "number" || (typeof own === "string" && own !== "")) results++;
        }
      expect(wrong).toEqual([]);
      // Not only errors and blanks were compared.
      expect(results).toBeGreaterThan(callsEach / 8);
    },
  );

  it.each(forms.map((form, i) => [form.what, form, i] as const))(
    "gives the same for a formula %s",
    (_, { size = [1, 1] }, i) => {
      for (let row = 0; row < size[0]; row++)
        for (let col = 0; col < size[1]; col++)
          expect(wrongAt(written, "Forms", i * formRows + row, col)).toEqual([]);
    },
  );

  it("works out what is typed into it later", () => {
    const wrong: string[] = [];
    for (const sheet of originals[typed]!.sheets)
      for (const { row, col, formula } of sheet.cells())
        if (formula !== null) wrong.push(...wrongAt(typed, sheet.name, row, col));
    expect(wrong).toEqual([]);
    const headings = [...originals[typed]!.sheet("Fans")!.cells()].filter(({ row }) => row === 0);
    const { col } = headings.find(({ value }) => value === "Next opening")!;
    const next = [1, 2, 3].map((row) => models[typed]!.value("Fans", row, col));
    expect(next).toEqual(["B", "keep", "none in range, nearest Wide one"]);
  });

  it("shows on the sheets that it adds what a recalculation gives", () => {
    const file = "mill-lane.xlsx";
    const copy = plainCopy(Workbook.open(demos[file]!)).workbook;
    for (const name of ["Edition tables", "Opening sets", "Steps"]) {
      const wrong: string[] = [];
      for (const { row, col, value } of copy.sheet(name)?.cells() ?? []) {
        // Degrees of freedom of readings that are all alike are rounding, endless or not.
        if (typeof value === "number" && value > 1e30) continue;
        const why = differs(value, theirs[file]!.sheet(name)?.cell(row, col)?.value);
        if (why !== undefined) wrong.push(`${name}!${cellName(row, col)}: ${why}`);
      }
      expect(wrong).toEqual([]);
    }
  });
});
