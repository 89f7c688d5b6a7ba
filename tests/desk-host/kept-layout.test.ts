import { describe, expect, it } from "vitest";
import { type ConditionalFormat, Workbook } from "../../src/workbook";
import { pack, parts, textOf, unpack, worksheet } from "../workbook/packages";
import { hostOf, openDesk, refusal, rows } from "./desk";

function onData(action: (sheet: Excel.Worksheet) => void): Promise<void> {
  return Excel.run(async (context) => action(context.workbook.worksheets.getItem("Data")));
}

const saved = (host: { save(): Uint8Array }) => Workbook.open(host.save());

describe("The saved copy", () => {
  it("has the conditional formats, which the next session finds and removes", async () => {
    const host = openDesk({ Data: rows([1, 0], [5, 0], [9, 0]) });
    await onData((sheet) => {
      const { custom } = sheet.getRange("A1:A3").conditionalFormats.add("Custom");
      custom.rule.formula = "=$A1>$B$1+4";
      custom.format.fill.color = "#F6CFC6";
      custom.format.font.bold = true;
    });
    const first = saved(host);
    const { conditionalFormats = [] } = first.sheet("Data") ?? {};
    const low: ConditionalFormat = {
      ...{ ref: "B1:B3", operator: "lessThan", formulas: ["1"], stopIfTrue: false },
      look: { color: "6E1A0A" },
    };
    first.sheet("Data")?.arrange({ conditionalFormats: [low, ...conditionalFormats] });
    const workbook = Workbook.open(first.save());
    expect(workbook.sheet("Data")?.conditionalFormats).toMatchObject([
      { ref: "B1:B3", operator: "lessThan", formulas: ["1"], look: { color: "6E1A0A" } },
      {
        ref: "A1:A3",
        operator: null,
        formulas: ["$A1>$B$1+4"],
        look: { fill: "F6CFC6", bold: true },
      },
    ]);
    const next = hostOf(workbook);
    expect(next.marksAt("Data", 1, 0)).toEqual({ fill: "#F6CFC6", bold: true });
    expect(next.marksAt("Data", 0, 0)).toBeNull();
    expect(next.marksAt("Data", 0, 1)).toEqual({ color: "#6E1A0A" });
    await onData((sheet) => sheet.getRange("A2").clear("Formats"));
    expect(next.marksAt("Data", 1, 0)).toBeNull();
    expect(next.marksAt("Data", 2, 0)).toEqual({ fill: "#F6CFC6", bold: true });
    await onData((sheet) => sheet.getRange("B1:B3").clear("Formats"));
    const formats = saved(next).sheet("Data")?.conditionalFormats ?? [];
    expect(formats.map(({ ref, formulas }) => [ref, formulas])).toEqual([
      ["A1", ["$A1>$B$1+4"]],
      ["A3", ["$A3>$B$1+4"]],
    ]);
    await onData((sheet) => sheet.getRange().clear("Formats"));
    expect(textOf(saved(next), "xl/worksheets/sheet1.xml")).not.toContain("conditionalFormatting");
  });

  it("saves the same bytes again where nothing was changed since", async () => {
    const host = openDesk({ Data: rows([1, 0], [5, 0]) });
    await onData((sheet) => {
      const { custom } = sheet.getRange("A1:A2").conditionalFormats.add("Custom");
      custom.rule.formula = "=A1>2";
      custom.format.fill.color = "#FFCC00";
      sheet.getRange("B1:B9").dataValidation.rule = {
        list: { inCellDropDown: true, source: "a,b" },
      };
    });
    const first = host.save();
    expect(host.save()).toEqual(first);
    const next = hostOf(Workbook.open(first));
    next.marksAt("Data", 0, 0);
    next.validationAt("Data", 0, 1);
    expect(next.save()).toEqual(first);
  });

  it("keeps what it cannot show of a conditional format and of a rule", async () => {
    const inside =
      '<sheetData><row r="1"><c r="A1"><v>5</v></c></row></sheetData><conditionalFormatting sqref="A1:A5"><cfRule type="expression" dxfId="0" priority="2"><formula>A1&gt;1</formula></cfRule><cfRule type="dataBar" priority="1"><dataBar><cfvo type="min"/><cfvo type="max"/><color rgb="FF0000FF"/></dataBar></cfRule></conditionalFormatting><dataValidations count="1"><dataValidation type="whole" operator="greaterThan" sqref="A1:A9"><formula1>0</formula1></dataValidation></dataValidations>';
    const file = pack(parts(worksheet(inside)));
    const host = hostOf(Workbook.open(file));
    await onData((sheet) => {
      const { custom } = sheet.getRange("B1").conditionalFormats.add("Custom");
      custom.rule.formula = "=TRUE";
      custom.format.font.italic = true;
      sheet.getRange("A3").dataValidation.rule = {
        list: { inCellDropDown: true, source: "=B1:B2" },
      };
    });
    const text = textOf(saved(host), "xl/worksheets/sheet1.xml");
    expect(text).toContain(
      '<cfRule type="dataBar" priority="2"><dataBar><cfvo type="min"/><cfvo type="max"/><color rgb="FF0000FF"/></dataBar></cfRule>',
    );
    expect(text).toContain('<cfRule type="expression" dxfId="0" priority="3">');
    expect(text).toContain('sqref="A1:A2 A4:A9"><formula1>0</formula1>');
    expect(text).toContain("<formula1>B1:B2</formula1>");
  });

  it("has the lists, widths, heights, frozen panes, hidden lines and merged cells", async () => {
    const host = openDesk({ Data: rows([1, 2, 3], [4, 5, 6]) });
    await onData((sheet) => {
      sheet.getRange("A1:A9").dataValidation.rule = {
        list: { inCellDropDown: true, source: "a,b" },
      };
      sheet.getRange("B1").format.columnWidth = 105;
      sheet.getRange("A2:A3").format.rowHeight = 30;
      sheet.freezePanes.freezeRows(1);
      sheet.getRange("C5:D6").merge();
      sheet.getRange("A7:A8").rowHidden = true;
      sheet.getRange("D1:E1").columnHidden = true;
    });
    const workbook = saved(host);
    const sheet = workbook.sheet("Data");
    expect(sheet?.validations).toMatchObject([{ ref: "A1:A9", type: "list", formula: '"a,b"' }]);
    expect(sheet?.columnWidths.get(1)).toBe(20);
    expect([sheet?.frozenRows, sheet?.frozenCols, sheet?.merges]).toEqual([1, 0, ["C5:D6"]]);
    expect([[...(sheet?.hiddenRows ?? [])], [...(sheet?.hiddenCols ?? [])]]).toEqual([
      [6, 7],
      [3, 4],
    ]);
    expect(textOf(workbook, "xl/worksheets/sheet1.xml")).toContain(
      '<row r="3" ht="30" customHeight="1"/>',
    );
    const next = hostOf(workbook);
    expect(next.validationAt("Data", 3, 0)?.list.source).toBe("a,b");
    await onData((data) => {
      data.getRange("A7:A8").rowHidden = false;
      data.getRange("C5").unmerge();
      data.freezePanes.freezeRows(0);
    });
    const again = saved(next).sheet("Data");
    expect([again?.hiddenRows.size, again?.merges, again?.frozenRows]).toEqual([0, [], 0]);
  });

  it("refuses to merge away what cells hold", async () => {
    openDesk({ Data: rows([1, 2]) });
    const { code } = await refusal(async (context) =>
      context.workbook.worksheets.getItem("Data").getRange("A1:B1").merge(),
    );
    expect(code).toBe("UnsupportedOperation");
  });

  it("has lines on the sides of cells, sizes and places of their text", async () => {
    const host = openDesk({ Data: rows([1, 2], [3, 4]) });
    await onData((sheet) => {
      const { format } = sheet.getRanges("A1:A2,B2");
      format.font.size = 14;
      format.verticalAlignment = "Top";
      for (const side of ["EdgeBottom", "InsideHorizontal"] as const) {
        const border = format.borders.getItem(side);
        border.style = "Continuous";
        border.weight = "Medium";
        border.color = "#0000FF";
      }
    });
    const next = hostOf(saved(host));
    const look = { size: 14, valign: "top", edges: { bottom: "medium" } };
    expect([next.styleAt("Data", 0, 0), next.styleAt("Data", 1, 0)]).toEqual([look, look]);
    expect([next.styleAt("Data", 1, 1), next.styleAt("Data", 0, 1)]).toEqual([look, {}]);
  });
});

