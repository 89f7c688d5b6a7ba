import { execFileSync } from "node:child_process";
import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readSheet } from "../../src/workbook/sheet-read";
import { main, worksheet } from "./packages";
import { bothWays, contextOf, type Given, isPlain } from "./sheets";

/*
 * Sheets are read by a scanner for the plain form that spreadsheet programs write, or by the XML
 * parser. Here the two are held against each other.
 */
const books = new URL("../../workbooks/", import.meta.url).pathname;
const files = readdirSync(books).filter((name) => name.endsWith(".xlsx"));
const strings = ["plain", "bold and not", "a\rb", ""];

function sheetParts(path: string): [string, Uint8Array][] {
  return Object.entries(unzipSync(new Uint8Array(readFileSync(path)))).filter(([name]) =>
    name.startsWith("xl/worksheets/sheet"),
  );
}

function cells(inner: string): string {
  return worksheet(`<sheetData>${inner}</sheetData>`);
}

function expectPlain(sheet: string | Uint8Array, given: Given = {}): void {
  const { plain, inPieces, full, together } = bothWays(sheet, given);
  expect(full).toHaveProperty("rows");
  expect(plain).toEqual(full);
  expect(inPieces).toEqual(full);
  expect(together).toEqual(full);
}

function expectLeft(sheet: string | Uint8Array, given: Given = {}): void {
  const { plain, full, together } = bothWays(sheet, given);
  expect(plain).toBeUndefined();
  expect(together).toEqual(full);
}

describe("sheets of real programs are read the plain way, and the same", () => {
  let folder = "";
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "plain-"));
    for (const name of files) copyFileSync(join(books, name), join(folder, name));
    const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
    const to = ["--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", join(folder, "saved")];
    const named = files.map((name) => join(folder, name));
    execFileSync("soffice", [profile, "--headless", "--norestore", ...to, ...named], {
      stdio: "pipe",
    });
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it.each(files)("%s as it was built", (name) => {
    const parts = sheetParts(join(books, name));
    expect(parts.length).toBeGreaterThan(0);
    for (const [, bytes] of parts) expectPlain(bytes, { strings });
  });

  it.each(files)("%s as LibreOffice saves it", (name) => {
    const parts = sheetParts(join(folder, "saved", name));
    expect(parts.length).toBeGreaterThan(0);
    const many = Array.from({ length: 5000 }, (_, index) => `text ${index}`);
    for (const [, bytes] of parts) expectPlain(bytes, { strings: many });
  });
});

