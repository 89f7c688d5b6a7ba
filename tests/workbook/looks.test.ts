import { describe, expect, it } from "vitest";
import { Workbook } from "../../src/workbook";
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

const styles = `<styleSheet xmlns="${main}"><numFmts count="1"><numFmt numFmtId="164" formatCode="0.0"/></numFmts><fonts count="2"><font><sz val="11"/><name val="Calibri"/></font><font><b/><u/><sz val="14"/><color theme="1"/><name val="Arial"/><family val="2"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="2"><border/><border><left style="thin"/><right style="thin"/><top style="thin"/><bottom style="thin"/></border></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="2"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="164" fontId="1" fillId="0" borderId="1" xfId="0" applyFont="1"><alignment horizontal="right" indent="1"/><protection locked="0" hidden="1"/></xf></cellXfs></styleSheet>`;
const entries = ["worksheets/sheet1.xml", "styles.xml"].map(
  (target, i) =>
    `<Relationship Id="rId${i + 1}" Type="${rels}/${i === 0 ? "worksheet" : "styles"}" Target="${target}"/>`,
);
const more = {
  "xl/styles.xml": styles,
  "xl/_rels/workbook.xml.rels": `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${entries.join("")}</Relationships>`,
};
const cells =
  '<row r="1"><c r="A1" s="1"><v>5</v></c><c r="B1"><f>A1*2</f><v>10</v></c></row><row r="3"/>';

describe("The look of a cell", () => {
  it("is read from its format", () => {
    const { workbook } = openCells(cells, more);
    expect(workbook.styleSpec(0)).toEqual({});
    expect(workbook.styleSpec(1)).toEqual({
      numberFormat: "0.0",
      size: 14,
      bold: true,
      border: true,
      align: "right",
      unlocked: true,
      color: undefined,
    });
  });

  it("is changed without losing what is not named", () => {
    const { workbook, sheet } = openCells(cells, more);
    const style = workbook.restyle(1, { fill: "FFCC00", color: "112233", bold: undefined });
    sheet.setStyle(0, 0, style);
    expect(workbook.styleSpec(style)).toEqual({
      numberFormat: "0.0",
      size: 14,
      border: true,
      align: "right",
      unlocked: true,
      color: "112233",
      fill: "FFCC00",
    });
    const text = textOf(workbook, "xl/styles.xml");
    expect(text).toContain(
      '<font><u/><sz val="14"/><color rgb="FF112233"/><name val="Arial"/><family val="2"/></font>',
    );
    expect(text).toContain('<alignment horizontal="right" indent="1"/>');
    expect(text).toContain('hidden="1"');
  });

  it("comes back to the same format when the change is taken back", () => {
    const { workbook } = openCells(cells, more);
    const changed = workbook.restyle(0, { fill: "FFCC00", wrap: true, unlocked: true });
    expect(workbook.styleSpec(changed)).toEqual({ fill: "FFCC00", wrap: true, unlocked: true });
    const back = { fill: undefined, wrap: undefined, unlocked: undefined };
    expect(workbook.styleSpec(workbook.restyle(changed, back))).toEqual({});
    expect(workbook.restyle(0, { fill: "FFCC00", wrap: true, unlocked: true })).toBe(changed);
  });

  it("refuses colours that are none", () => {
    const { workbook } = openCells(cells, more);
    expect(thrownBy(() => workbook.restyle(0, { fill: "red" }))).toBeInstanceOf(RangeError);
  });

  it("takes lines on single sides, and gives them up again", () => {
    const { workbook } = openCells(cells, more);
    const lined = workbook.restyle(0, { edges: { bottom: "medium", color: "0000FF" } });
    expect(workbook.styleSpec(lined)).toEqual({ edges: { bottom: "medium" } });
    const both = workbook.restyle(lined, { edges: { top: "thin" } });
    expect(workbook.styleSpec(both).edges).toEqual({ top: "thin", bottom: "medium" });
    const bare = workbook.restyle(both, { edges: { top: undefined, bottom: undefined } });
    expect(workbook.styleSpec(bare)).toEqual({});
    expect(workbook.addStyle({ edges: { bottom: "medium", color: "0000FF" } })).toBe(lined);
  });

  it("takes a height of letters and a place in the cell", () => {
    const { workbook } = openCells(cells, more);
    const style = workbook.restyle(0, { size: 16, valign: "center" });
    expect(workbook.styleSpec(style)).toEqual({ size: 16, valign: "center" });
    expect(workbook.styleSpec(workbook.addStyle({ size: 16, valign: "top" }))).toEqual({
      size: 16,
      valign: "top",
    });
  });

  it("is made where the workbook has no formats yet", () => {
    const { workbook, sheet } = openCells('<row r="1"><c r="A1"><v>5</v></c></row>');
    sheet.setStyle(0, 0, workbook.restyle(0, { bold: true, numberFormat: "0.00" }));
    const again = Workbook.open(workbook.save());
    const style = again.sheets[0]?.cell(0, 0)?.style ?? 0;
    expect(again.styleSpec(style)).toEqual({ bold: true, numberFormat: "0.00" });
  });
});