describe("The page of a sheet", () => {
  it("is in the saved copy as it was set", async () => {
    const host = openDesk({ Data: rows([1, 2]) });
    await onData(({ pageLayout }) => {
      pageLayout.orientation = "Landscape";
      pageLayout.paperSize = "A4";
      pageLayout.zoom = { horizontalFitToPages: 1 };
      pageLayout.leftMargin = 36;
      pageLayout.centerHorizontally = true;
      pageLayout.setPrintArea("A1:B9");
      pageLayout.setPrintTitleRows("$1:$2");
      pageLayout.headersFooters.defaultForAllPages.centerFooter = "&P of &N";
      pageLayout.headersFooters.defaultForAllPages.leftFooter = "Job";
    });
    const workbook = saved(host);
    const text = textOf(workbook, "xl/worksheets/sheet1.xml");
    expect(text).toContain('<pageSetUpPr fitToPage="1"/>');
    expect(text).toContain(
      '<pageSetup orientation="landscape" paperSize="9" fitToWidth="1" fitToHeight="0"/>',
    );
    expect(text).toContain('<pageMargins left="0.5" right="0.7"');
    expect(text).toContain("<oddFooter>&amp;LJob&amp;C&amp;P of &amp;N</oddFooter>");
    expect(workbook.names).toEqual([
      { name: "_xlnm.Print_Area", formula: "'Data'!$A$1:$B$9", sheet: "Data" },
      { name: "_xlnm.Print_Titles", formula: "'Data'!$1:$2", sheet: "Data" },
    ]);
  });
});

