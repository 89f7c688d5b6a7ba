import { describe, expect, it } from "vitest";
import { Workbook } from "../../src/workbook";
import { main, pack, parts, rels, textOf, unpack, worksheet } from "./packages";

/** A sheet with what users put beside their cells, some of it unknown to us, in several writing styles. */
const head =
  '<!-- kept --><sheetPr codeName="S1"><tabColor theme="4"/></sheetPr><dimension ref="A1:C3"/>\n<sheetViews><sheetView workbookViewId="0"/></sheetViews><cols><col min="3" max="3" width="20" style="2"/></cols>';
const tail =
  '<autoFilter ref="A1:C3"/><mergeCells count="1"><mergeCell ref="A5:B5"/></mergeCells><conditionalFormatting sqref="B2:B3"><cfRule type="cellIs" priority="1" operator="lessThan"><formula>50</formula></cfRule></conditionalFormatting><dataValidations count="1"><dataValidation type="list" sqref="C2"><formula1>"a,b"</formula1></dataValidation></dataValidations><hyperlinks><hyperlink ref="A2" r:id="rId9"/></hyperlinks><pageMargins left=\'0.7\' right=\'0.7\' top="1" bottom="1" header="0" footer="0"/><drawing r:id="rId1"/><legacyDrawing r:id="rId2"/><tableParts count="1"><tablePart r:id="rId3"/></tableParts><extLst><ext uri="{x}" xmlns:x14="urn:x14"><x14:conditionalFormattings><x14:row r="2"><x14:c r="B2"/></x14:row></x14:conditionalFormattings></ext></extLst>';
const row1 =
  '<row r="1" spans="1:3" ht="30" customHeight="1"><c r="A1" s="1" t="s"><v>0</v></c></row>';
const b2 = '<c r="B2" s="3" ph="1"><f>A1*2</f><v>4</v><extLst><ext uri="{y}"/></extLst></c>';
const row2 = `\n  <row r="2" spans="1:3">\n<c r="A2"><v>2</v></c>\t${b2}<c r="C2" vm="2" t="e"><v>#VALUE!</v></c></row>`;
const row3 = '<row r="3"/>';
const sheet = worksheet(`${head}<sheetData>${row1}${row2}${row3}</sheetData>${tail}`);

const source = parts(
  sheet,
  {
    "xl/sharedStrings.xml": `<sst xmlns="${main}"><si><t>Tag</t></si></sst>`,
    "xl/calcChain.xml": `<calcChain xmlns="${main}"><c r="B2" i="1"/></calcChain>`,
    "xl/worksheets/_rels/sheet1.xml.rels": `<Relationships xmlns="x"><Relationship Id="rId1" Type="${rels}/drawing" Target="../drawings/drawing1.xml"/><Relationship Id="rId2" Type="${rels}/vmlDrawing" Target="../drawings/vml1.vml"/><Relationship Id="rId3" Type="${rels}/table" Target="../tables/table1.xml"/><Relationship Id="rId4" Type="${rels}/comments" Target="../comments1.xml"/><Relationship Id="rId9" Type="${rels}/hyperlink" Target="https://example.org/" TargetMode="External"/></Relationships>`,
    "xl/drawings/drawing1.xml": "<d/>",
    "xl/drawings/vml1.vml": "<xml><br>not well formed</xml>",
    "xl/comments1.xml": "<comments/>",
    "xl/tables/table1.xml": '<table displayName="T" ref="C1:C3"/>',
    "xl/media/image1.png": new Uint8Array([137, 80, 78, 71, 0, 255]),
    "customXml/item1.xml": "<custom>\r\n</custom>",
    "xl/": new Uint8Array(),
  },
  ["sharedStrings.xml", "calcChain.xml"],
);
const bytes = pack(source);
const part = "xl/worksheets/sheet1.xml";

function edited(change: (sheet: Workbook["sheets"][number]) => void) {
  const workbook = Workbook.open(bytes);
  const first = workbook.sheets[0];
  if (first === undefined) throw new Error("no sheet");
  change(first);
  const saved = workbook.save();
  return { saved, parts: unpack(saved), workbook };
}