describe("the plain reading", () => {
  it("takes every type of value", () => {
    expectPlain(
      cells(
        '<row r="1"><c r="A1"><v>1.5</v></c><c r="B1" t="n"><v>-2E3</v></c><c r="C1" t="b"><v>1</v></c><c r="D1" t="b"><v>false</v></c><c r="E1" t="e"><v>#N/A</v></c><c r="F1" t="str"><f>A1&amp;"x"</f><v>1.5x_x000D_</v></c><c r="G1" s="1"/><c r="H1" t="str"><f>""</f></c><c r="I1" t="str"><v></v></c><c r="J1" t="d"><v>2024-05-01T12:00:00Z</v></c><c r="K1" t="s"><v>2</v></c><c r="L1" t="inlineStr"><is><t xml:space="preserve"> in_x0041_ </t></is></c><c r="M1" t="inlineStr"/><c r="N1"></c><c r="O1" t="str"/><c r="P1" t="zz"/><c r="Q1"><v/></c><c r="R1" t="inlineStr"><is><t/></is></c></row>',
      ),
      { strings },
    );
  });

  it.each([
    "0",
    "-0",
    "007",
    "1.07",
    ".5",
    "5.",
    "-.25",
    "97.42759834872254",
    "9007199254740993",
    "0.1234567890123456789",
    "123456789012345.678",
    "1e-7",
    "+3",
    " 4 ",
    "3.6666666666666665",
    "0.00000000000000000000001",
  ])("gives the number %s as it is written", (number) => {
    expectPlain(cells(`<row r="1"><c r="A1"><v>${number}</v></c></row>`));
  });

  it("takes attributes in any order and of any program, quotes of both kinds and white space", () => {
    expectPlain(
      cells(
        '\r\n <row\n spans="1:3" x14ac:dyDescent="0.25" s="2" customFormat="1" hidden="true" r=\'3\' >\n\t<c t="str" cm="1" s=\'4\' r="B3" ><f ca="1" >1</f> <v xml:space="preserve"> x\r\ny\rz </v></c> </row><row/><row hidden="1"></row>',
      ),
    );
  });

  it("takes rows and cells without r", () => {
    expectPlain(
      cells(
        '<row><c><v>1</v></c><c r="C1"><v>2</v></c><c><v>3</v></c></row><row r="5"><c/></row><row><c><v>5</v></c></row>',
      ),
    );
  });

  it("takes shared, array and table formulas", () => {
    expectPlain(
      cells(
        '<row r="1"><c r="A1"><f t="shared" ref="A1:A3" si="0">B1*2</f><v>1</v></c><c r="C1"><f t="array" ref="C1:C2">B1:B2</f><v>1</v></c><c r="D1"><f t="dataTable" ref="D1:D2" dt2D="1"/><v>4</v></c></row><row r="2"><c r="A2"><f t="shared" si="0"/><v>2</v></c></row><row r="3"><c r="A3"><f si="0" t="shared"></f></c><c r="B3"><f t="shared" si="0">C9</f></c><c r="D3"><f/></c></row>',
      ),
    );
  });

  it("decodes the entities of XML and characters by number", () => {
    expectPlain(
      cells(
        '<row><c t="str"><f>A1&lt;&gt;&quot;&apos;&amp;&#10;&#x1F600;&#xe9;</f><v>&#13;a]]b&amp;amp;</v></c></row>',
      ),
    );
  });

  it("reads what stands around the cells", () => {
    expectPlain(
      worksheet(
        '<sheetViews><sheetView><pane xSplit="2" ySplit="1" state="frozen"/></sheetView></sheetViews><cols><col min="1" max="3" width="11.1" style="2" hidden="1"/></cols><sheetData></sheetData><sheetProtection sheet="1"/><autoFilter ref="A1:B2"><filterColumn colId="0"/></autoFilter><mergeCells><mergeCell ref="A1:B2"/></mergeCells><!-- more --><customSheetViews><customSheetView><pane xSplit="9" state="frozen"/></customSheetView></customSheetViews>',
      ),
    );
  });

  it("reads UTF-16 and a byte order mark", () => {
    const text = cells('<row><c t="str"><v>Größe 😀 →</v></c></row>').replace("UTF-8", "UTF-16");
    const wide = new Uint8Array(text.length * 2 + 2);
    const view = new DataView(wide.buffer);
    [0xfeff, ...text.split("").map((unit) => unit.charCodeAt(0))].forEach((unit, at) => {
      view.setUint16(at * 2, unit, true);
    });
    expectPlain(wide);
    expectPlain(`\uFEFF${cells("<row/>")}`);
  });
});

