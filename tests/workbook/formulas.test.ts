import { describe, expect, it } from "vitest";
import { cellName } from "../../src/cells";
import { Workbook } from "../../src/workbook";
import { main, openCells, textOf } from "./packages";

const part = "xl/worksheets/sheet1.xml";

function formulasOf(sheet: Workbook["sheets"][number] | undefined) {
  return Object.fromEntries(
    [...(sheet?.cells() ?? [])].map((cell) => [cellName(cell.row, cell.col), cell.formula]),
  );
}

const shared =
  '<row r="1"><c r="C1"><f t="shared" ref="C1:C3" si="0">A1*$B$1+B$1</f><v>1</v></c></row><row r="2"><c r="C2"><f t="shared" si="0"/><v>2</v></c></row><row r="3"><c r="C3" s="4"><f t="shared" si="0"/><v>3</v></c></row>';

describe("shared formulas", () => {
  it("are expanded to each cell's own text", () => {
    expect(formulasOf(openCells(shared).sheet)).toEqual({
      C1: "A1*$B$1+B$1",
      C2: "A2*$B$1+B$1",
      C3: "A3*$B$1+B$1",
    });
  });

  it("move only references, not names, functions, strings or sheets that look like them", () => {
    const text =
      "SUM(A1:$B2,'Q1 Data'!C3,[2]!_xldudf_FANROW_FLOW(D4))+LOG10(E5)+Q1!F6+\"A1\"+A:A+$3:4+T[[#This Row],[A1]]+Rate_1";
    const escaped = text.replaceAll('"', "&quot;");
    const { sheet } = openCells(
      `<row r="1"><c r="B1"><f t="shared" ref="B1:C2" si="3">${escaped}</f></c></row><row r="2"><c r="C2"><f t="shared" si="3"/></c></row>`,
    );
    expect(sheet.cell(1, 2)?.formula).toBe(
      "SUM(B2:$B3,'Q1 Data'!D4,[2]!_xldudf_FANROW_FLOW(E5))+LOG10(F6)+Q1!G7+\"A1\"+B:B+$3:5+T[[#This Row],[A1]]+Rate_1",
    );
  });

  it("come in again at the other edge of the sheet", () => {
    const { sheet } = openCells(
      '<row r="2"><c r="B2"><f t="shared" ref="A1:B2" si="0">A1</f></c></row><row r="3"><c r="A3"><f t="shared" si="0"/></c></row>',
    );
    expect(sheet.cell(2, 0)?.formula).toBe("XFD2");
  });

  it("may be named before their master is met, and numbers may be used anew", () => {
    const { sheet } = openCells(
      '<row r="1"><c r="A1"><f t="shared" si="0"/></c><c r="B1"><f t="shared" ref="A1:B1" si="0">D1</f></c></row><row r="2"><c r="B2"><f t="shared" ref="B2:B3" si="0">E2</f></c></row><row r="3"><c r="B3"><f t="shared" si="0"/></c></row>',
    );
    expect(formulasOf(sheet)).toEqual({ A1: "C1", B1: "D1", B2: "E2", B3: "E3" });
  });

  it("a value over the master leaves the others their formulas, values and styles", () => {
    const { workbook, sheet } = openCells(shared);
    sheet.setValue(0, 2, 9);
    const text = textOf(workbook, part);
    expect(text).toContain('<c r="C1"><v>9</v></c>');
    expect(text).toContain('<c r="C2"><f>A2*$B$1+B$1</f><v>2</v></c>');
    expect(text).toContain('<c r="C3" s="4"><f>A3*$B$1+B$1</f><v>3</v></c>');
    expect(formulasOf(Workbook.open(workbook.save()).sheets[0])).toEqual({
      C1: null,
      C2: "A2*$B$1+B$1",
      C3: "A3*$B$1+B$1",
    });
  });

  it("a value over a child leaves the rest as it is in the file", () => {
    const { workbook, sheet } = openCells(shared);
    const before = textOf(workbook, part);
    sheet.setValue(1, 2, "none");
    expect(textOf(workbook, part)).toBe(
      before.replace(
        '<c r="C2"><f t="shared" si="0"/><v>2</v></c>',
        '<c r="C2" t="inlineStr"><is><t>none</t></is></c>',
      ),
    );
    expect(formulasOf(sheet)).toEqual({ C1: "A1*$B$1+B$1", C2: null, C3: "A3*$B$1+B$1" });
  });

  it("new values keep the sharing", () => {
    const { workbook, sheet } = openCells(shared);
    const before = textOf(workbook, part);
    sheet.setFormula(0, 2, "A1*$B$1+B$1", 10);
    sheet.setFormula(2, 2, "A3*$B$1+B$1", 30);
    expect(textOf(workbook, part)).toBe(
      before.replace("<v>1</v>", "<v>10</v>").replace("<v>3</v>", "<v>30</v>"),
    );
  });

  it("master and children changed in one go end as asked", () => {
    const { workbook, sheet } = openCells(shared);
    sheet.setFormula(2, 2, "A3*$B$1+B$1", 33);
    sheet.setFormula(0, 2, "A1", 1);
    sheet.setFormula(1, 2, "A2", 2);
    const again = Workbook.open(workbook.save()).sheets[0];
    expect(formulasOf(again)).toEqual({ C1: "A1", C2: "A2", C3: "A3*$B$1+B$1" });
    expect(again?.cell(2, 2)?.value).toBe(33);
    expect(textOf(workbook, part)).not.toContain("shared");
  });
});

