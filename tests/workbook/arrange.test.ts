import { describe, expect, it } from "vitest";
import { Workbook } from "../../src/workbook";
import { main, openCells, pack, parts, rels, textOf, thrownBy, worksheet } from "./packages";

/** A sheet as a program leaves it, with parts that no change may touch. */
const inside = `<sheetPr codeName="S"><outlinePr summaryBelow="0"/></sheetPr><dimension ref="A1:B3"/><sheetViews><sheetView tabSelected="1" workbookViewId="0"><selection activeCell="B2" sqref="B2"/></sheetView></sheetViews><sheetFormatPr defaultRowHeight="15"/><cols><col min="1" max="4" width="9.5" style="1" customWidth="1"/><col min="7" max="7" width="20"/></cols><!-- kept --><sheetData><row r="1" spans="1:2"><c r="A1"><v>1</v></c></row><row r="3" hidden="1" ht="22"><c r="B3"><v>2</v></c></row></sheetData><pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/><pageSetup orientation="portrait" r:id="rId9"/><extLst><ext uri="kept"/></extLst>`;
const part = "xl/worksheets/sheet1.xml";

function open(more = inside) {
  const workbook = Workbook.open(pack(parts(worksheet(more))));
  const [sheet] = workbook.sheets;
  if (sheet === undefined) throw new Error("no sheet");
  return { workbook, sheet, before: textOf(workbook, part) };
}