describe("an untouched workbook", () => {
  it("is saved as the very bytes it was opened from", () => {
    const workbook = Workbook.open(bytes);
    for (const opened of workbook.sheets) expect([...opened.cells()]).toHaveLength(4);
    expect(workbook.save()).toEqual(bytes);
  });

  it("stays so when an edit changes nothing", () => {
    const { saved } = edited((first) => {
      first.setValue(1, 0, 2);
      first.setFormula(1, 1, "A1*2", 4);
      first.clear(40, 40);
      first.setValue(0, 0, "Tag");
    });
    expect(saved).toEqual(bytes);
  });
});

describe("an edited workbook", () => {
  it("keeps every other part byte for byte and in order", () => {
    const { saved, parts: after } = edited((first) => first.setValue(1, 0, 3));
    const before = unpack(bytes);
    expect(Object.keys(after)).toEqual(Object.keys(before));
    for (const name of Object.keys(before)) {
      if (name !== part) expect(after[name]).toBe(before[name]);
    }
    expect(Workbook.open(saved).part("xl/media/image1.png")).toEqual(source["xl/media/image1.png"]);
  });

  it("differs only in the element of the cell that changed", () => {
    const { parts: after } = edited((first) => first.setValue(1, 0, 3.5));
    expect(after[part]).toBe(sheet.replace('<c r="A2"><v>2</v></c>', '<c r="A2"><v>3.5</v></c>'));
  });

  it("keeps a cell's style, other attributes and extensions when its value is renewed", () => {
    const { parts: after } = edited((first) => first.setFormula(1, 1, "A1*2", 5));
    expect(after[part]).toBe(sheet.replace("<v>4</v>", "<v>5</v>"));
  });

  it("drops the mark of a value that went", () => {
    const { parts: after } = edited((first) => first.setValue(1, 2, "ok"));
    expect(after[part]).toBe(
      sheet.replace(
        '<c r="C2" vm="2" t="e"><v>#VALUE!</v></c>',
        '<c r="C2" t="inlineStr"><is><t>ok</t></is></c>',
      ),
    );
  });

  it("puts a new cell in its place and widens the row's span and the dimension", () => {
    const { parts: after } = edited((first) => {
      first.setValue(0, 1, true);
      first.setValue(0, 4, 7);
    });
    expect(after[part]).toBe(
      sheet
        .replace(
          '<row r="1" spans="1:3" ht="30" customHeight="1">',
          '<row r="1" spans="1:5" ht="30" customHeight="1">',
        )
        .replace(
          "<v>0</v></c></row>",
          '<v>0</v></c><c r="B1" t="b"><v>1</v></c><c r="E1"><v>7</v></c></row>',
        )
        .replace('ref="A1:C3"/>', 'ref="A1:E3"/>'),
    );
  });

  it("opens an empty row and adds rows, the new cell taking its column's format", () => {
    const { parts: after } = edited((first) => {
      first.setValue(2, 2, 1);
      first.setValue(5, 0, 6);
      first.setValue(3, 0, 4);
    });
    expect(after[part]).toBe(
      sheet
        .replace(
          '<row r="3"/>',
          '<row r="3"><c r="C3" s="2"><v>1</v></c></row><row r="4"><c r="A4"><v>4</v></c></row><row r="6"><c r="A6"><v>6</v></c></row>',
        )
        .replace('ref="A1:C3"/>', 'ref="A1:C6"/>'),
    );
  });

  it("adds a row between others where one is missing", () => {
    const gap = worksheet('<sheetData><row r="1"/><row r="5"/></sheetData>');
    const workbook = Workbook.open(pack(parts(gap)));
    workbook.sheets[0]?.setValue(2, 1, 9);
    expect(textOf(workbook, part)).toBe(
      gap.replace('<row r="5"/>', '<row r="3"><c r="B3"><v>9</v></c></row><row r="5"/>'),
    );
  });

  it("fills a sheet that had no rows", () => {
    const workbook = Workbook.open(pack(parts(worksheet("<sheetData/><extLst/>"))));
    workbook.sheets[0]?.setValue(1, 0, 2);
    workbook.sheets[0]?.setValue(0, 0, 1);
    expect(textOf(workbook, part)).toBe(
      worksheet(
        '<sheetData><row r="1"><c r="A1"><v>1</v></c></row><row r="2"><c r="A2"><v>2</v></c></row></sheetData><extLst/>',
      ),
    );
  });

  it("writes prefixed elements where the sheet has them", () => {
    const prefixed = `<x:worksheet xmlns:x="${main}"><x:sheetData><x:row><x:c><x:v>1</x:v></x:c></x:row></x:sheetData></x:worksheet>`;
    const workbook = Workbook.open(pack(parts(prefixed)));
    workbook.sheets[0]?.setValue(0, 0, "a");
    workbook.sheets[0]?.setFormula(0, 1, "1+1", 2);
    expect(textOf(workbook, part)).toBe(
      prefixed.replace(
        "<x:c><x:v>1</x:v></x:c>",
        '<x:c t="inlineStr"><x:is><x:t>a</x:t></x:is></x:c><x:c r="B1"><x:f>1+1</x:f><x:v>2</x:v></x:c>',
      ),
    );
  });

  it("keeps a cleared cell's format", () => {
    const { parts: after, saved } = edited((first) => first.clear(0, 0));
    expect(after[part]).toBe(
      sheet.replace('<c r="A1" s="1" t="s"><v>0</v></c>', '<c r="A1" s="1"/>'),
    );
    expect(Workbook.open(saved).sheets[0]?.cell(0, 0)).toMatchObject({ value: null, style: 1 });
  });

  it("can be saved, edited and saved again", () => {
    const { workbook } = edited((first) => first.setValue(1, 0, 3));
    workbook.sheets[0]?.setValue(1, 0, 4);
    const text = textOf(workbook, part);
    expect(text).toBe(sheet.replace('<c r="A2"><v>2</v></c>', '<c r="A2"><v>4</v></c>'));
    workbook.sheets[0]?.setValue(1, 0, 2);
    expect(textOf(workbook, part)).toBe(sheet);
  });
});