describe("Giving cells another format", () => {
  it("leaves values, formulas and all other cells as they were", () => {
    const { workbook, sheet } = openCells(cells, more);
    sheet.setStyle(0, 1, 1);
    sheet.setStyle(2, 4, 1);
    expect(textOf(workbook, "xl/worksheets/sheet1.xml")).toBe(
      worksheet(
        '<sheetData><row r="1"><c r="A1" s="1"><v>5</v></c><c r="B1" s="1"><f>A1*2</f><v>10</v></c></row><row r="3"><c r="E3" s="1"/></row></sheetData>',
      ),
    );
    expect([sheet.cell(2, 4)?.style, sheet.rowCount]).toEqual([1, 1]);
  });

  it("joins with edits of the same cell, in whatever order", () => {
    const { workbook, sheet } = openCells(cells, more);
    sheet.setStyle(0, 1, 1);
    sheet.setValue(0, 1, 7);
    sheet.setValue(4, 0, "new");
    sheet.setStyle(4, 0, 1);
    sheet.setStyle(0, 0, 0);
    const again = Workbook.open(workbook.save()).sheets[0];
    expect(again?.cell(0, 1)).toMatchObject({ value: 7, formula: null, style: 1 });
    expect(again?.cell(4, 0)).toMatchObject({ value: "new", style: 1 });
    expect(again?.cell(0, 0)).toMatchObject({ value: 5, style: 0 });
  });

  it("changes nothing when the cell has the format already", () => {
    const bytes = pack(parts(worksheet(`<sheetData>${cells}</sheetData>`), more));
    const workbook = Workbook.open(bytes);
    workbook.sheets[0]?.setStyle(0, 0, 1);
    workbook.sheets[0]?.setStyle(9, 9, 0);
    expect(workbook.save()).toEqual(bytes);
  });

  it("is refused outside the sheet", () => {
    const { sheet } = openCells(cells, more);
    expect(thrownBy(() => sheet.setStyle(-1, 0, 1))).toBeInstanceOf(RangeError);
  });
});

describe("A sheet's own name and state", () => {
  it("take another name where nothing refers to the old one", () => {
    const { workbook, sheet } = openCells(cells, more);
    sheet.setValue(0, 0, 6);
    const renamed = workbook.renameSheet("Data", "Readings & more");
    expect([renamed.name, renamed.cell(0, 0)?.value]).toEqual(["Readings & more", 6]);
    const again = Workbook.open(workbook.save());
    expect(again.sheets.map(({ name }) => name)).toEqual(["Readings & more"]);
    expect(again.sheet("readings & MORE")?.cell(0, 1)?.formula).toBe("A1*2");
  });

  it("take what is printed along to another name", () => {
    const { workbook, sheet } = openCells(cells, more);
    sheet.arrange({ page: { titleRows: [0, 0], titleCols: [0, 1], area: "A1:C5" } });
    workbook.renameSheet("Data", "Lot 7's, fans");
    const { names } = Workbook.open(workbook.save());
    expect(names.map(({ formula }) => formula)).toEqual([
      "'Lot 7''s, fans'!$A:$B,'Lot 7''s, fans'!$1:$1",
      "'Lot 7''s, fans'!$A$1:$C$5",
    ]);
  });

  it("keep the name where something refers to it, and refuse names that are not possible", () => {
    const { workbook } = openCells('<row r="1"><c r="A1"><f>Data!B1</f><v>0</v></c></row>');
    expect(String(thrownBy(() => workbook.renameSheet("Data", "Other")))).toContain("refers to it");
    expect(thrownBy(() => workbook.renameSheet("Data", "a/b"))).toBeInstanceOf(RangeError);
    expect(String(thrownBy(() => workbook.renameSheet("None", "x")))).toContain("no sheet");
    expect(workbook.sheets[0]?.name).toBe("Data");
  });

  it("are hidden from the start when asked for", () => {
    const { workbook } = openCells(cells, more);
    workbook.addSheet("Kept", { rows: [], state: "veryHidden" });
    const saved = workbook.save();
    expect(unpack(saved)["xl/workbook.xml"]).toContain(
      'name="Kept" sheetId="2" state="veryHidden"',
    );
    expect(Workbook.open(saved).sheet("Kept")?.state).toBe("veryHidden");
  });

  it("tell whether a filter leaves out rows", () => {
    const filter = '<autoFilter ref="A1:B9"><filterColumn colId="0"/></autoFilter>';
    const open = (tail: string) =>
      Workbook.open(pack(parts(worksheet(`<sheetData/>${tail}`)))).sheets[0]?.isFiltered;
    expect([open(""), open('<autoFilter ref="A1:B9"/>'), open(filter)]).toEqual([
      false,
      false,
      true,
    ]);
  });
});
