import { describe, expect, it } from "vitest";
import { type SheetSpec, Workbook } from "../../src/workbook";
import {
  main,
  openCells,
  pack,
  parts,
  rels,
  textOf,
  thrownBy,
  unpack,
  worksheet,
} from "./packages";

const spec: SheetSpec = {
  rows: [
    [{ value: "Tag", style: 0 }, { value: "Flow" }, null, { value: true }],
    [],
    [
      { value: " F-1 " },
      { formula: "B1&A1<2", value: false },
      { formula: "_xlfn.SEQUENCE(2)", value: 1, arrayRef: "C3:C4" },
    ],
    [null, null, { value: 2 }],
  ],
  columnWidths: [12, null, 8.5],
  frozenRows: 1,
  frozenCols: 2,
  autoFilter: "A1:D4",
  validations: [
    { ref: "B2:B9", list: ["on demand", 'say "so"'] },
    { ref: "C2:C9", formula: "Other!$A$1:$A$3" },
  ],
  page: { landscape: true },
  tabColor: "ffcc00",
};

function build(): Workbook {
  const workbook = Workbook.create();
  const head = workbook.addStyle({
    bold: true,
    fill: "DDEEFF",
    border: true,
    wrap: true,
    align: "center",
  });
  const one = workbook.addStyle({ numberFormat: "0.0", color: "ff0000", italic: true });
  workbook.addSheet("Job", {
    rows: [[{ value: "Flow", style: head }], [{ value: 1.25, style: one }]],
  });
  workbook.addSheet("It's & more", spec);
  return workbook;
}

describe("a workbook made from nothing", () => {
  it("gives the same bytes from the same calls", () => {
    expect(build().save()).toEqual(build().save());
  });

  it("holds no time but the fixed one and names this program alone", () => {
    const bytes = build().save();
    const view = new DataView(bytes.buffer);
    // APPNOTE 4.4.6: date 0x0021 is 1 January 1980, time 0 is midnight.
    expect(view.getUint32(10, true)).toBe(0x0021_0000);
    expect(unpack(bytes)["docProps/app.xml"]).toContain(
      "<Application>Microsoft Excel Compatible / Fanrow</Application>",
    );
  });

  it("is read back as it was made", () => {
    const again = Workbook.open(build().save());
    expect(again.sheets.map((sheet) => sheet.name)).toEqual(["Job", "It's & more"]);
    const style = again.sheet("job")?.cell(1, 0)?.style ?? 0;
    expect(again.formatCode(style)).toBe("0.0");
    const sheet = again.sheet("IT'S & MORE");
    expect(sheet?.cell(0, 0)?.value).toBe("Tag");
    expect(sheet?.cell(0, 3)?.value).toBe(true);
    expect(sheet?.cell(2, 0)?.value).toBe(" F-1 ");
    expect(sheet?.cell(2, 1)).toMatchObject({ formula: "B1&A1<2", value: false });
    expect(sheet?.cell(2, 2)).toMatchObject({ formula: "_xlfn.SEQUENCE(2)", arrayRef: "C3:C4" });
    expect([sheet?.rowCount, sheet?.colCount]).toEqual([4, 4]);
    expect([sheet?.frozenRows, sheet?.frozenCols]).toEqual([1, 2]);
    expect([...(sheet?.columnWidths ?? [])]).toEqual([
      [0, 12],
      [2, 8.5],
    ]);
  });

  it("marks dynamic arrays in the metadata part", () => {
    const files = unpack(build().save());
    expect(files["xl/worksheets/sheet2.xml"]).toContain(
      '<c r="C3" cm="1"><f t="array" ref="C3:C4">_xlfn.SEQUENCE(2)</f><v>1</v></c>',
    );
    expect(files["xl/metadata.xml"]).toContain('fDynamic="1"');
    expect(files["xl/_rels/workbook.xml.rels"]).toContain("/sheetMetadata");
    expect(files["[Content_Types].xml"]).toContain("/xl/metadata.xml");
  });

  it("keeps the order of elements that the format demands", () => {
    const text = unpack(build().save())["xl/worksheets/sheet2.xml"] ?? "";
    // ECMA-376 part 1, 18.3.1.99 (CT_Worksheet).
    const order = [
      "<sheetPr",
      "<dimension",
      "<sheetViews",
      "<cols",
      "<sheetData",
      "<autoFilter",
      "<dataValidations",
      "<pageSetup",
    ];
    const places = order.map((name) => text.indexOf(name));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
    expect(text).toContain('<formula1>"on demand,say ""so"""</formula1>');
  });

  it("cannot be saved without a sheet", () => {
    expect(thrownBy(() => Workbook.create().save())).toMatchObject({ code: "no-sheets" });
  });
});

