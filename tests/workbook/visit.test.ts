import { describe, expect, it } from "vitest";
import { type Cell, CopiedFormula } from "../../src/workbook";
import { openCells } from "./packages";

function visited(sheet: ReturnType<typeof openCells>["sheet"]) {
  const seen: Omit<Cell, "style">[] = [];
  sheet.visit((row, col, value, source, arrayRef) => {
    const formula = source !== null && typeof source === "object" ? source.at(row) : source;
    seen.push({ row, col, value, formula, arrayRef });
  });
  return seen;
}

describe("a visit of all cells", () => {
  const { sheet } = openCells(
    '<row r="3"><c r="B3" s="1"/><c r="C3"><f t="shared" ref="C3:C4" si="0">A3*2</f><v>4</v></c></row><row r="1"><c r="A1"><f t="array" ref="A1:A2">B1:B2</f><v>1</v></c><c r="D1" t="str"><f>""</f><v></v></c></row><row r="4"><c r="C4"><f t="shared" si="0"/><v>6</v></c><c r="E4"><f>1/0</f></c></row>',
  );

  it("sees what the cells say, row by row, but for cells that hold only a format", () => {
    const told = [...sheet.cells()]
      .filter((cell) => cell.value !== null || cell.formula !== null)
      .map(({ style: _, ...rest }) => rest);
    expect(told.map((cell) => cell.formula)).toEqual(["B1:B2", '""', "A3*2", "A4*2", "1/0"]);
    expect(visited(sheet)).toEqual(told);
  });

  it("sees a formula copied down as one and the same", () => {
    const { sheet: own } = openCells(
      [1, 2, 3, 4].map((r) => `<row r="${r}"><c r="B${r}"><f>A${r}*2</f></c></row>`).join(""),
    );
    const sources: unknown[] = [];
    own.visit((_, __, ___, source) => sources.push(source));
    expect(sources[0]).toBe("A1*2");
    expect(sources[1]).toBeInstanceOf(CopiedFormula);
    expect(sources.slice(2)).toEqual([sources[1], sources[1]]);
    expect(visited(own).map((cell) => cell.formula)).toEqual(["A1*2", "A2*2", "A3*2", "A4*2"]);
  });

  it("sees edits", () => {
    const own = openCells('<row r="1"><c r="A1"><v>1</v></c></row>').sheet;
    own.setFormula(1, 1, "A1+1", 2);
    own.clear(0, 0);
    expect(visited(own)).toEqual([{ row: 1, col: 1, value: 2, formula: "A1+1", arrayRef: null }]);
  });
});