describe("A chart", () => {
  const draw = (sheet: Excel.Worksheet) => {
    const chart = sheet.charts.add("XYScatter", sheet.getRange("A1:B3"), "Columns");
    chart.title.text = "Flow & pressure";
    chart.axes.valueAxis.title.text = "Flow";
    chart.axes.categoryAxis.minimum = 0;
    chart.legend.position = "Right";
    const line = chart.series.add("limit");
    line.setXAxisValues(sheet.getRange("A1:A3"));
    line.setValues(sheet.getRange("A1:A3"));
    line.markerStyle = "None";
    line.format.line.color = "#B4551D";
    line.format.line.lineStyle = "Dash";
    chart.setPosition("D2", "H12");
  };

  it("is in the saved copy with the numbers of its cells", async () => {
    const host = openDesk({ Data: rows([1, 10], [2, 21], [3, 29]) });
    await onData(draw);
    const files = unpack(host.save());
    const chart = files["xl/charts/chart1.xml"] ?? "";
    expect(chart).toContain("<c:f>'Data'!$B$1:$B$3</c:f>");
    expect(chart).toContain('<c:pt idx="1"><c:v>21</c:v></c:pt>');
    expect(chart).toContain("Flow &amp; pressure");
    expect(chart).toContain('<a:prstDash val="dash"/>');
    expect(files["xl/drawings/drawing1.xml"]).toContain("<xdr:col>3</xdr:col>");
    expect(host.save()).toEqual(host.save());
  });

  it("is found by the next session, which can only delete it", async () => {
    const host = openDesk({ Data: rows([1, 10], [2, 21], [3, 29]) });
    await onData(draw);
    const next = hostOf(saved(host));
    const { code } = await refusal(async (context) => {
      const { charts } = context.workbook.worksheets.getItem("Data");
      charts.getItem("Chart 1").title.text = "Other";
    });
    expect(code).toBe("UnsupportedOperation");
    await Excel.run(async (context) => {
      const { charts } = context.workbook.worksheets.getItem("Data");
      charts.load("items/name");
      await context.sync();
      expect(charts.items.map(({ name }) => name)).toEqual(["Chart 1"]);
      charts.items[0]?.delete();
    });
    const names = saved(next).partNames();
    expect(names.filter((name) => /chart|drawing/.test(name))).toEqual([]);
  });
});
