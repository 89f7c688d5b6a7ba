import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  absoluteText,
  addressText,
  boundsOf,
  cellName,
  columnIndex,
  columnLetters,
  maxCols,
  maxRows,
  parseAddress,
  parseCell,
  parseRectangle,
  rectangleOf,
  rectanglesIn,
  rectangleText,
  sheetPrefix,
} from "../../src/cells";

const area = (top: number, left: number, bottom = top, right = left) => ({
  top,
  left,
  bottom,
  right,
});

describe("references", () => {
  it("columns are counted A to Z, AA to ZZ, AAA to XFD", () => {
    expect([0, 25, 26, 701, 702, 16383].map(columnLetters)).toEqual([
      "A",
      "Z",
      "AA",
      "ZZ",
      "AAA",
      "XFD",
    ]);
    expect(["A", "z", "AA", "ZZ", "aaa", "XFD"].map(columnIndex)).toEqual([
      0, 25, 26, 701, 702, 16383,
    ]);
  });

  it("references and ranges go to numbers and back", () => {
    expect(parseCell("XFD1048576")).toEqual({ row: 1048575, col: 16383 });
    expect(parseCell("$b$2")).toEqual({ row: 1, col: 1 });
    expect(parseRectangle("B9:A1")).toEqual(area(0, 0, 8, 1));
    expect(cellName(8, 27)).toBe("AB9");
    for (const bad of ["", "A", "1", "A0", "XFE1", "A1048577", "A1B", "AAAA1"]) {
      expect(() => parseCell(bad)).toThrow(RangeError);
      expect(() => parseRectangle(bad)).toThrow(RangeError);
    }
  });

  it.each([
    ["K3", area(2, 10)],
    ["$A$1:B9", area(0, 0, 8, 1)],
    ["C:D", area(0, 2, maxRows - 1, 3)],
    ["5:7", area(4, 0, 6, maxCols - 1)],
    ["zz2:$y9", area(1, 24, 8, 701)],
  ])("%s is read as rows and columns from 0", (text, range) => {
    expect(rectangleOf(text)).toEqual(range);
  });

  it.each(["", ":", "Total", "A", "7", "A1:C", "A1:2", "A1;B2", "A1:B2:C3", "XFE:XFE", "0:4"])(
    "%j is no rectangle",
    (text) => {
      expect(rectangleOf(text)).toBeUndefined();
    },
  );

  it("are written with their corners, as whole columns and rows, and with dollar signs", () => {
    expect(rectangleText(area(1, 1))).toBe("B2");
    expect(rectangleText(area(0, 0, 8, 27))).toBe("A1:AB9");
    expect(rectangleText(area(0, 0, maxRows - 1, 2))).toBe("A1:C1048576");
    expect(addressText(area(0, 0, maxRows - 1, 2))).toBe("A:C");
    expect(addressText(area(1, 0, 4, maxCols - 1))).toBe("2:5");
    expect(["B2", "A1:AB9", "A:C", "2:5"].map(absoluteText)).toEqual([
      "$B$2",
      "$A$1:$AB$9",
      "$A:$C",
      "$2:$5",
    ]);
  });
});

describe("addresses", () => {
  it("are read back as they were written, whatever the name of the sheet", () => {
    const name = fc.string({ minLength: 1, maxLength: 31 }).filter((text) => text.trim() === text);
    const range = fc
      .tuple(fc.nat(12), fc.nat(12), fc.nat(5), fc.nat(5))
      .map(([top, left, rows, cols]) => area(top, left, top + rows, left + cols));
    fc.assert(
      fc.property(name, range, (sheet, where) => {
        const text = sheetPrefix(sheet) + addressText(where);
        expect(parseAddress(text)).toEqual({ sheet, range: where });
      }),
    );
  });

  it("take a typed name of a sheet in any case, with quotes around one with spaces", () => {
    expect(parseAddress(" b2 ")).toEqual({ sheet: null, range: area(1, 1) });
    expect(parseAddress("fans!$C$9:A1")).toEqual({ sheet: "fans", range: area(0, 0, 8, 2) });
    expect(parseAddress("'Box ''B'' list'!A1")?.sheet).toBe("Box 'B' list");
  });

  it.each(["", "!", "!A1", "A", "A1:", "'a!A1", "R1C1", "A1 B2", "=A1", "A1,B2"])(
    "do not include %j",
    (text) => {
      expect(parseAddress(text)).toBeNull();
    },
  );

  it.each(["Lüfter", "Fans", "_a.b"])("write %s without quotes", (name) => {
    expect(sheetPrefix(name)).toBe(`${name}!`);
  });

  it.each(["Old fans", "2026", "B2", "R1C1", "TRUE", "it's"])("write %s in quotes", (name) => {
    expect(sheetPrefix(name)).toBe(`'${name.replace("'", "''")}'!`);
  });

  it("come in lists, whose sheets may have commas in their names", () => {
    expect(rectanglesIn("'a, b'!A1:B2,'a, b'!D4")).toEqual([area(0, 0, 1, 1), area(3, 3)]);
    expect(boundsOf("B2,D9:E9")).toEqual(area(1, 1, 8, 4));
    expect(boundsOf("A1,")).toBeUndefined();
  });
});