describe("sheet names", () => {
  it.each([
    ["", "blank"],
    ["   ", "blank"],
    ["x".repeat(32), "32 characters"],
    ["a/b", '"/"'],
    ["[a", '"["'],
    ["what?", '"?"'],
    ["'quoted", "apostrophe"],
    ["history", "keeps that name"],
    ["DATA", '"Data" already'],
  ])("%j is refused, saying why", (name, why) => {
    const { workbook } = openCells("");
    const before = workbook.save();
    expect(() => workbook.addSheet(name, { rows: [] })).toThrow(why);
    expect(workbook.save()).toBe(before);
  });

  it("31 characters, apostrophes inside and any script are allowed", () => {
    const { workbook } = openCells("");
    for (const name of ["x".repeat(31), "Kim's fans", "Größe ² 漢字", "A & <B>"]) {
      expect(workbook.addSheet(name, { rows: [] }).name).toBe(name);
    }
    expect(Workbook.open(workbook.save()).sheets).toHaveLength(5);
  });
});

describe("a sheet added to someone's workbook", () => {
  const book = `<workbook xmlns="${main}" xmlns:rel="${rels}"><!-- kept --><fileVersion appName="x"/><bookViews><workbookView activeTab="0"/></bookViews><sheets>\n<sheet name="Data" sheetId="7" rel:id="rId1"/></sheets><definedNames><definedName name="N">Data!$A$1</definedName></definedNames><extLst/></workbook>`;
  const open = () =>
    openCells('<row r="1"><c r="A1"><v>1</v></c></row>', { "xl/workbook.xml": book }).workbook;

  it("is spliced into the workbook part and leaves its sheets alone", () => {
    const workbook = open();
    const before = textOf(workbook, "xl/worksheets/sheet1.xml");
    workbook.addSheet("Findings", { rows: [[{ value: "one" }]] });
    expect(textOf(workbook, "xl/workbook.xml")).toBe(
      book.replace("</sheets>", '<sheet name="Findings" sheetId="8" rel:id="rId2"/></sheets>'),
    );
    expect(textOf(workbook, "xl/worksheets/sheet1.xml")).toBe(before);
    const again = Workbook.open(workbook.save());
    expect(again.sheets.map((sheet) => sheet.name)).toEqual(["Data", "Findings"]);
    expect(again.sheet("findings")?.cell(0, 0)?.value).toBe("one");
  });

  it("keeps edits made before it and takes edits after", () => {
    const workbook = open();
    workbook.sheet("Data")?.setValue(0, 0, 5);
    const added = workbook.addSheet("Findings", { rows: [[{ value: "one" }]] });
    added.setValue(1, 0, "two");
    const again = Workbook.open(workbook.save());
    expect(again.sheet("Data")?.cell(0, 0)?.value).toBe(5);
    expect(again.sheet("Findings")?.cell(1, 0)?.value).toBe("two");
  });

  it("changes nothing when its content is refused", () => {
    const workbook = open();
    const before = workbook.save();
    const rows = [
      [{ formula: "A1:A2", value: 1, arrayRef: "A1:A2" }],
      [{ value: Number.POSITIVE_INFINITY }],
    ];
    expect(() => workbook.addSheet("Findings", { rows })).toThrow("Findings!A2");
    expect(workbook.save()).toBe(before);
    const list = ["a,b"];
    expect(() => workbook.addSheet("F", { rows: [], validations: [{ ref: "A1", list }] })).toThrow(
      "comma",
    );
    expect(() => workbook.addSheet("F", { rows: [], tabColor: "red" })).toThrow("hexadecimal");
    expect(workbook.save()).toBe(before);
  });

  it("takes a free part name in a workbook with gaps", () => {
    const { workbook } = openCells("", { "xl/worksheets/Sheet2.xml": "<odd/>" });
    workbook.addSheet("New", { rows: [] });
    expect(workbook.partNames()).toContain("xl/worksheets/sheet3.xml");
    expect(textOf(workbook, "xl/worksheets/Sheet2.xml")).toBe("<odd/>");
  });

  it("can be removed again, with names and places following", () => {
    const workbook = open();
    workbook.addSheet("Findings", { rows: [[{ formula: "1+1", value: 2 }]] });
    workbook.addSheet("Notes", { rows: [[{ value: "x" }]] });
    workbook.removeSheet("FINDINGS");
    expect(workbook.sheets.map((sheet) => sheet.name)).toEqual(["Data", "Notes"]);
    expect(workbook.partNames()).not.toContain("xl/worksheets/sheet2.xml");
    const again = Workbook.open(workbook.save());
    expect(again.sheet("Notes")?.cell(0, 0)?.value).toBe("x");
    expect(textOf(again, "[Content_Types].xml")).not.toContain("sheet2.xml");
    expect(textOf(again, "xl/_rels/workbook.xml.rels")).not.toContain("sheet2.xml");
    again.removeSheet("Notes");
    expect(textOf(again, "xl/workbook.xml")).toBe(book);
  });

  it("local names and the tab in front follow when a sheet before them goes", () => {
    const local = `<workbook xmlns="${main}" xmlns:r="${rels}"><bookViews><workbookView activeTab="1" firstSheet="1"/></bookViews><sheets><sheet name="First" sheetId="1" r:id="rId1"/><sheet name="Second" sheetId="2" r:id="rId2"/></sheets><definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">$A$1</definedName><definedName name="L" localSheetId="1">Second!$A$1</definedName></definedNames></workbook>`;
    const two = { "xl/workbook.xml": local, "xl/worksheets/sheet2.xml": worksheet("<sheetData/>") };
    const { workbook } = openCells("", two, ["worksheets/sheet2.xml"]);
    workbook.removeSheet("First");
    expect(workbook.names).toEqual([{ name: "L", formula: "Second!$A$1", sheet: "Second" }]);
    expect(textOf(workbook, "xl/workbook.xml")).toContain('activeTab="0" firstSheet="0"');
  });

  it("goes with the names that belong to it alone", () => {
    const own = `<workbook xmlns="${main}" xmlns:r="${rels}"><sheets><sheet name="Data" sheetId="1" r:id="rId1"/><sheet name="Findings" sheetId="2" r:id="rId2"/></sheets><definedNames><definedName name="_xlnm._FilterDatabase" localSheetId="1" hidden="1">Findings!$A$1:$B$9</definedName></definedNames></workbook>`;
    const two = { "xl/workbook.xml": own, "xl/worksheets/sheet2.xml": worksheet("<sheetData/>") };
    const { workbook } = openCells("", two, ["worksheets/sheet2.xml"]);
    workbook.removeSheet("Findings");
    expect(textOf(workbook, "xl/workbook.xml")).toBe(
      own
        .replace(/<definedNames>.*<\/definedNames>/, "")
        .replace(/<sheet name="Findings".*?\/>/, ""),
    );
  });

  it("stays when something refers to it or it is the last one", () => {
    const workbook = open();
    expect(() => workbook.removeSheet("Data")).toThrow("needs a visible sheet");
    expect(() => workbook.removeSheet("Nowhere")).toThrow('no sheet "Nowhere"');
    workbook.addSheet("Kim's list", { rows: [[{ value: 1 }]] });
    workbook.sheet("Data")?.setFormula(0, 0, "'Kim''s list'!A1", 1);
    expect(() => workbook.removeSheet("Kim's list")).toThrow(
      "xl/worksheets/sheet1.xml refers to it",
    );
    workbook.sheet("Data")?.setValue(0, 0, 1);
    workbook.removeSheet("Kim's list");
    workbook.addSheet("Other", { rows: [] });
    expect(() => workbook.removeSheet("Data")).toThrow("xl/workbook.xml refers to it");
    const drawn = openCells("", {
      "xl/worksheets/_rels/sheet1.xml.rels": `<Relationships xmlns="x"><Relationship Id="rId1" Type="${rels}/drawing" Target="../d.xml"/></Relationships>`,
    }).workbook;
    drawn.addSheet("Other", { rows: [] });
    expect(() => drawn.removeSheet("Data")).toThrow("drawing");
  });
});

