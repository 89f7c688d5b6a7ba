import { describe, expect, it } from "vitest";
import { type ChartSpec, Workbook } from "../../src/workbook";
import { rels, textOf, thrownBy, unpack } from "./packages";

const chart: ChartSpec = {
  title: "Box & reference",
  over: "D2:H14",
  series: [
    { name: "pairs", x: "A1:A3", y: "B1:B3" },
    { name: "equal", x: "'It''s data'!A1:A3", y: "A1:A3", line: "dash", marker: "none" },
  ],
  x: { title: "Reference", min: 0, max: 10 },
  y: { title: "Box" },
};
const rows = [
  [{ value: 1 }, { value: 2 }],
  [{ value: 2 }, { value: "none" }],
  [{ value: 4 }, { formula: "A3*2", value: 8 }],
];

function build(): Workbook {
  const workbook = Workbook.create();
  workbook.addSheet("It's data", { rows, charts: [chart] });
  return workbook;
}

describe("A chart on an added sheet", () => {
  it("comes with its parts, tied together and named by their types", () => {
    const files = unpack(build().save());
    expect(files["xl/worksheets/sheet1.xml"]).toContain(
      `<drawing xmlns:r="${rels}" r:id="rId1"/></worksheet>`,
    );
    expect(files["xl/worksheets/_rels/sheet1.xml.rels"]).toContain(
      `Type="${rels}/drawing" Target="/xl/drawings/drawing1.xml"`,
    );
    expect(files["xl/drawings/_rels/drawing1.xml.rels"]).toContain(
      `Type="${rels}/chart" Target="/xl/charts/chart1.xml"`,
    );
    expect(files["[Content_Types].xml"]).toContain(
      '<Override PartName="/xl/charts/chart1.xml" ContentType="application/vnd.openxmlformats-officedocument.drawingml.chart+xml"/>',
    );
    expect(files["xl/drawings/drawing1.xml"]).toContain(
      "<xdr:from><xdr:col>3</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>1</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:to><xdr:col>8</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>14</xdr:row>",
    );
  });

  it("stores the numbers of its cells, with gaps where a cell holds none", () => {
    const text = unpack(build().save())["xl/charts/chart1.xml"] ?? "";
    expect(text).toContain(
      `<c:f>'It''s data'!$B$1:$B$3</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val="3"/><c:pt idx="0"><c:v>2</c:v></c:pt><c:pt idx="2"><c:v>8</c:v></c:pt></c:numCache>`,
    );
  });

  it("keeps the order of elements that the format demands", () => {
    const text = unpack(build().save())["xl/charts/chart1.xml"] ?? "";
    const inOrder = (names: readonly string[], from: number) => {
      let at = from;
      for (const name of names) {
        const next = text.indexOf(`<c:${name}`, at);
        expect([name, next > at]).toEqual([name, true]);
        at = next;
      }
    };
    // ECMA-376 part 1, 21.2.2: CT_ChartSpace and CT_Chart, CT_ScatterSer, CT_ValAx.
    inOrder(
      [
        "roundedCorners",
        "chart>",
        "title",
        "autoTitleDeleted",
        "plotArea",
        "legend",
        "plotVisOnly",
      ],
      0,
    );
    inOrder(
      ["idx", "order", "tx", "spPr", "marker", "xVal", "yVal", "smooth"],
      text.indexOf("<c:ser>"),
    );
    inOrder(
      [
        "axId",
        "scaling",
        "orientation",
        "max",
        "min ",
        "delete",
        "axPos",
        "majorGridlines",
        "title",
        "numFmt",
        "majorTickMark",
        "minorTickMark",
        "tickLblPos",
        "spPr",
        "crossAx",
        "crosses",
        "crossBetween",
      ],
      text.indexOf("<c:valAx>"),
    );
  });

  it("goes with its parts when the sheet goes", () => {
    const workbook = build();
    workbook.addSheet("Other", { rows: [] });
    const drawn = () => workbook.partNames().filter((name) => /chart|drawing/.test(name));
    expect(drawn()).toHaveLength(3);
    workbook.removeSheet("It's data");
    expect(drawn()).toEqual([]);
    expect(textOf(workbook, "[Content_Types].xml")).not.toContain("chart");
  });

  it("is named, and removed by its name alone", () => {
    const workbook = build();
    const sheet = workbook.sheet("It's data");
    expect(sheet?.addChart({ ...chart, title: undefined })).toBe("Chart 2");
    expect(sheet?.charts).toEqual(["Chart 1", "Chart 2"]);
    sheet?.removeChart("Chart 1");
    expect(Workbook.open(workbook.save()).sheets[0]?.charts).toEqual(["Chart 2"]);
    expect(String(thrownBy(() => sheet?.removeChart("Chart 9")))).toContain("no chart");
    const nowhere = { ...chart, series: [{ name: "a", x: "Gone!A1", y: "A1" }] };
    expect(String(thrownBy(() => sheet?.addChart(nowhere)))).toContain('no sheet "Gone"');
  });
});