describe("what is not plain is left to the XML parser, right or wrong", () => {
  it.each([
    ["a comment", '<row r="1"><!-- no --><c r="A1"><v>1</v></c></row>'],
    ["a comment in a value", '<row r="1"><c r="A1"><v>1<!-- 2 --></v></c></row>'],
    ["CDATA", '<row><c t="str"><v><![CDATA[<a>]]></v></c></row>'],
    ["a processing instruction", "<?p i?><row/>"],
    [
      "rich text with a reading",
      '<row><c t="inlineStr"><is><r><t>ri</t></r><r><t>ch</t></r><rPh sb="0" eb="1"><t>no</t></rPh></is></c></row>',
    ],
    ["an extension", "<row><c><v>1</v><extLst><ext/></extLst></c></row>"],
    ["white space in an end tag", "<row><c><v>1</v ></c></row>"],
    ["white space beside an equals sign", '<row r = "2"/>'],
    ["an entity in an attribute", '<row><c r="&#65;1"/></row>'],
    ["a line end in an attribute", '<row spans="1\n2"/>'],
    ["a name beyond ASCII", '<row größe="1"/>'],
    ["cells out of order", '<row r="1"><c r="B1"><v>2</v></c><c r="A1"><v>1</v></c></row>'],
    ["a row in two places", '<row r="1"><c r="A1"/></row><row r="1"><c r="B1"/></row>'],
    [
      "a shared formula before its master",
      '<row r="1"><c r="A1"><f t="shared" si="0"/></c><c r="B1"><f t="shared" si="0" ref="A1:B1">C1</f></c></row>',
    ],
    ["two values in a cell", "<row><c><v>1</v><v>2</v></c></row>"],
    ["a style that is no number", '<row><c s="x"/></row>'],
    ["an unknown element", "<x><row/></x>"],
    // From here on it is damage.
    ["a cell twice", '<row r="1"><c r="A1"/><c r="A1"/></row>'],
    ["a cell of another row", '<row r="2"><c r="A1"/></row>'],
    ["a cell outside a row", '<c r="A1"/>'],
    ["a column too many", '<row r="1"><c r="XFD1"/><c/></row>'],
    ["a row number beyond the sheet", '<row r="1048577"/>'],
    ["a missing string", '<row><c t="s"><v>9</v></c></row>'],
    ["a string index that is none", '<row><c t="s"><v>1.5</v></c></row>'],
    ["a word for a number", "<row><c><v>many</v></c></row>"],
    ["a number without end", "<row><c><v>1e999</v></c></row>"],
    ["an unknown type", '<row><c t="zz"><v>1</v></c></row>'],
    ["an attribute twice", '<row r="1" r="1"/>'],
    ["a cell's attribute twice", '<row><c cm="1" cm="1"/></row>'],
    ["a cell's style twice", '<row><c s="1" s="1"/></row>'],
    ["attributes without space", '<row r="1"s="2"/>'],
    ["an unknown entity", '<row><c t="str"><v>&nbsp;</v></c></row>'],
    ["a forbidden character by number", '<row><c t="str"><v>&#0;</v></c></row>'],
    ["half a character by number", '<row><c t="str"><v>&#xD800;</v></c></row>'],
    ["a capital X in a number", '<row><c t="str"><v>&#X41;</v></c></row>'],
    ["an ampersand", '<row><c t="str"><v>a & b; c</v></c></row>'],
    ["the end of CDATA in text", '<row><c t="str"><v>a]]>b</v></c></row>'],
    ["a control character", '<row><c t="str"><v>\u0001</v></c></row>'],
    ["a character that is none", '<row><c t="str"><v>\uFFFF</v></c></row>'],
    ["a control character in an attribute", '<row spans="\u0002"/>'],
    ["a less-than sign in an attribute", '<row spans="<"/>'],
    ["an end tag missing", '<row r="1"><c r="A1"><v>1</v></row>'],
    ["an end tag too many", '<row r="1"></c></row>'],
    ["a slash alone", "<row / >"],
  ])("%s", (_, inner) => {
    expectLeft(cells(inner), { strings });
  });

  it.each([
    [
      "prefixes",
      `<x:worksheet xmlns:x="${main}"><x:sheetData><x:row/></x:sheetData></x:worksheet>`,
    ],
    [
      "a prefix on the root alone",
      `<x:worksheet xmlns:x="u"><sheetData></sheetData></x:worksheet>`,
    ],
    ["a comment before the cells", worksheet("<!-- <sheetData> --><sheetData></sheetData>")],
    ["an empty element for the cells", worksheet("<sheetData/>")],
    ["attributes of the cell data", worksheet('<sheetData a="1"><row/></sheetData>')],
    ["no cell data", worksheet("<cols/>")],
    ["cell data for a root", "<sheetData><row/></sheetData>"],
    ["XML 1.1", `<?xml version="1.1"?><worksheet><sheetData><row/></sheetData></worksheet>`],
    [
      "a document type",
      `<!DOCTYPE worksheet>${worksheet("<sheetData><row/></sheetData>").slice(39)}`,
    ],
    ["another encoding", cells("<row/>").replace("UTF-8", "ISO-8859-1")],
    ["an end tag missing before the cells", worksheet("<cols><sheetData></sheetData>")],
    ["damage after the cells", worksheet("<sheetData><row/></sheetData><mergeCells>")],
    ["an end after the root", `${cells("<row/>")}<more/>`],
    ["no end", cells("<row/>").slice(0, -20)],
    ["no end of the cells", cells("<row/>").slice(0, -30)],
  ])("%s", (_, sheet) => {
    expectLeft(sheet);
  });

  it("bytes that are no text", () => {
    const bytes = new TextEncoder().encode(cells('<row><c t="str"><v>x</v></c></row>'));
    bytes[bytes.indexOf(0x78, 200)] = 0xff;
    expectLeft(bytes);
  });

  it("elements nested too deep around the cells", () => {
    for (let depth = 1; depth < 12; depth++)
      for (const nested of [0, 3]) {
        const inner = `${"<a>".repeat(nested)}<sheetData><row><c t="inlineStr"><is><t>x</t></is></c></row></sheetData>${"</a>".repeat(nested)}`;
        const { full, together } = bothWays(worksheet(inner), { depth });
        expect(together).toEqual(full);
      }
  });

  it("a second list of cells goes on after the first", () => {
    const twice = worksheet(
      "<sheetData><row><c><v>1</v></c></row></sheetData><sheetData><row><c><v>2</v></c></row></sheetData>",
    );
    const { full, together } = bothWays(twice);
    expect(together).toEqual(full);
  });
});