describe("cell formats", () => {
  const styles = `<styleSheet xmlns="${main}" xmlns:mc="urn:mc"><fonts count="1"><font><sz val="9"/><color theme="1"/><name val="Noto Sans"/><family val="2"/></font></fonts><fills count="2"><fill/><fill/></fills><borders count="1"><border/></borders><cellXfs count="1"><xf numFmtId="0"/></cellXfs><dxfs count="0"/><extLst><ext uri="kept"/></extLst></styleSheet>`;
  const open = () => openCells("", { "xl/styles.xml": styles }, ["styles.xml"]).workbook;

  it("are appended and everything before them stays", () => {
    const workbook = open();
    const style = workbook.addStyle({ bold: true, numberFormat: "0.000", align: "right" });
    expect(style).toBe(1);
    expect(workbook.formatCode(style)).toBe("0.000");
    expect(textOf(workbook, "xl/styles.xml")).toBe(
      styles
        .replace(
          "<fonts",
          '<numFmts count="1"><numFmt numFmtId="164" formatCode="0.000"/></numFmts><fonts',
        )
        .replace('<fonts count="1">', '<fonts count="2">')
        .replace(
          "</fonts>",
          '<font><b/><sz val="9"/><color theme="1"/><name val="Noto Sans"/><family val="2"/></font></fonts>',
        )
        .replace(
          '<cellXfs count="1"><xf numFmtId="0"/>',
          '<cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="164" fontId="1" fillId="0" borderId="0" xfId="0" applyNumberFormat="1" applyFont="1" applyAlignment="1"><alignment horizontal="right"/></xf>',
        ),
    );
  });

  it("are found again, in the same workbook and after reopening it", () => {
    const workbook = open();
    const wanted = { fill: "FFCC00", border: true, wrap: true, numberFormat: "0.00" } as const;
    const style = workbook.addStyle(wanted);
    expect(workbook.addStyle({ ...wanted, bold: true })).toBe(style + 1);
    const again = Workbook.open(workbook.save());
    const before = again.save();
    expect(again.addStyle(wanted)).toBe(style);
    expect(again.save()).toBe(before);
  });

  it("are made with a styles part where there is none", () => {
    const { workbook, sheet } = openCells('<row r="1"><c r="A1"><v>1</v></c></row>');
    expect(workbook.formatCode(0)).toBe("General");
    const style = workbook.addStyle({ numberFormat: "yyyy-mm-dd" });
    const added = workbook.addSheet("New", { rows: [[{ value: 45000, style }]] });
    expect(workbook.formatCode(added.cell(0, 0)?.style ?? 0)).toBe("yyyy-mm-dd");
    expect(sheet.cell(0, 0)?.style).toBe(0);
    expect(Workbook.open(workbook.save()).formatCode(style)).toBe("yyyy-mm-dd");
  });
});

describe("strict packages", () => {
  it("gain sheets in their own namespaces", () => {
    const source = Object.fromEntries(
      Object.entries(parts(worksheet("<sheetData/>"))).map(([name, text]) => [
        name,
        String(text)
          .replaceAll(rels, "http://purl.oclc.org/ooxml/officeDocument/relationships")
          .replaceAll(main, "http://purl.oclc.org/ooxml/spreadsheetml/main"),
      ]),
    );
    const workbook = Workbook.open(pack(source));
    workbook.addSheet("New", { rows: [[{ value: 1 }]] });
    const again = Workbook.open(workbook.save());
    expect(again.sheet("New")?.cell(0, 0)?.value).toBe(1);
    expect(JSON.stringify(unpack(workbook.save()))).not.toContain(
      "schemas.openxmlformats.org/spreadsheetml",
    );
  });
});