const array =
  '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A3">_xlfn.SEQUENCE(3)</f><v>1</v></c></row><row r="2"><c r="A2"><v>2</v></c></row><row r="3"><c r="A3"><v>3</v></c></row>';
const metadata = {
  "xl/metadata.xml": `<metadata xmlns="${main}" xmlns:xda="urn:x"><metadataTypes count="2"><metadataType name="XLRICHVALUE"/><metadataType name="XLDAPR" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="u"><xda:dynamicArrayProperties fDynamic="1"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="2" v="0"/></bk></cellMetadata></metadata>`,
};

describe("array formulas", () => {
  it("are read with their range", () => {
    const { sheet } = openCells(array);
    expect(sheet.cell(0, 0)).toMatchObject({
      formula: "_xlfn.SEQUENCE(3)",
      arrayRef: "A1:A3",
      value: 1,
    });
    expect(sheet.cell(1, 0)).toMatchObject({ formula: null, arrayRef: null, value: 2 });
  });

  it("renewed values of anchor and filled cells keep range and mark", () => {
    const { workbook, sheet } = openCells(array);
    const before = textOf(workbook, part);
    sheet.setFormula(0, 0, "_xlfn.SEQUENCE(3)", 10);
    sheet.setValue(1, 0, 20);
    expect(textOf(workbook, part)).toBe(
      before.replace("<v>1</v>", "<v>10</v>").replace("<v>2</v>", "<v>20</v>"),
    );
  });

  it("a value over the anchor drops formula, range and mark and leaves the other cells", () => {
    const { workbook, sheet } = openCells(array);
    const before = textOf(workbook, part);
    sheet.setValue(0, 0, 5);
    expect(sheet.cell(0, 0)).toMatchObject({ formula: null, arrayRef: null });
    expect(textOf(workbook, part)).toBe(
      before.replace(/<c r="A1".*?<\/c>/, '<c r="A1"><v>5</v></c>'),
    );
  });

  it("a plain formula in the anchor's place is no array", () => {
    const { workbook, sheet } = openCells(array);
    sheet.setFormula(0, 0, "1+1", 2);
    expect(textOf(workbook, part)).toContain('<c r="A1"><f>1+1</f><v>2</v></c>');
  });

  it("a spilled formula may take a new range and keeps its mark", () => {
    const { workbook, sheet } = openCells(array, metadata, ["metadata.xml"]);
    sheet.setFormula(0, 0, "_xlfn.SEQUENCE(3)", 1, "A1:A2");
    expect(textOf(workbook, part)).toContain(
      '<c r="A1" cm="1"><f t="array" ref="A1:A2">_xlfn.SEQUENCE(3)</f><v>1</v></c>',
    );
    expect(() => sheet.setFormula(4, 0, "1", 1, "A1:A2")).toThrow("own cell");
  });

  it("a legacy array formula gets no mark of a dynamic one", () => {
    const { workbook, sheet } = openCells(array.replace(' cm="1"', ""));
    sheet.setFormula(0, 0, "_xlfn.SEQUENCE(3)", 1, "A1:A2");
    expect(textOf(workbook, part)).toContain('<c r="A1"><f t="array" ref="A1:A2">');
    expect(workbook.part("xl/metadata.xml")).toBeUndefined();
  });

  it("a new spilled formula uses the workbook's own record of dynamic arrays", () => {
    const { workbook, sheet } = openCells(array, metadata, ["metadata.xml"]);
    const before = textOf(workbook, "xl/metadata.xml");
    sheet.setFormula(0, 2, "A1:A2", 1, "C1:C2");
    expect(textOf(workbook, part)).toContain('<c r="C1" cm="1"><f t="array" ref="C1:C2">');
    expect(textOf(workbook, "xl/metadata.xml")).toBe(before);
  });

  it("metadata of other kinds gains the record and keeps its own", () => {
    const other = `<metadata xmlns="${main}"><metadataTypes count="1"><metadataType name="XLRICHVALUE"/></metadataTypes><valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata></metadata>`;
    const { workbook, sheet } = openCells("", { "xl/metadata.xml": other }, ["metadata.xml"]);
    sheet.setFormula(0, 0, "B1:B2", 1, "A1:A2");
    expect(textOf(workbook, part)).toContain('cm="1"');
    const text = textOf(workbook, "xl/metadata.xml");
    expect(text).toMatch(
      /<metadataTypes count="2"><metadataType name="XLRICHVALUE"\/><metadataType name="XLDAPR"/,
    );
    expect(text).toMatch(
      /<cellMetadata count="1"><bk><rc t="2" v="0"\/><\/bk><\/cellMetadata><valueMetadata/,
    );
  });

  it("a what-if table keeps its values and its definition", () => {
    const { workbook, sheet } = openCells(
      '<row r="1"><c r="A1"><f t="dataTable" ref="A1:A2" dt2D="0" dtr="0" r1="C1"/><v>1</v></c><c r="B1"><v>1</v></c></row>',
    );
    expect(sheet.cell(0, 0)).toMatchObject({ formula: null, value: 1 });
    sheet.setValue(0, 1, 2);
    expect(textOf(workbook, part)).toContain('<f t="dataTable" ref="A1:A2"');
  });
});

describe("the calculation chain", () => {
  const chain = { "xl/calcChain.xml": `<calcChain xmlns="${main}"><c r="A1" i="1"/></calcChain>` };
  const cells = '<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>';

  it("goes with its relationship and content type when a formula goes", () => {
    const { workbook, sheet } = openCells(cells, chain, ["calcChain.xml"]);
    sheet.setValue(0, 0, 2);
    expect(workbook.partNames()).not.toContain("xl/calcChain.xml");
    expect(textOf(workbook, "xl/_rels/workbook.xml.rels")).not.toContain("calcChain");
    expect(textOf(workbook, "[Content_Types].xml")).not.toContain("calcChain");
    expect(Workbook.open(workbook.save()).sheets[0]?.cell(0, 0)).toMatchObject({
      value: 2,
      formula: null,
    });
  });

  it("stays when formulas are renewed, replaced or added", () => {
    const { workbook, sheet } = openCells(cells, chain, ["calcChain.xml"]);
    sheet.setFormula(0, 0, "1+1", 3);
    sheet.setFormula(0, 0, "2+2", 4);
    sheet.setFormula(4, 4, "A1", 4);
    expect(textOf(workbook, "xl/calcChain.xml")).toBe(chain["xl/calcChain.xml"]);
  });
});
