import { strToU8, Zip, ZipDeflate } from "fflate";
import { describe, expect, it } from "vitest";
import { cellName } from "../../src/cells";
import { Workbook } from "../../src/workbook";
import { main, openCells, pack, parts, rels, worksheet } from "./packages";

const strings = `<sst xmlns="${main}"><si><t>plain</t></si><si><r><rPr><b/></rPr><t>bold</t></r><r><t xml:space="preserve"> and not</t></r><rPh sb="0" eb="1"><t>reading</t></rPh></si><si><t>a_x000D_b_x005F_x0041_</t></si><si><t><![CDATA[<raw>]]> &amp; more</t></si></sst>`;

function values(cells: string) {
  const { sheet } = openCells(cells, { "xl/sharedStrings.xml": strings }, ["sharedStrings.xml"]);
  return [...sheet.cells()].map((cell) => cell.value);
}

describe("cell values", () => {
  it("every stored type is read", () => {
    expect(
      values(
        '<row r="1"><c r="A1"><v>1.5</v></c><c r="B1" t="n"><v>-2E3</v></c><c r="C1" t="b"><v>1</v></c><c r="D1" t="b"><v>0</v></c><c r="E1" t="e"><v>#N/A</v></c><c r="F1" t="str"><f>A1&amp;"x"</f><v>1.5x</v></c><c r="G1" s="1"/><c r="H1" t="str"><f>""</f><v></v></c></row>',
      ),
    ).toEqual([1.5, -2000, true, false, { error: "#N/A" }, "1.5x", null, ""]);
  });

  it("a formula beside which nothing or an empty inline text is stored has no value", () => {
    expect(
      values(
        '<row r="1"><c r="A1" t="str"><f>1+1</f></c><c r="B1" t="inlineStr"><f>1+1</f><is><t></t></is></c><c r="C1" t="str"><f>""</f><v/></c></row>',
      ),
    ).toEqual([null, null, ""]);
  });

  it("errors newer than the format are read from the rich values that cells name beside #VALUE!", () => {
    // The parts as Excel 16 writes them ([MS-XLSX], rich values): errorType 8 is #SPILL!, 13 #CALC!, 3 #VALUE!.
    const cells = [1, 2, 3].map((vm) => `<c t="e" vm="${vm}"><f>X()</f><v>#VALUE!</v></c>`);
    const rvb = (i: number) => `<bk><extLst><ext uri="{0}"><r:rvb i="${i}"/></ext></extLst></bk>`;
    const { sheet } = openCells(
      `<row>${cells.join("")}<c t="e"><v>#VALUE!</v></c></row>`,
      {
        "xl/metadata.xml": `<metadata xmlns="${main}" xmlns:r="urn:rich"><metadataTypes count="1"><metadataType name="XLRICHVALUE"/></metadataTypes><futureMetadata name="XLRICHVALUE" count="3">${[1, 0, 2].map(rvb).join("")}</futureMetadata><valueMetadata count="3"><bk><rc t="1" v="0"/></bk><bk><rc t="1" v="1"/></bk><bk><rc t="1" v="2"/></bk></valueMetadata></metadata>`,
        "xl/rdRichValue.xml":
          '<rvData xmlns="urn:rich"><rv s="0"><v>13</v><v>3</v></rv><rv s="1"><v>x</v><v>8</v></rv><rv s="0"><v>3</v><v>1</v></rv></rvData>',
        "xl/rdRichValueStructure.xml":
          '<rvStructures xmlns="urn:rich"><s t="_error"><k n="errorType" t="i"/><k n="subType" t="i"/></s><s t="_error"><k n="argument" t="s"/><k n="errorType" t="i"/></s></rvStructures>',
      },
      ["metadata.xml", "rdRichValue.xml", "rdRichValueStructure.xml"],
    );
    expect([...sheet.cells()].map((cell) => cell.value)).toEqual(
      ["#SPILL!", "#CALC!", "#VALUE!", "#VALUE!"].map((error) => ({ error })),
    );
  });

  it("shared strings join rich runs, leave out phonetic runs and undo escapes", () => {
    const cells = [0, 1, 2, 3].map((index) => `<c t="s"><v>${index}</v></c>`).join("");
    expect(values(`<row>${cells}</row>`)).toEqual([
      "plain",
      "bold and not",
      "a\rb_x0041_",
      "<raw> & more",
    ]);
  });

  it("inline strings are read, rich ones too", () => {
    expect(
      values(
        '<row r="1"><c r="A1" t="inlineStr"><is><t xml:space="preserve"> in </t></is></c><c r="B1" t="inlineStr"><is><r><t>ri</t></r><r><t>ch</t></r><rPh sb="0" eb="1"><t>no</t></rPh></is></c></row>',
      ),
    ).toEqual([" in ", "rich"]);
  });

  it("ISO dates become serial numbers", () => {
    // ECMA-376 part 1, 18.17.4.1 (1900 date base): 1900-01-01 is 1 and 1900-03-01 is 61 beside
    // the day that never was; 9999-12-31 is 2958465. 18.17.4.3 writes noon as 0.5.
    const dates = [
      "1900-01-01",
      "1900-02-28",
      "1900-03-01",
      "9999-12-31",
      "2024-05-01T12:00:00Z",
      "T06:00",
    ];
    const cells = dates.map((date) => `<c t="d"><v>${date}</v></c>`).join("");
    expect(values(`<row>${cells}</row>`)).toEqual([1, 59, 61, 2958465, 45413.5, 0.25]);
  });

  it("the 1904 date system moves ISO dates", () => {
    const book = `<workbook xmlns="${main}" xmlns:r="${rels}"><workbookPr date1904="1"/><sheets><sheet name="Data" sheetId="1" r:id="rId1"/></sheets></workbook>`;
    const { workbook, sheet } = openCells('<row><c t="d"><v>1904-01-02</v></c></row>', {
      "xl/workbook.xml": book,
    });
    expect(workbook.date1904).toBe(true);
    expect(sheet.cell(0, 0)?.value).toBe(1);
  });
});

