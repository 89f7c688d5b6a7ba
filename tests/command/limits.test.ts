import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { checkFile } from "../../src/command/check-file";
import { compareFiles } from "../../src/command/compare";
import { Print } from "../../src/command/record";
import { tableReport } from "../../src/command/reports/table";
import { allRecords } from "../../src/records";
import { openingsNamed } from "../../src/rules";
import { Book } from "../../src/sheet/book";
import { type CellSpec, Workbook } from "../../src/workbook";
import { main, openCells } from "../workbook/packages";

const folder = mkdtempSync(join(tmpdir(), "fanrow-limits-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const today = new Date("2026-11-25T12:00:00Z");

/** A job of two fans, with what `edit` adds to its sheet. */
function job(name: string, edit: (rows: CellSpec[][]) => void): string {
  const rows: CellSpec[][] = [
    ["Dwelling", "Fan", "Pressure (Pa)", "Open area (in²)"].map((value) => ({ value })),
    ...["Lot 1", "Lot 2"].map((lot) => [lot, "B1", 4, 10].map((value) => ({ value }))),
  ];
  edit(rows);
  const book = Workbook.create();
  book.addSheet("Fans", { rows });
  const path = join(folder, name);
  writeFileSync(path, book.save());
  return path;
}

/** The findings on far cells, or why there are none. */
async function told(path: string) {
  const result = await checkFile(path, { today });
  if ("unreadable" in result) return result.unreadable;
  const { summary, findings } = result.check;
  const far = findings.filter(({ kind }) => kind === "cell-far");
  return { fans: summary.fans, far: far.map(({ cell, what }) => `${cell} ${what}`) };
}

const put = (rows: CellSpec[][], row: number, col: number, value: CellSpec["value"]) => {
  while (rows.length <= row) rows.push([]);
  const line = rows[row] as CellSpec[];
  while (line.length < col) line.push({});
  line[col] = { value };
};

describe("A stray cell", () => {
  it("in the last row is told of once, and the job is checked as it stands", async () => {
    const path = job("row.xlsx", (rows) => put(rows, 1_048_575, 6, "x"));
    expect(await told(path)).toEqual({
      fans: 2,
      far: ["G1048576 the cell stands far from all others, which end at D3"],
    });
  });

  it("in the last column too, though a second stands far below", async () => {
    const path = job("col.xlsx", (rows) => {
      put(rows, 0, 16_383, 1);
      put(rows, 49_999, 0, 1);
    });
    expect(await told(path)).toEqual({
      fans: 2,
      far: ["XFD1 the cell stands far from all others, which end at D3"],
    });
  });

  it("a little away from the rest is part of it", async () => {
    const path = job("near.xlsx", (rows) => put(rows, 300, 30, "note"));
    expect(await told(path)).toEqual({ fans: 2, far: [] });
  });
});

describe("A sheet that is larger than any job", () => {
  it("is refused with its size and what to do", async () => {
    const path = job("wide.xlsx", (rows) => {
      for (let row = 3; row < 30_000; row += 1_000)
        for (let col = 0; col < 300; col += 100) put(rows, row, col, 1);
    });
    expect(await told(path)).toContain("down to row 29004 and across to column GS");
  });
});

describe("A sheet of very many lines of numbers", () => {
  it("is looked through in a moment, laws between near lines first", async () => {
    const path = job("lines.xlsx", (rows) => {
      rows.length = 1;
      for (let row = 1; row < 60; row++)
        for (let col = 0; col < 400; col++)
          put(rows, row, col, 3 + ((col * 7 + row * 3) % 50) / 10);
    });
    const start = performance.now();
    expect(await told(path)).toMatchObject({ far: [] });
    expect(performance.now() - start).toBeLessThan(10_000);
  });
});

describe("What is no file to read", () => {
  it("is named as such at once: a pipe, a device", async () => {
    const pipe = join(folder, "pipe.xlsx");
    execFileSync("mkfifo", [pipe]);
    expect(await told(pipe)).toBe("is no plain file: name a workbook");
    expect(await told("/dev/zero")).toBe("is no plain file: name a workbook");
  });
});

/** What the check finds of one kind where formulas stand in column J of so many rows. */
async function ofFormulas(kind: string, rows: number, formula: (row: number) => string) {
  const path = job(`formulas-${rows}.xlsx`, (cells) => {
    for (let row = 20; row < 20 + rows; row++) {
      put(cells, row, 8, row);
      (cells[row] as CellSpec[])[9] = { formula: formula(row + 1), value: 1 };
    }
  });
  const start = performance.now();
  const result = await checkFile(path, { today });
  if ("unreadable" in result) throw new Error(result.unreadable);
  expect(performance.now() - start).toBeLessThan(20_000);
  return result.check.findings.filter((finding) => finding.kind === kind);
}

describe("Formulas that look at more cells than any check can", () => {
  it.each([
    ["text patterns in every row", (row: number) => `COUNTIF(A$1:J$9000,"*"&I${row}&"*")`],
    ["whole sheets", () => `SUM(OFFSET(A$1,0,0,1048576,16384))`],
    ["a thousand million steps", (row: number) => `BINOM.DIST.RANGE(2000000000,0.5,0,1E9-${row})`],
  ])("keep their stored values, and one finding says so: %s", async (_, formula) => {
    const [finding, ...others] = await ofFormulas("value-unchecked", 2_500, formula);
    expect(others).toEqual([]);
    expect(finding?.what).toMatch(/^from this cell on [\d,]+ formulas were not worked out again/);
  });

  it("keep their stored values too where they are longer together than any check can take", async () => {
    const long = (row: number) =>
      `${Array.from({ length: 100 }, (_, i) => `A${i + 1}`).join("+")}+I${row}*0`;
    const [finding, ...others] = await ofFormulas("value-unchecked", 3_000, long);
    expect(others).toEqual([]);
    expect(finding?.what).toMatch(/^from this cell on [\d,]+ formulas .* are longer together/);
  });

  it("are told from a chain of as many that look at one cell each", async () => {
    expect(await ofFormulas("value-unchecked", 4_000, (row) => `J${row - 1}+1`)).toEqual([]);
  });

  it.each([
    "COMBIN(2E9,1E9)",
    "POISSON.DIST(1E9,1E9,TRUE)",
    "CHISQ.DIST(1E9,1E9,TRUE)",
    "CUMIPMT(0.01,1E9,1,1,1E9,0)",
    "BESSELJ(1,1E9)",
    "GAMMA.INV(0.5,1E9,1)",
    "DB(1E9,1,1E9,1E9)",
    "FACT(1E9)",
    "SUM(MMULT(MUNIT(900),MUNIT(900)))",
  ])("of numbers beyond any sheet's are left as they are: %s", async (formula) => {
    expect(await ofFormulas("value-stale", 3, () => formula)).toEqual([]);
  });
});

describe("A cell with more text than can be read", () => {
  it("is cut where a finding quotes it", async () => {
    const path = job("prose.xlsx", (rows) => {
      for (const [col, text] of ["Lot ", "a ", "/ ", " "].entries())
        put(rows, 3, col, text.repeat(32_000 / text.length));
    });
    const start = performance.now();
    const result = await checkFile(path, { today });
    if ("unreadable" in result) throw new Error(result.unreadable);
    expect(performance.now() - start).toBeLessThan(10_000);
    expect(result.check.findings.length).toBeGreaterThan(0);
    for (const { what, about } of result.check.findings)
      expect(what.length + about.length).toBeLessThan(1_000);
  });

  it("of a text table is refused with its place", async () => {
    const path = join(folder, "line.csv");
    writeFileSync(path, `Dwelling,Fan\nLot 1,${"x".repeat(40_000)}`);
    expect(await told(path)).toMatch(/^cell B2 has 40000 characters, more than the 32767 that/);
  });

  it("or with a longer formula than it can hold is refused in a line", () => {
    const cell = `<row r="1"><c r="A1"><f>1${"+1".repeat(20_000)}</f><v>1</v></c></row>`;
    expect(() => openCells(cell).sheet.cell(0, 0)).toThrow(
      "cell A1 holds a formula of 40001 characters, more than a cell can",
    );
  });

  it("than a cell can hold is refused in a line", () => {
    const strings = `<sst xmlns="${main}"><si><t>${"a".repeat(300_000)}</t></si></sst>`;
    const cell = '<row r="1"><c r="A1" t="s"><v>0</v></c></row>';
    const open = () =>
      openCells(cell, { "xl/sharedStrings.xml": strings }, ["sharedStrings.xml"]).sheet.cell(0, 0);
    expect(open).toThrow("longer than a cell can hold");
  });
});

describe("A text table", () => {
  it.each([
    ["rows", /^has more than 200,000 rows/, "1,2\n".repeat(200_001)],
    [
      "rows ended by a carriage return alone",
      /^has more than 200,000 rows/,
      "1,2\r".repeat(200_001),
    ],
    ["rows in quotation marks", /^has more than 200,000 rows/, '"1",2\n'.repeat(200_001)],
    ["cells", /^has more than 2,000,000 cells/, `${",".repeat(9_999)}x\n`.repeat(201)],
    ["characters in a line", /^has a line of more than 1,000,000 characters/, "1,".repeat(500_001)],
    ["characters", /^has more than 32,000,000 characters/, `${"x".repeat(99)}\n`.repeat(320_001)],
  ])("of too many %s is refused in one line that says what to do", async (what, says, text) => {
    const path = join(folder, `${what}.csv`);
    writeFileSync(path, text);
    const said = await told(path);
    expect(said).toMatch(says);
    expect(said).toMatch(/part it into several files|are its lines parted\?$/);
  });
});

describe("Thousands of tables", () => {
  it("are looked through once, however many formulas ask for theirs", () => {
    let looks = 0;
    const tables = Array.from({ length: 3_000 }, (_, i) => ({
      name: `T${i}`,
      sheet: "Data",
      get ref() {
        looks++;
        return `A${i + 1}:B${i + 1}`;
      },
      columns: ["Lot", "Fan"],
      headerRow: false,
      totalsRow: false,
    }));
    const { sheet } = openCells('<row r="1"><c r="A1"><v>1</v></c></row>');
    const view = { sheets: [sheet], sheet: () => sheet, names: [], tables, date1904: false };
    const book = new Book(view, () => today);
    const [grid] = book.all();
    if (grid === undefined) throw new Error("no sheet");
    for (let row = 0; row < 3_000; row++) expect(book.tableAt(grid, row, 1)).toBe(tables[row]);
    expect(looks).toBeLessThan(10_000);
  });
});

describe("A number format", () => {
  it("longer than spreadsheet programs take is refused in a line", () => {
    const xfs = '<cellXfs><xf numFmtId="0"/><xf numFmtId="164"/></cellXfs>';
    const styles = `<styleSheet xmlns="${main}"><numFmts><numFmt numFmtId="164" formatCode="${"[".repeat(256)}"/></numFmts>${xfs}</styleSheet>`;
    const cell = '<row r="1"><c r="A1" s="1"><v>1</v></c></row>';
    const { sheet } = openCells(cell, { "xl/styles.xml": styles }, ["styles.xml"]);
    expect(() => sheet.numberFormat(0, 0)).toThrow("has 256 characters, more than the 255 that");
  });
});

describe("A workbook that asks for more than a reader can use", () => {
  it("of names that stand for names is read with their stored values", async () => {
    const workbook = Workbook.open(
      readFileSync(
        job("names.xlsx", (rows) => {
          for (const row of rows.slice(1)) row[4] = { formula: "Name0", value: 7 };
        }),
      ),
    );
    for (let i = 0; i < 60; i++) workbook.setName(`Name${i}`, `Name${i + 1}+Name${i + 1}`);
    workbook.setName("Name60", "1");
    const path = join(folder, "named.xlsx");
    writeFileSync(path, workbook.save());
    expect(await told(path)).toEqual({ fans: 2, far: [] });
  });

  it("of which many rows say the same is told in one line with their cells and their number", async () => {
    const path = job("blank.xlsx", (rows) => {
      for (let i = 0; i < 300; i++)
        rows.push([`Lot ${i + 3}`, "B1", null, 10].map((value) => ({ value })));
    });
    const result = await checkFile(path, { today });
    const report = tableReport({ width: 120, colour: false });
    const text = `${report.file(result)}${report.end()}`;
    expect(text).toContain("no reading (300)");
    expect(text.match(/No pressure has been read/g)).toHaveLength(1);
    expect(text).toMatch(/!C\d+:C\d+ +Lot 3, B1 and 299 more +No pressure/);
    // Without a reading no dwelling has a record of its own.
    if (!("check" in result)) throw new Error("not read");
    expect(allRecords(result.check).length).toBeLessThan(5);
  });

  it("with thousands of results prints the first of them and says how many are left", async () => {
    const path = job("many.xlsx", (rows) => {
      for (let i = 0; i < 1200; i++)
        rows.push([`Lot ${i + 3}`, "B1", 9 + i / 100, 10].map((value) => ({ value })));
    });
    const result = await checkFile(path, { today });
    const report = tableReport({ width: 120, colour: false });
    const text = `${report.file(result)}${report.end()}`;
    expect(text).toMatch(/… and \d+ more, which --csv, --html and --json list/);
    expect(text.match(/→/g)?.length).toBeLessThanOrEqual(1500);
  });
});

describe("A workbook beyond what is read", () => {
  it("is refused for the text of its cells, each time that a text stands in one", () => {
    const cells = (n: number) =>
      `<row r="1"><c r="A1" t="inlineStr"><is><t>${"x".repeat(n)}</t></is></c></row>`;
    const open = (n: number) =>
      Workbook.open(openCells(cells(n)).workbook.save(), { text: 10 }).sheets[0]?.rowCount;
    expect(open(10)).toBe(1);
    expect(() => open(11)).toThrow(/more than 10 characters of text, the most that are read/);
  });

  it("is refused for a comment without end in a part of it", () => {
    const open = (n: number) =>
      openCells(`<!--${"- ".repeat(n)}--><row r="1"><c r="A1"><v>1</v></c></row>`).sheet.rowCount;
    expect(open(400_000)).toBe(1);
    expect(() => open(600_000)).toThrow(/a comment in it has more than 1000000 characters/);
  });

  it("is refused for rows of fans beyond those of any job", async () => {
    const path = job("rows.xlsx", (rows) => {
      for (let n = rows.length; n <= 100_001; n++) rows.push([{ value: "Lot" }, { value: n }]);
    });
    expect(await told(path)).toMatch(/^holds 100,001 rows for fans, more than the 100,000 that/);
  });

  it("is refused for a sheet of another form of XML than programs write, where it is long", () => {
    const open = (n: number) =>
      openCells(`<!--${"x".repeat(n)}--><row r="1"><c r="A1"><v>1</v></c></row>`);
    expect(open(10).sheet.rowCount).toBe(1);
    const bytes = open(20_000).workbook.save();
    const rows = () => Workbook.open(bytes, { markup: 10_000 }).sheets[0]?.rowCount;
    expect(rows).toThrow(
      /in another form than spreadsheet programs write, of which .* save it anew/,
    );
  });

  it("gets no records and no comparison of more than a program can take, and is told why", async () => {
    const lots = job("lots.xlsx", (rows) => {
      for (let n = 0; n < 5_100; n++)
        rows.push([`Plot ${n}`, "B1", 4 + (n % 3), 10].map((value) => ({ value })));
    });
    const check = await checkFile(lots, { today });
    if (!("check" in check)) throw new Error(check.unreadable);
    const print = new Print("record", join(folder, "record.xlsx"), { sources: [], replace: false });
    expect(print.add(check.check)).toEqual([]);
    await expect(print.save()).rejects.toThrow(
      /5,102 dwellings are more than the 500 that records/,
    );
    const long = job("long.xlsx", (rows) => {
      for (let n = 0; n < 30_000; n++) rows.push([{ value: n }]);
    });
    await expect(compareFiles([long, long], "table", { today, width: 80 })).rejects.toThrow(
      /has 30,003 rows, more than the 30,000 of which two states are compared/,
    );
  });
});

describe("A box of very many openings", () => {
  it("finds each by its label, and lists the first of them where one is unknown", () => {
    const box = Array.from({ length: 20_000 }, (_, n) => ({ label: `O${n}`, area: 1 }));
    const text = Array.from({ length: 200 }, (_, n) => `o${n * 97}`).join("+");
    const start = performance.now();
    for (let n = 0; n < 500; n++) expect(openingsNamed(text, box)).toHaveLength(200);
    expect(performance.now() - start).toBeLessThan(5_000);
    expect(() => openingsNamed("Z", box)).toThrow(/has O0, O1, .*O29 and 19970 more$/);
  });
});
