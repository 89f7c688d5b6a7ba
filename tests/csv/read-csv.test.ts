import { describe, expect, it } from "vitest";
import { CsvError, csvOf, workbookOfCsv } from "../../src/csv";
import type { Sheet } from "../../src/workbook";

const bytes = (text: string) => new TextEncoder().encode(text);
const read = (content: Uint8Array | string, name = "lots.csv") => {
  const sheet = workbookOfCsv(typeof content === "string" ? bytes(content) : content, name)
    .sheets[0];
  const rows: unknown[][] = [];
  for (let row = 0; row < (sheet?.rowCount ?? 0); row++)
    rows.push(
      Array.from(
        { length: sheet?.colCount ?? 0 },
        (_, col) => sheet?.cell(row, col)?.value ?? null,
      ),
    );
  return { name: sheet?.name, rows };
};

describe("A text table as a workbook", () => {
  it("reads numbers with points, days, texts and blanks of a file parted by commas", () => {
    const { name, rows } = read(
      'Lot,Pa,Day,"Flow, cfm"\r\n007,4.1,2026-03-09,"1,051.5"\r\n1-2,,x,-7\r\n',
    );
    expect(name).toBe("lots");
    expect(rows[1]).toEqual(["007", 4.1, 46_090, 1051.5]);
    expect(rows[2]).toEqual(["1-2", null, "x", -7]);
  });

  it("reads decimal commas and days before months in a file parted by semicolons", () => {
    const { rows } = read("Wohnung;Pa;Tag;m³\n3;4,4;9.3.2026;1.200,5\n");
    expect(rows[1]).toEqual([3, 4.4, 46_090, 1200.5]);
  });

  it("reads decimal commas in quotation marks, thousands with a comma, and the sign that a first line names", () => {
    expect(read('a,b\n"4,5","10,25"\n').rows[1]).toEqual([4.5, 10.25]);
    expect(read("a;b\n4.5;1,234\n").rows[1]).toEqual([4.5, 1234]);
    expect(read("a;b\n4;1,234\n").rows[1]).toEqual([4, 1.234]);
    expect(read("sep=;\r\na;b\r\n4,5;x\r\n").rows).toEqual([
      ["a", "b"],
      [4.5, "x"],
    ]);
  });

  it("makes room for a day, and for no text without end", () => {
    const { columnWidths } = workbookOfCsv(
      bytes(`Pa,Day,Note\n4.1,2026-03-09,${"x".repeat(99)}\n`),
      "lots.csv",
    ).sheets[0] as Sheet;
    expect([...columnWidths]).toEqual([
      [1, 12],
      [2, 30],
    ]);
  });

  it("reads the code page of Windows and UTF-16 as well as UTF-8", () => {
    const latin = Uint8Array.from([..."Küche,1\n"].map((letter) => letter.charCodeAt(0)));
    expect(read(latin).rows[0]).toEqual(["Küche", 1]);
    const wide = Uint8Array.from([0xff, 0xfe, ...[..."é,2"].flatMap((l) => [l.charCodeAt(0), 0])]);
    expect(read(wide).rows[0]).toEqual(["é", 2]);
  });

  it("takes nothing for a formula, neither in nor out", () => {
    expect(read('=1+1,"@x"\n').rows[0]).toEqual(["=1+1", "@x"]);
    const rows = [["=1+1", -3, null, "+1 fan", "-see note", "@home", 'two\nlines; "said"', "1,5"]];
    expect(csvOf([["=1+1", -3, null]])).toBe('"\'=1+1",-3,\r\n');
    expect(read(csvOf(rows)).rows[0]?.slice(0, 7)).toEqual(rows[0]?.slice(0, 7));
  });

  it("says which row opens a quotation mark that is never closed, and refuses what is no text", () => {
    expect(() => read('a,b\n"c,d\n')).toThrow(/row 2 opens a quotation mark/);
    expect(() => read(Uint8Array.from([80, 75, 0, 0]))).toThrow(CsvError);
    expect(() => read("\n\n")).toThrow(/holds no rows/);
  });

  it("says which row has more cells than a sheet has columns", () => {
    expect(() => read(`a,b\n1,2${",".repeat(17_000)}x\n`)).toThrow(/row 2 has 17002 cells/);
  });
});