describe("where cells stand", () => {
  it("rows and cells without r follow the one before them", () => {
    const { sheet } = openCells(
      '<row><c><v>1</v></c><c r="C1"><v>2</v></c><c><v>3</v></c></row><row r="5"><c><v>4</v></c></row><row><c><v>5</v></c></row>',
    );
    expect([...sheet.cells()].map((cell) => [cellName(cell.row, cell.col), cell.value])).toEqual([
      ["A1", 1],
      ["C1", 2],
      ["D1", 3],
      ["A5", 4],
      ["A6", 5],
    ]);
  });

  it("prefixed element names mean the same", () => {
    const sheet = `<x:worksheet xmlns:x="${main}"><x:sheetData><x:row r="2"><x:c r="B2" t="inlineStr"><x:is><x:t>here</x:t></x:is></x:c><x:c r="C2"><x:f>1+1</x:f><x:v>2</x:v></x:c></x:row></x:sheetData></x:worksheet>`;
    const opened = Workbook.open(pack(parts(sheet))).sheets[0];
    expect(opened?.cell(1, 1)?.value).toBe("here");
    expect(opened?.cell(1, 2)).toMatchObject({ formula: "1+1", value: 2 });
  });

  it("the extent counts cells with content and not those with a format alone", () => {
    const { sheet } = openCells(
      '<row r="1"><c r="A1"><v>1</v></c><c r="F1" s="1"/></row><row r="3"><c r="B3"><f>1</f></c></row><row r="9"><c r="A9" s="1"/></row>',
    );
    expect([sheet.rowCount, sheet.colCount]).toEqual([3, 2]);
    sheet.clear(2, 1);
    expect([sheet.rowCount, sheet.colCount]).toEqual([1, 1]);
  });

  it("a part with a byte order mark or in UTF-16 is read", () => {
    const sheet = worksheet(
      '<sheetData><row><c t="inlineStr"><is><t>Größe ²</t></is></c></row></sheetData>',
    );
    const marked = new TextEncoder().encode(`\uFEFF${sheet}`);
    const wide = new Uint8Array(
      Buffer.from(`\uFEFF${sheet.replace("UTF-8", "UTF-16")}`, "utf16le"),
    );
    for (const bytes of [marked, wide]) {
      const workbook = Workbook.open(pack(parts("", { "xl/worksheets/sheet1.xml": bytes })));
      expect(workbook.sheets[0]?.cell(0, 0)?.value).toBe("Größe ²");
      workbook.sheets[0]?.setValue(0, 0, "ß");
      const again = Workbook.open(workbook.save());
      expect(again.sheets[0]?.cell(0, 0)?.value).toBe("ß");
      expect(again.part("xl/worksheets/sheet1.xml")?.slice(0, 3)).toEqual(bytes.slice(0, 3));
    }
  });
});

