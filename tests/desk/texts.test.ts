import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { copyName } from "../../src/desk/files/download";
import { contrast, leastContrast, readable } from "../../src/desk/look/contrast";
import { fillIn, markIn } from "../../src/desk/look/fill";
import { readBlock, writeBlock } from "../../src/desk/text/block";
import { shifted } from "../../src/desk/text/shift";

const colour = fc
  .integer({ min: 0, max: 0xff_ff_ff })
  .map((number) => `#${number.toString(16).padStart(6, "0")}`);

describe("blocks of text", () => {
  it("come back from the clipboard text they are written as, whatever they hold", () => {
    const text = fc.string({ minLength: 1 }).filter((each) => !/^[\r\n]|[\r\n]$/.test(each));
    const block = fc
      .array(fc.array(text, { minLength: 2, maxLength: 2 }), { minLength: 1, maxLength: 4 })
      .map((rows) => rows.map((row) => row.map((each) => each.replaceAll("\r", ""))))
      .filter((rows) => rows.flat().every((each) => each !== ""));
    fc.assert(
      fc.property(block, (rows) => {
        expect(readBlock(writeBlock(rows))).toEqual(rows);
      }),
    );
  });

  it("keep blank cells, and blank lines between others", () => {
    expect(readBlock("a\t\r\n\tb\r\n")).toEqual([
      ["a", ""],
      ["", "b"],
    ]);
    expect(readBlock("a\n\nb")).toEqual([["a"], [""], ["b"]]);
  });
});

describe("a copied formula", () => {
  it("takes its relative references along and leaves fixed ones", () => {
    const at = { row: 1, col: 15 };
    expect(shifted("=FANROW.FLOW(J2,N2,Job!$B$5)", at, { row: 3, col: 16 })).toBe(
      "=FANROW.FLOW(K4,O4,Job!$B$5)",
    );
    expect(shifted("=A1", { row: 0, col: 1 }, { row: 0, col: 0 })).toBe("=#REF!");
    expect(shifted("A1", at, { row: 9, col: 9 })).toBe("A1");
  });
});

describe("colours on the page", () => {
  // WCAG 2.2, definition of contrast ratio: black on white is 21:1; #777777 on white is the known
  // near miss, 4.48:1.
  it("are compared as WCAG defines it", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
    expect(contrast("#777777", "#ffffff")).toBeCloseTo(4.48, 2);
  });

  it("give every text enough contrast, whatever fill and colour a workbook asks for", () => {
    fc.assert(
      fc.property(colour, colour, (wanted, ground) => {
        expect(contrast(readable(wanted, ground), ground)).toBeGreaterThanOrEqual(leastContrast);
      }),
    );
  });

  it("are left out in strong contrast, and never glare in the dark", () => {
    fc.assert(
      fc.property(colour, (fill) => {
        expect(fillIn("contrast", fill)).toBeNull();
        expect(fillIn("light", fill)).toBe(fill);
        for (const shown of [fillIn("dark", fill), markIn("dark", fill)])
          expect(contrast("#ffffff", shown as string)).toBeGreaterThan(2.9);
      }),
    );
  });
});

describe("the name of a saved copy", () => {
  it("is another than that of the opened file, and stays the same from copy to copy", () => {
    expect(copyName("job.xlsx")).toBe("job-copy.xlsx");
    expect(copyName("Job.XLSX")).toBe("Job-copy.xlsx");
    expect(copyName("job-copy.xlsx")).toBe("job-copy.xlsx");
  });
});
