import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Workbook } from "../../src/workbook";
import { escapeText } from "../../src/workbook/text";
import { openCells, textOf, worksheet } from "./packages";
import { bothWays } from "./sheets";

/** Pieces of formulas; a function of the row number where they move with it. */
const pieces: ((row: number) => string)[] = [
  (row) => `B${row}`,
  (row) => `$C${row + 2}`,
  (row) => `Fans!K${row}:M${row}`,
  (row) => `SUM(D$2:D${row})`,
  (row) => `IF(A${row}<B${row},"<""&A1",A${row}&B${row})`,
  (row) => `${row}:${row + 1}`,
  (row) => `A${Math.max(1, row - 3)}`,
  (row) => `A0${row}`,
  (row) => `Table1[[#This Row],[C${row}]]`,
  () => "$A$1",
  () => '"B2 ""x"""',
  () => "'Q1 B2'!$B$2",
  () => "Q1>B9",
  () => "LOG10(2)",
  () => "1.07",
  () => "A1048577",
];

/** As programs write it, or with more escaped than must be, or less. */
const writers = [
  escapeText,
  (text: string) => escapeText(text).replaceAll('"', "&quot;"),
  (text: string) => escapeText(text).replaceAll("&gt;", ">"),
  (text: string) => `${escapeText(text)}<!-- -->`,
  (text: string) => ` ${escapeText(text)}`,
];

const formula = fc.array(fc.constantFrom(...pieces), { minLength: 1, maxLength: 3 });

/** A column of one formula, with rows that have another one, none, or the formula of another row. */
const column = fc.tuple(
  formula,
  fc.array(
    fc.record({
      other: fc.option(formula, { freq: 4 }),
      by: fc.oneof({ weight: 8, arbitrary: fc.constant(0) }, fc.constantFrom(1, -1)),
      write: fc.oneof(
        { weight: 8, arbitrary: fc.constant(writers[0]!) },
        fc.constantFrom(...writers),
      ),
      gap: fc.constantFrom(1, 1, 1, 2, 90),
    }),
    { minLength: 2, maxLength: 12 },
  ),
);

describe("formulas copied down a column", () => {
  it("are the texts in the file, whichever way the sheet is read", () => {
    let plainly = 0;
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 950 }), column, (from, [usual, cells]) => {
        let row = from;
        const rows = cells.map(({ other, by, write, gap }) => {
          row += gap;
          const text = (other ?? usual).map((piece) => piece(Math.max(1, row + by))).join("+");
          return `<row r="${row}"><c r="E${row}"><f>${write(text)}</f><v>1</v></c></row>`;
        });
        const { plain, full, together } = bothWays(
          worksheet(`<sheetData>${rows.join("")}</sheetData>`),
        );
        if (plain !== undefined) {
          plainly++;
          expect(plain).toEqual(full);
        }
        expect(together).toEqual(full);
      }),
      { numRuns: 2000 },
    );
    expect(plainly).toBeGreaterThan(1000);
  });

  it("keep their own texts when one of them is changed", () => {
    const { workbook, sheet } = openCells(
      [1, 2, 3].map((r) => `<row r="${r}"><c r="B${r}"><f>A${r}*2</f><v>0</v></c></row>`).join(""),
    );
    sheet.setFormula(1, 1, "A2*3", 0);
    sheet.setValue(0, 1, 7);
    const saved = Workbook.open(workbook.save());
    expect([0, 1, 2].map((row) => saved.sheets[0]?.cell(row, 1)?.formula)).toEqual([
      null,
      "A2*3",
      "A3*2",
    ]);
    expect(textOf(saved, "xl/worksheets/sheet1.xml")).toContain("<f>A3*2</f>");
  });
});
