import { deflateRawSync, inflateRawSync, crc32 as systemCrc } from "node:zlib";
import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { Workbook, WorkbookError } from "../../src/workbook";
import { openCells, pack, parts, rels, thrownBy, worksheet } from "./packages";

/** What is said of cells in which something is wrong. */
function refusal(cells: string): string {
  const error = thrownBy(() => openCells(cells).sheet.rowCount);
  expect(error).toBeInstanceOf(WorkbookError);
  return (error as WorkbookError).message;
}

const cell = (inner: string) => `<row r="1">${inner}</row>`;

describe("A value that is not of its type", () => {
  it.each([
    ["0x10", 'cell A1 holds "0x10" for a number'],
    ["Infinity", 'holds "Infinity" for a number'],
    ["1e999", 'holds "1e999" for a number'],
    ["1_0", 'holds "1_0" for a number'],
    [" ", 'holds " " for a number'],
  ])("(the number %j) is refused", (value, words) => {
    expect(refusal(cell(`<c r="A1"><v>${value}</v></c>`))).toContain(words);
  });

  it("(a truth value other than 1, 0, true, false) is refused", () => {
    expect(refusal(cell('<c r="A1" t="b"><v>2</v></c>'))).toContain('"2" for TRUE or FALSE');
  });

  it("is told in a short line however long it is", () => {
    const message = refusal(cell(`<c r="A1"><v>${"9".repeat(100_000)}</v></c>`));
    expect(message.length).toBeLessThan(250);
    expect(message).toContain('999…" for a number');
  });

  it.each([
    ["two values", "<v>1</v><v>2</v>", "holds two values"],
    ["two formulas", "<f>1</f><f>2</f><v>1</v>", "holds two formulas"],
    ["an element in its value", "<v><b>1</b></v>", "holds a <b> in its <v>"],
  ])("(a cell with %s) is refused", (_, inner, words) => {
    expect(refusal(cell(`<c r="A1">${inner}</c>`))).toContain(words);
  });

  it.each(["1e1", "0x1", "1.0", "-1", "", "99999999999"])("(the row %j) is refused", (r) => {
    expect(refusal(`<row r="${r}"><c><v>7</v></c></row>`)).toContain("a row has the number");
  });

  it("leaves numbers in every decimal form as they are", () => {
    const written = ["-12.50", "1E-05", "+3", ".5", "7.", "1.7976931348623157E+308"];
    const cells = written.map(
      (value, col) => `<c r="${"ABCDEF".charAt(col)}1"><v>${value}</v></c>`,
    );
    const { sheet } = openCells(cell(cells.join("")));
    expect(written.map((_, col) => sheet.cell(0, col)?.value)).toEqual(written.map(Number));
  });
});

describe("The range of an array formula", () => {
  const array = (ref: string) => cell(`<c r="A1"><f t="array" ref="${ref}">1</f><v>1</v></c>`);

  it("is refused where it is none", () => {
    expect(refusal(array("ZZZZ:1"))).toContain('an array formula for the range "ZZZZ:1"');
  });

  it("over the whole sheet is refused at once, with the cell and what to do", () => {
    expect(refusal(array("A1:XFD1048576"))).toBe(
      "The array formula in cell A1 fills A1:XFD1048576, more cells than are read: enter it for the cells it is needed in.",
    );
  });

  it("counts against the cells of the whole workbook", () => {
    const half = array("A1:A1048576");
    const rows = [1, 2, 3].map((n) =>
      half.replace('r="1"', `r="${n}"`).replace('r="A1"', `r="A${n}"`).replace("A1:A", "B1:B"),
    );
    expect(refusal(rows.join(""))).toContain("The array formula in cell A3");
  });
});

describe("Packages of an odd make", () => {
  it("with an entry of no bytes that is called deflated open, by script and by the system", () => {
    const bytes = zipSync({
      "a.bin": new Uint8Array(),
      ...Object.fromEntries(
        Object.entries(parts(worksheet("<sheetData/>"))).map(([name, text]) => [
          name,
          typeof text === "string" ? strToU8(text) : text,
        ]),
      ),
    });
    // The first entry, in its own header and in the directory, as deflated with nothing stored.
    const view = new DataView(bytes.buffer);
    view.setUint16(8, 8, true);
    const directory = view.getUint32(bytes.length - 6, true);
    view.setUint16(directory + 10, 8, true);
    view.setUint32(directory + 20, 0, true);
    expect(view.getUint32(directory + 24, true)).toBe(0);
    const host = {
      inflate: (packed: Uint8Array, size: number) =>
        inflateRawSync(packed, { maxOutputLength: Math.max(1, size) }),
      crc32: (data: Uint8Array) => systemCrc(data),
    };
    expect(() => host.inflate(new Uint8Array(), 0)).toThrow();
    expect(deflateRawSync(new Uint8Array()).length).toBe(2);
    for (const by of [undefined, host]) expect(Workbook.open(bytes, {}, by).sheets).toHaveLength(1);
  });

  it("with many sheets on one part are refused before the part is read so often", () => {
    const sheets = Array.from(
      { length: 2_000 },
      (_, i) => `<sheet name="S${i}" sheetId="${i + 1}" r:id="rId1"/>`,
    ).join("");
    const book = `<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="${rels}"><sheets>${sheets}</sheets></workbook>`;
    const bytes = pack(parts(worksheet("<sheetData/>"), { "xl/workbook.xml": book }));
    expect(() => Workbook.open(bytes)).toThrow('the sheets "S0" and "S1" are one part');
  });

  it("with 100,000 attributes on a cell are read in a moment", () => {
    const names = Array.from({ length: 100_000 }, (_, i) => `a${i}=""`).join(" ");
    const start = performance.now();
    expect(openCells(cell(`<c r="A1" ${names}><v>5</v></c>`)).sheet.cell(0, 0)?.value).toBe(5);
    expect(performance.now() - start).toBeLessThan(5_000);
  });
});

describe("Control characters", () => {
  it("in the page header of a sheet are left out, so that what is written can be read", () => {
    const workbook = Workbook.create();
    workbook.addSheet("Record", { rows: [[{ value: "a\u001bb" }]] });
    workbook.sheets[0]?.arrange({ page: { footer: { left: "Job \u001b\u0007\ud800 5" } } });
    const again = Workbook.open(workbook.save());
    expect(again.sheets[0]?.cell(0, 0)?.value).toBe("a\u001bb");
  });
});