describe("rows without cells", () => {
  it("are read the plain way to the end of the sheet, however many there are", () => {
    const rows = Array.from({ length: 600_000 }, (_, i) => `<row r="${i + 2}" ht="20"/>`);
    expect(isPlain(cells(`<row r="1"><c r="A1"><v>1</v></c></row>${rows.join("")}`))).toBe(true);
  });
});

describe("What is more than is read", () => {
  const refused = (sheet: string, given: Given) => {
    const { plain, inPieces, full } = bothWays(sheet, given);
    expect(plain).toMatchObject({ code: "too-large" });
    expect(inPieces).toEqual(plain);
    expect(full).toEqual(plain);
  };

  it("is refused where it is met, without a second reading: cells", () => {
    const three = cells("<row><c/><c><v>1</v></c><c/></row><row>");
    refused(three, { cells: 2 });
    expectPlain(three.replace("<row></", "</"), { cells: 3 });
  });

  it("characters of text, whatever kind of text they stand in", () => {
    const inline = '<c t="inlineStr"><is><t>abc</t></is></c>';
    const texts = cells(`<row>${inline}<c t="str"><v>de</v></c><c t="s"><v>0</v></c></row><row>`);
    refused(texts, { text: 6, strings: ["fg"] });
    expectPlain(texts.replace("<row></", "</"), { text: 7, strings: ["fg"] });
  });

  it("what stands around the cells", () => {
    const link = '<hyperlink ref="A1"/>';
    const sheet = worksheet(`<sheetData/><hyperlinks>${link.repeat(100)}</hyperlinks>`);
    const { plain, full } = bothWays(sheet, { markup: 1_000 });
    expect(plain ?? full).toMatchObject({ code: "too-large" });
    const filled = sheet.replace("<sheetData/>", "<sheetData><row><c/></row></sheetData>");
    expect(bothWays(filled, { markup: 1_000 }).inPieces).toMatchObject({ code: "too-large" });
    expectPlain(filled, { markup: 3_000 });
  });
});

describe("A short text", () => {
  it("keeps no more in memory than itself of the part it was read from", () => {
    setFlagsFromString("--expose-gc");
    const collect = runInNewContext("gc") as () => void;
    const used = () => {
      collect();
      const { heapUsed, external } = process.memoryUsage();
      return heapUsed + external;
    };
    const rows = Array.from({ length: 100 }, (_, i) => {
      return `<row spans="${"1".repeat(200_000)}"><c t="str"><v>a text of more than twelve ${i}</v></c></row>`;
    });
    const sheet = new TextEncoder().encode(cells(rows.join("")));
    const before = used();
    const data = readSheet("sheet1.xml", sheet, contextOf({}));
    expect(used() - before).toBeLessThan(3_000_000);
    expect(data.rows.get(99)?.values).toEqual(["a text of more than twelve 99"]);
  });
});