describe("What stands around the cells", () => {
  it("stays byte for byte but for the column whose width is set", () => {
    const { workbook, sheet, before } = open();
    sheet.arrange({ widths: new Map([[1, 30]]) });
    expect(textOf(workbook, part)).toBe(
      before.replace(
        '<col min="1" max="4" width="9.5" style="1" customWidth="1"/>',
        '<col min="1" max="1" width="9.5" style="1" customWidth="1"/><col min="2" max="2" width="30" style="1" customWidth="1"/><col min="3" max="4" width="9.5" style="1" customWidth="1"/>',
      ),
    );
    expect([...sheet.columnWidths.entries()].slice(0, 2)).toEqual([
      [0, 9.5],
      [1, 30],
    ]);
  });

  it("takes hidden columns and rows, and shows them again", () => {
    const { workbook, sheet, before } = open();
    sheet.arrange({
      hiddenCols: new Map([[5, true]]),
      hiddenRows: new Map([
        [1, true],
        [2, false],
      ]),
      heights: new Map([[9, 40]]),
    });
    const text = textOf(workbook, part);
    expect(text).toBe(
      before
        .replace('<col min="7"', '<col min="6" max="6" hidden="1"/><col min="7"')
        .replace('<row r="3" hidden="1" ht="22">', '<row r="2" hidden="1"/><row r="3" ht="22">')
        .replace("</sheetData>", '<row r="10" ht="40" customHeight="1"/></sheetData>'),
    );
    const again = Workbook.open(workbook.save()).sheets[0];
    expect([again?.isHiddenRow(1), again?.isHiddenRow(2)]).toEqual([true, false]);
    expect([again?.isHiddenCol(5), again?.isHiddenCol(6)]).toEqual([true, false]);
    sheet.arrange({ hiddenCols: new Map([[5, false]]), hiddenRows: new Map([[1, false]]) });
    expect(sheet.hiddenRows.size + sheet.hiddenCols.size).toBe(0);
  });

  it("is changed beside edits of cells, before and after them", () => {
    const { workbook, sheet } = open();
    sheet.setValue(2, 1, 7);
    sheet.arrange({ hiddenRows: new Map([[2, false]]), merges: ["C1:D2"] });
    sheet.setValue(5, 0, "below");
    const again = Workbook.open(workbook.save()).sheets[0];
    expect([again?.cell(2, 1)?.value, again?.cell(5, 0)?.value]).toEqual([7, "below"]);
    expect([again?.merges, again?.isHiddenRow(2)]).toEqual([["C1:D2"], false]);
  });

  it("freezes rows and columns and keeps the cell that was selected", () => {
    const { workbook, sheet, before } = open();
    sheet.arrange({ frozen: { rows: 1, cols: 2 } });
    expect(textOf(workbook, part)).toContain(
      '<sheetView tabSelected="1" workbookViewId="0"><pane xSplit="2" ySplit="1" topLeftCell="C2" activePane="bottomRight" state="frozen"/><selection activeCell="B2" sqref="B2" pane="bottomRight"/></sheetView>',
    );
    expect([sheet.frozenRows, sheet.frozenCols]).toEqual([1, 2]);
    sheet.arrange({ frozen: { rows: 0, cols: 0 } });
    expect(textOf(workbook, part)).toBe(before);
  });

  it("takes the page, with names for titles and area, and keeps the printer's settings", () => {
    const { workbook, sheet } = open();
    sheet.arrange({
      page: {
        paper: "a4",
        landscape: true,
        pagesWide: 1,
        centered: true,
        header: { left: "A && B", right: "&P" },
        titleRows: [0, 1],
        area: "A1:D40",
        breaksBefore: [20, 10],
      },
      tabColor: "ff0000",
    });
    const text = textOf(workbook, part);
    expect(text).toContain(
      '<sheetPr codeName="S"><tabColor rgb="FFFF0000"/><outlinePr summaryBelow="0"/><pageSetUpPr fitToPage="1"/></sheetPr>',
    );
    expect(text).toContain(
      '<printOptions horizontalCentered="1"/><pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/><pageSetup orientation="landscape" r:id="rId9" paperSize="9" fitToWidth="1" fitToHeight="0"/><headerFooter><oddHeader>&amp;LA &amp;&amp; B&amp;R&amp;P</oddHeader></headerFooter><rowBreaks count="2" manualBreakCount="2"><brk id="10" max="16383" man="1"/><brk id="20" max="16383" man="1"/></rowBreaks><extLst>',
    );
    expect(workbook.names.map(({ name, formula }) => [name, formula])).toEqual([
      ["_xlnm.Print_Titles", "'Data'!$1:$2"],
      ["_xlnm.Print_Area", "'Data'!$A$1:$D$40"],
    ]);
  });

  it("keeps the order of elements that the format demands, whatever is added", () => {
    const { workbook, sheet } = open("<sheetData/>");
    sheet.arrange({
      page: { centered: true, landscape: true, footer: { center: "x" }, breaksBefore: [3] },
      validations: [{ ref: "A1", type: "list", formula: '"a,b"' }],
      conditionalFormats: [
        {
          ref: "A1",
          operator: null,
          formulas: ["TRUE"],
          stopIfTrue: false,
          look: { fill: "FFCC00" },
        },
      ],
      merges: ["B1:C1"],
      widths: new Map([[0, 5]]),
      frozen: { rows: 1, cols: 0 },
      tabColor: "00FF00",
    });
    const text = textOf(workbook, part);
    // ECMA-376 part 1, 18.3.1.99 (CT_Worksheet).
    const order = [
      "<sheetPr",
      "<sheetViews",
      "<cols",
      "<sheetData",
      "<mergeCells",
      "<conditionalFormatting",
      "<dataValidations",
      "<printOptions",
      "<pageSetup",
      "<headerFooter",
      "<rowBreaks",
    ];
    const places = order.map((name) => text.indexOf(name));
    expect(Math.min(...places)).toBeGreaterThan(0);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it.each([
    [{ widths: new Map([[0, 300]]) }, "300 characters"],
    [{ heights: new Map([[0, 500]]) }, "500 points"],
    [{ merges: ["A1:B2", "B2:C3"] }, "overlap"],
    [{ frozen: { rows: -1, cols: 0 } }, "negative"],
    [{ tabColor: "red" }, "hexadecimal"],
  ] as const)("refuses %j and changes nothing", (changes, why) => {
    const { workbook, sheet, before } = open();
    expect(String(thrownBy(() => sheet.arrange(changes)))).toContain(why);
    expect(textOf(workbook, part)).toBe(before);
  });

  it("is written in the prefix of a part that has one", () => {
    const text = `<x:worksheet xmlns:x="${main}" xmlns:r="${rels}"><x:sheetData><x:row r="1"><x:c r="A1"><x:v>1</x:v></x:c></x:row></x:sheetData></x:worksheet>`;
    const workbook = Workbook.open(pack(parts(text)));
    workbook.sheets[0]?.arrange({ merges: ["A1:B1"], hiddenRows: new Map([[0, true]]) });
    expect(textOf(workbook, part)).toBe(
      text
        .replace('<x:row r="1">', '<x:row r="1" hidden="1">')
        .replace(
          "</x:sheetData>",
          '</x:sheetData><x:mergeCells count="1"><x:mergeCell ref="A1:B1"/></x:mergeCells>',
        ),
    );
  });
});

describe("Conditional formats and validations", () => {
  const rules = `<sheetData/><conditionalFormatting sqref="A1:A9"><cfRule type="cellIs" dxfId="0" priority="3" operator="greaterThan"><formula>5</formula></cfRule><cfRule type="colorScale" priority="1"><colorScale><cfvo type="min"/></colorScale></cfRule></conditionalFormatting><dataValidations count="1" disablePrompts="0"><dataValidation type="date" operator="greaterThan" allowBlank="1" sqref="B1:B9"><formula1>40000</formula1></dataValidation></dataValidations>`;

  it("that are given back stay as they stand; new ones come in the order given", () => {
    const { workbook, sheet, before } = open(rules);
    const [kept] = sheet.conditionalFormats;
    if (kept === undefined) throw new Error("no format");
    expect(kept).toMatchObject({ ref: "A1:A9", operator: "greaterThan", formulas: ["5"] });
    const added = {
      ref: "C1:C3 E1",
      operator: null,
      formulas: ["C1<2"],
      stopIfTrue: true,
      look: { fill: "F6CFC6", bold: true },
    } as const;
    sheet.arrange({ conditionalFormats: [added, kept], validations: sheet.validations });
    const text = textOf(workbook, part);
    expect(text).toBe(
      before
        .replace('priority="1"><colorScale>', 'priority="2"><colorScale>')
        .replace(
          "<dataValidations",
          '<conditionalFormatting sqref="C1:C3 E1"><cfRule type="expression" dxfId="0" priority="1" stopIfTrue="1"><formula>C1&lt;2</formula></cfRule></conditionalFormatting><dataValidations',
        ),
    );
    expect(textOf(workbook, "xl/styles.xml")).toContain(
      '<dxfs count="1"><dxf><font><b/></font><fill><patternFill><bgColor rgb="FFF6CFC6"/></patternFill></fill></dxf></dxfs>',
    );
    expect(sheet.conditionalFormats).toEqual([added, kept]);
    sheet.arrange({ conditionalFormats: [kept] });
    sheet.arrange({ conditionalFormats: [] });
    expect(textOf(workbook, part)).toContain(
      '<conditionalFormatting sqref="A1:A9"><cfRule type="colorScale"',
    );
    expect(textOf(workbook, part)).not.toContain("cellIs");
  });

  it("are read back with their looks", () => {
    const { workbook, sheet } = open("<sheetData/>");
    const look = { fill: "F6CFC6", color: "112233", bold: true, italic: false };
    const format = {
      ref: "A1:B2",
      operator: "between",
      formulas: ["1", "$B$1"],
      stopIfTrue: false,
    } as const;
    sheet.arrange({ conditionalFormats: [{ ...format, look }] });
    const again = Workbook.open(workbook.save()).sheets[0];
    expect(again?.conditionalFormats).toEqual([{ ...format, look, dxfId: 0 }]);
  });

  it("of any type are kept, moved and removed", () => {
    const { workbook, sheet, before } = open(rules);
    const [date] = sheet.validations;
    if (date === undefined) throw new Error("no validation");
    expect(date).toMatchObject({ ref: "B1:B9", type: "date", formula: "40000" });
    sheet.arrange({
      validations: [
        { ...date, ref: "B1:B4" },
        { ref: "D1", type: "list", formula: "$F$1:$F$3" },
      ],
    });
    const text = textOf(workbook, part);
    expect(text).toContain(
      '<dataValidation type="date" operator="greaterThan" allowBlank="1" sqref="B1:B4"><formula1>40000</formula1></dataValidation>',
    );
    expect(text).toContain('<dataValidations count="2" disablePrompts="0">');
    sheet.arrange({ validations: [] });
    expect(textOf(workbook, part)).toBe(
      before.replace(/<dataValidations.*<\/dataValidations>/, ""),
    );
  });
});

describe("Defined names", () => {
  const book = `<workbook xmlns="${main}" xmlns:r="${rels}"><sheets><sheet name="Data" sheetId="1" r:id="rId1"/></sheets><calcPr calcId="1"/></workbook>`;

  it("are added in their place, changed and removed, and leave nothing behind", () => {
    const { workbook } = openCells("", { "xl/workbook.xml": book });
    workbook.setName("Limit", "Data!$A$1<5", null, "how far");
    workbook.setName("Here", "7", "DATA");
    expect(textOf(workbook, "xl/workbook.xml")).toBe(
      book.replace(
        "<calcPr",
        '<definedNames><definedName name="Limit" comment="how far">Data!$A$1&lt;5</definedName><definedName name="Here" localSheetId="0">7</definedName></definedNames><calcPr',
      ),
    );
    workbook.setName("LIMIT", "2");
    expect(workbook.names[0]).toEqual({
      name: "Limit",
      formula: "2",
      sheet: null,
      comment: "how far",
    });
    workbook.setName("Limit", null);
    workbook.setName("Here", null, "Data");
    expect(textOf(workbook, "xl/workbook.xml")).toBe(book);
    expect(() => workbook.setName("X", "1", "Nowhere")).toThrow('no sheet "Nowhere"');
  });
});

describe("Cells formatted as text", () => {
  it("are told from others, where they are blank as well", () => {
    const styles = `<styleSheet xmlns="${main}"><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="49"/></cellXfs></styleSheet>`;
    const { sheet } = openCells(
      '<row r="1"><c r="A1" s="1"/><c r="B1"><v>1</v></c></row><row r="2" s="1" customFormat="1"/>',
      { "xl/styles.xml": styles },
      ["styles.xml"],
    );
    expect([sheet.numberFormat(0, 0), sheet.numberFormat(0, 1)]).toEqual(["@", "General"]);
    expect([sheet.numberFormat(1, 5), sheet.numberFormat(2, 0)]).toEqual(["@", "General"]);
  });
});
