import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CellValue, cellName } from "../../src/cells";
import { Workbook } from "../../src/workbook";
import { main, pack, parts, unpack, worksheet } from "./packages";

/** A sheet with gaps, shared formulas, an array and rows and cells without r. */
function source(): Uint8Array {
  const rows = [
    '<row r="1"><c r="A1" t="s"><v>0</v></c><c><v>2</v></c><c r="E1" s="1"/></row>',
    '<row><c r="B2"><f t="shared" ref="B2:B6" si="0">A2+1</f><v>1</v></c><c r="C2" t="b"><v>1</v></c></row>',
    '<row r="4"><c r="A4" t="inlineStr"><is><t>in</t></is></c><c r="B4" s="1"><f t="shared" si="0"/><v>3</v></c></row>',
    '<row r="5" ht="20"/>',
    '<row r="6"><c r="B6"><f t="shared" si="0"/><v>5</v></c><c r="D6" cm="1"><f t="array" ref="D6:D7">C1:C2</f><v>0</v></c></row>',
    '<row r="7"><c r="D7"><v>1</v></c></row>',
  ];
  const sheet = worksheet(
    `<dimension ref="A1:E7"/><sheetData>${rows.join("\n")}</sheetData><tail>]</tail>`,
  );
  const strings = `<sst xmlns="${main}"><si><t>Tag</t></si></sst>`;
  return pack(
    parts(sheet, { "xl/sharedStrings.xml": strings, "other.bin": new Uint8Array([1, 2]) }, [
      "sharedStrings.xml",
    ]),
  );
}

const bytes = source();
const part = "xl/worksheets/sheet1.xml";

const text = fc.string({ unit: "binary", maxLength: 12 });
const value: fc.Arbitrary<CellValue> = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  text,
  fc.constantFrom("_x000D_", " x ", "\r\n", "]]>", "<&"),
  fc.boolean(),
  fc.constantFrom({ error: "#N/A" }, { error: "#DIV/0!" }),
);
const place = { row: fc.nat(9), col: fc.nat(6) };
const edit = fc.oneof(
  fc.record({ kind: fc.constant("value" as const), ...place, value }),
  fc.record({
    kind: fc.constant("formula" as const),
    ...place,
    value,
    formula: fc.constantFrom("A2+1", "A6+1", 'SUM(A1:A9)&"<"', "C1:C2"),
  }),
  fc.record({ kind: fc.constant("clear" as const), ...place }),
);

interface Seen {
  value: CellValue;
  formula: string | null;
  style: number;
}

/** Every cell with content or format; -0 is stored as 0. */
function contentOf(workbook: Workbook): Map<string, Seen> {
  const seen = new Map<string, Seen>();
  for (const cell of workbook.sheets[0]?.cells() ?? []) {
    const { value, formula, style } = cell;
    if (value === null && formula === null && style === 0) continue;
    seen.set(cellName(cell.row, cell.col), { value: value === 0 ? 0 : value, formula, style });
  }
  return seen;
}

describe("any sequence of edits", () => {
  it("is found again after saving, and nothing else has changed", () => {
    fc.assert(
      fc.property(
        fc.array(edit, { maxLength: 25 }),
        fc.integer({ min: 0, max: 25 }),
        (edits, cut) => {
          const workbook = Workbook.open(bytes);
          const sheet = workbook.sheets[0];
          if (sheet === undefined) throw new Error("no sheet");
          const expected = contentOf(workbook);
          for (const [index, step] of edits.entries()) {
            // Somewhere in between the parts are brought up to date, as a save does.
            if (index === cut) workbook.save();
            const ref = cellName(step.row, step.col);
            const style = expected.get(ref)?.style ?? 0;
            const formula = step.kind === "formula" ? step.formula : null;
            const content = step.kind === "clear" ? null : step.value === 0 ? 0 : step.value;
            if (step.kind === "value") sheet.setValue(step.row, step.col, step.value);
            else if (step.kind === "formula")
              sheet.setFormula(step.row, step.col, step.formula, step.value);
            else sheet.clear(step.row, step.col);
            if (content === null && formula === null && style === 0) expected.delete(ref);
            else expected.set(ref, { value: content, formula, style });
          }
          const sorted = (map: Map<string, Seen>) => [...map].sort(([a], [b]) => (a < b ? -1 : 1));
          expect(sorted(contentOf(workbook))).toEqual(sorted(expected));
          const saved = workbook.save();
          expect(sorted(contentOf(Workbook.open(saved)))).toEqual(sorted(expected));
          const before = unpack(bytes);
          const after = unpack(saved);
          expect(Object.keys(after)).toEqual(Object.keys(before));
          for (const name of Object.keys(before)) {
            if (name !== part) expect(after[name]).toBe(before[name]);
          }
          expect(after[part]).toContain("</sheetData><tail>]</tail>");
          expect(workbook.save()).toEqual(saved);
        },
      ),
      { numRuns: 200 },
    );
  });
});