describe("headings of tables", () => {
  it("are refused, because the table and formulas name them too", () => {
    const workbook = Workbook.open(bytes);
    expect(() => workbook.sheets[0]?.setValue(0, 2, "New")).toThrow(
      'Data!C1 is a heading of the table "T"',
    );
    workbook.sheets[0]?.setValue(1, 2, "below");
    expect(Workbook.open(workbook.save()).sheets[0]?.cell(1, 2)?.value).toBe("below");
  });
});

describe("text in cells", () => {
  it.each([
    ["  spaces around  "],
    ["line\nbreak"],
    ["carriage\r\nreturn"],
    ["tab\tand \u0001 control \u001f"],
    ["_x000D_ written out"],
    ["<&>\"' ]]>"],
    ["Größe ² 漢字 🌬"],
    ["lone \ud83c half"],
    ["\ufeff mark \uffff"],
    [""],
  ])("%j comes back the same, as a value and as a formula's result", (text) => {
    const { saved } = edited((first) => {
      first.setValue(6, 0, text);
      first.setFormula(6, 1, 'T("x")', text);
    });
    const again = Workbook.open(saved).sheets[0];
    expect(again?.cell(6, 0)?.value).toBe(text);
    expect(again?.cell(6, 1)?.value).toBe(text);
  });

  it("a carriage return is written the way the format writes it", () => {
    const { parts: after } = edited((first) => first.setValue(6, 0, "a\r"));
    expect(after[part]).toContain('<is><t xml:space="preserve">a_x000D_</t></is>');
  });

  it("what a cell cannot hold is refused with its place", () => {
    const workbook = Workbook.open(bytes);
    const first = workbook.sheets[0];
    expect(() => first?.setValue(0, 0, Number.NaN)).toThrow("Data!A1: NaN is not a number");
    expect(() => first?.setValue(0, 0, "x".repeat(32_768))).toThrow("32768 characters");
    expect(() => first?.setFormula(0, 1, "=A1", 0)).toThrow('without "="');
    expect(() => first?.setFormula(0, 1, 'A1&"\u0001"', 0)).toThrow("control character");
    expect(() => first?.setValue(0, 1, { error: "oops" })).toThrow("not an error value");
    expect(() => first?.setValue(1_048_576, 0, 1)).toThrow("outside the sheet");
    expect(() => first?.setValue(0, -1, 1)).toThrow("outside the sheet");
    expect(workbook.save()).toEqual(bytes);
  });
});