describe("zips", () => {
  it("that were written as a stream, sizes after the data, are read and edited", () => {
    const pieces: Uint8Array[] = [];
    const zip = new Zip((_, piece) => pieces.push(piece));
    const cells = '<row r="1"><c r="A1"><v>1</v></c></row>';
    for (const [name, text] of Object.entries(
      parts(worksheet(`<sheetData>${cells}</sheetData>`)),
    )) {
      const file = new ZipDeflate(name);
      zip.add(file);
      file.push(strToU8(String(text)), true);
    }
    zip.end();
    const workbook = Workbook.open(new Uint8Array(Buffer.concat(pieces)));
    workbook.sheets[0]?.setValue(0, 0, 2);
    expect(Workbook.open(workbook.save()).sheets[0]?.cell(0, 0)?.value).toBe(2);
  });
});

describe("what the workbook says beside its cells", () => {
  const sheet = worksheet(
    '<sheetViews><sheetView workbookViewId="0"><pane xSplit="2" ySplit="1" topLeftCell="C2" state="frozen"/></sheetView></sheetViews><cols><col min="2" max="3" width="12.5" customWidth="1"/><col min="5" max="5" hidden="1"/></cols><sheetData><row r="1" hidden="1"/><row r="2"><c r="A2" s="1"><v>45000</v></c><c r="B2" s="2"><v>1</v></c></row></sheetData><sheetProtection sheet="1"/><customSheetViews><customSheetView><pane ySplit="9" state="frozen"/></customSheetView></customSheetViews><mergeCells><mergeCell ref="A1:B1"/></mergeCells><tableParts><tablePart r:id="rId1"/></tableParts>',
  );
  const workbook = Workbook.open(
    pack(
      parts(
        sheet,
        {
          "xl/workbook.xml": `<workbook xmlns="${main}" xmlns:r="${rels}"><sheets><sheet name="Data" sheetId="4" state="hidden" r:id="rId1"/></sheets><definedNames><definedName name="Limit">Data!$A$2</definedName><definedName name="_xlnm.Print_Titles" localSheetId="0">Data!$1:$1</definedName></definedNames></workbook>`,
          "xl/styles.xml": `<styleSheet xmlns="${main}"><numFmts><numFmt numFmtId="164" formatCode="0.0&quot; Pa&quot;"/></numFmts><cellXfs><xf/><xf numFmtId="14"/><xf numFmtId="164"/></cellXfs></styleSheet>`,
          "xl/worksheets/_rels/sheet1.xml.rels": `<Relationships xmlns="x"><Relationship Id="rId1" Type="${rels}/table" Target="../tables/table1.xml"/></Relationships>`,
          "xl/tables/table1.xml": `<table xmlns="${main}" id="1" name="T" displayName="Fans" ref="A1:B9" totalsRowCount="1"><tableColumns><tableColumn id="1" name="Tag"/><tableColumn id="2" name="Flow_x000a_cfm"/></tableColumns></table>`,
        },
        ["styles.xml"],
      ),
    ),
  );
  const data = workbook.sheet("DATA");

  it("sheet settings are read", () => {
    expect(data?.state).toBe("hidden");
    expect(data?.isProtected).toBe(true);
    expect([data?.frozenRows, data?.frozenCols]).toEqual([1, 2]);
    expect([...(data?.hiddenRows ?? [])]).toEqual([0]);
    expect([...(data?.hiddenCols ?? [])]).toEqual([4]);
    expect([...(data?.columnWidths ?? [])]).toEqual([
      [1, 12.5],
      [2, 12.5],
    ]);
    expect(data?.merges).toEqual(["A1:B1"]);
  });

  it("names, tables and number formats are read", () => {
    expect(workbook.names).toEqual([
      { name: "Limit", formula: "Data!$A$2", sheet: null },
      { name: "_xlnm.Print_Titles", formula: "Data!$1:$1", sheet: "Data" },
    ]);
    expect(workbook.tables).toEqual([
      {
        name: "Fans",
        sheet: "Data",
        ref: "A1:B9",
        columns: ["Tag", "Flow\ncfm"],
        headerRow: true,
        totalsRow: true,
      },
    ]);
    // ECMA-376 part 1, 18.8.30: id 14 is mm-dd-yy.
    expect([0, 1, 2, 99].map((style) => workbook.formatCode(style))).toEqual([
      "General",
      "mm-dd-yy",
      '0.0" Pa"',
      "General",
    ]);
  });
});
