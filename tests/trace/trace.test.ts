import { readFileSync } from "node:fs";
import { join } from "node:path";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { cellName } from "../../src/cells";
import { lines, TraceError, trace, traceBack } from "../../src/trace";
import { call as callFunction } from "../functions/call";
import { fileOf, gridOf } from "../pane/job-file";
import { cellUnder, demo, demoInPane, traced } from "./files";

const answers = Papa.parse<Record<"sheet" | "cell" | "kind", string>>(
  readFileSync(join(import.meta.dirname, "../../workbooks/alder-terrace-answers.csv"), "utf8"),
  { header: true, skipEmptyLines: true },
).data;
const planted = (kind: string) => {
  const found = answers.find((row) => row.kind === kind);
  return `${found?.sheet}!${found?.cell}`;
};
const hosts = [
  ["evaluates formulas", demo],
  ["only stores values", demoInPane],
] as const;
const inRow = (sheet: string, heading: string, row: number) =>
  `${sheet}!${cellName(row, cellUnder(sheet, heading).col)}`;

describe.each(hosts)("a host that %s", (_, file) => {
  // The first row of the demo job whose reading is in range.
  const { row } = cellUnder("Fans", "Range status", (value) => value === "in range");

  it("traces a flow to its formula, numbers, unit, clause and cells", () => {
    const flow = traced(file, inRow("Fans", "Flow", row));
    expect(flow).toMatchObject({
      kind: "ours",
      label: "Flow (cfm)",
      agreement: { state: "agrees" },
    });
    expect(flow.formula).toMatch(/^=FANROW\.FLOW\(/);
    const [call] = flow.calls;
    expect(call).toMatchObject({ id: "FLOW", inside: [], text: flow.formula?.slice(1) });
    const value = (name: string) =>
      call?.arguments.find((each) => each.name === name)?.value as number;
    // The orifice equation, ISO 5167-2:2003, 4, with the numbers of the row.
    const expected = value("constant") * value("area") * Math.sqrt(value("pressure"));
    expect(flow.value).toBeCloseTo(expected, 9);
    expect(call?.sums[0]?.symbols).toEqual(["Q = K · A · √ΔP"]);
    expect(call?.result).toBe(`${Number(expected.toPrecision(6))} cfm`);
    expect(call?.sources[0]?.text).toMatch(/ISO 5167-2.*two sources/);
    expect(
      call?.arguments.map(({ name, given, reads }) => [name, given, reads[0]?.cells[0]?.name]),
    ).toEqual([
      ["area", "cell", inRow("Fans", "Open area", row)],
      ["pressure", "cell", inRow("Fans", "Box pressure", row)],
      ["constant", "cell", inRow("Fans", "Constant", row)],
      ["units", "cell", "Job!B5"],
    ]);
    expect(call?.arguments[0]?.description).toMatch(/^Open area, above 0/);
  });

  it("gives for a call the very text of WORKING", () => {
    const [call] = traced(file, inRow("Fans", "Flow", row)).calls;
    const args = call?.arguments.map(({ value }) => value) ?? [];
    const text = callFunction("WORKING", "FLOW", ...args)[0]?.[0] as string;
    expect(text.startsWith(call?.lines.join("; ") ?? "?")).toBe(true);
    expect(text).toContain(call?.sources[0]?.text);
  });

  it("traces a verdict, a required rate with its clause, and the openings in use", () => {
    const verdict = traced(file, inRow("Fans", "Verdict", row));
    expect(verdict.calls[0]?.words).toEqual(["simple acceptance: no tolerance below the rate"]);
    expect(verdict.calls[0]?.result).toBe(verdict.value);
    const required = traced(file, inRow("Fans", "Required", row));
    expect(required.calls[0]?.sources[0]).toMatchObject({ mark: "read" });
    expect(required.calls[0]?.sources[0]?.text).toMatch(/^IRC 2021, .*M1505\.4\.4/);
    const area = traced(file, inRow("Fans", "Open area", row));
    const picked = area.calls[0]?.picked ?? [];
    expect(picked.length).toBeGreaterThan(0);
    const sum = picked.reduce((all, cell) => all + (cell.value as number), 0);
    expect(area.value).toBeCloseTo(sum, 9);
  });

  it("says which cells a conditional sum takes", () => {
    const { row, col } = cellUnder("Dwellings", "Continuous flow", (value) => Number(value) > 0);
    const provided = trace(file, "Dwellings", row, col);
    expect(provided).toMatchObject({ kind: "native", calls: [], agreement: { state: "agrees" } });
    const [pick] = provided.picks;
    expect(pick?.text).toMatch(/^SUMIFS\(/);
    expect(pick?.count).toBe(pick?.cells.length);
    const sum = pick?.cells.reduce((all, cell) => all + (cell.value as number), 0);
    expect(provided.value).toBeCloseTo(sum ?? 0, 9);
    for (const cell of pick?.cells ?? []) expect(cell.label).toBe("Flow (cfm)");
  });

  it("walks back from a verdict to the typed readings", () => {
    const { col } = cellUnder("Fans", "Verdict");
    const steps = traceBack(file, "Fans", row, col);
    const names = steps.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const heading of [
      "Verdict",
      "Flow (",
      "Box pressure",
      "Reading 1",
      "Reading 3",
      "Constant",
    ])
      expect(names).toContain(inRow("Fans", heading, row));
    const pressure = steps.find(({ label }) => label.startsWith("Box pressure"));
    expect(pressure).toMatchObject({ kind: "native" });
    expect(pressure?.reads[0]?.cells).toHaveLength(3);
    const reading = steps.find(({ label }) => label.startsWith("Reading 1"));
    expect(reading && lines(reading)).toEqual([
      `${reading?.name}, Reading 1 (Pa): ${reading?.value}`,
      "  typed value, no formula",
    ]);
    const constant = steps.find(({ label, kind }) => label === "Constant" && kind === "native");
    expect(names).toContain(constant?.picks[0]?.cells[0]?.name);
  });

  it("tells a stored value that is not what the formula gives", () => {
    const stale = traced(file, planted("value-stale"));
    expect(stale.agreement).toMatchObject({ state: "differs" });
    const fresh = stale.agreement?.state === "differs" ? (stale.agreement.fresh as number) : 0;
    expect(stale.calls[0]?.result).toBe(`${Number(fresh.toPrecision(6))} cfm`);
    expect(lines(stale).at(-1)).toMatch(/the stored value is not what it gives\.$/);
  });

  it("tells what keeps an error cell from a result", () => {
    const broken = traced(file, planted("cell-error"));
    expect(broken.value).toEqual({ error: "#REF!" });
    expect(broken.calls[0]).toMatchObject({ problem: "pressure holds #REF!", result: "" });
    const unknown = traced(file, planted("opening-unknown"));
    const area = traced(file, inRow("Fans", "Open area", unknown.place.top));
    expect(area.calls[0]?.problem).toMatch(/^unknown opening "F": this box has /);
  });

  it("says of typed and blank cells that they are", () => {
    const blank = traced(file, planted("duty-missing"));
    expect(blank).toMatchObject({ kind: "blank", formula: null, value: null });
    expect(lines(blank)).toEqual([`${blank.name}, Duty`, "  blank"]);
    expect(traced(file, "Job!B3")).toMatchObject({ kind: "typed", label: "Edition" });
  });

  it("finds every stored value of the demo job fresh but the planted one", () => {
    const differ = file.sheets.flatMap((grid) => {
      const found: string[] = [];
      for (let row = 0; row < grid.rowCount; row++)
        for (let col = 0; col < grid.colCount; col++) {
          const { agreement, name } = trace(file, grid.name, row, col);
          if (agreement && agreement.state !== "agrees") found.push(name);
        }
      return found;
    });
    expect(differ).toEqual([planted("value-stale")]);
  });

  it("refuses a sheet that is not there and a cell outside the used range, in one line", () => {
    expect(() => trace(file, "Fens", 0, 0)).toThrow(TraceError);
    expect(() => trace(file, "Fens", 0, 0)).toThrow('no sheet "Fens": the workbook has Job, ');
    expect(() => trace(file, "Fans", 4999, 0)).toThrow(
      /^no cell Fans!A5000: the sheet is used from A1 to [A-Z]+105$/,
    );
    expect(() => trace(fileOf(gridOf("Old fans", [])), "old FANS", 0, 0)).toThrow(
      "no cell 'Old fans'!A1: the sheet is empty",
    );
  });
});

describe("a formula", () => {
  const book = (formula: string, ...rows: (number | string | null)[][]) =>
    fileOf(gridOf("Fans", [[{ formula, value: 51.36 }, 24, 4, "round"], ...rows]));
  const first = (formula: string) => trace(book(formula), "Fans", 0, 0);

  it("is shown as typed, however the file spells it", () => {
    for (const stored of ["_xldudf_FANROW_FLOW(B1,C1)", "[2]!_xldudf_FANROW_FLOW(B1,C1)"])
      expect(first(stored)).toMatchObject({ formula: "=FANROW.FLOW(B1,C1)", kind: "ours" });
  });

  it("may hold several calls of ours, nested in others: outermost first", () => {
    const { calls, agreement } = first(
      'IF(D1="round",ROUND(FANROW.FLOW(FANROW.AREA_FOR(C1*12.84,4),C1),2),0)',
    );
    expect(calls.map(({ id, inside }) => [id, inside])).toEqual([
      ["FLOW", ["IF", "ROUND"]],
      ["AREA_FOR", ["IF", "ROUND", "FANROW.FLOW"]],
    ]);
    // AREA_FOR and FLOW at one pressure invert each other: 51.36.
    expect(calls[0]?.result).toBe("51.36 cfm");
    expect(calls[0]?.arguments[0]).toMatchObject({
      given: "expression",
      value: expect.closeTo(24, 9),
    });
    expect(agreement).toEqual({ state: "agrees" });
  });

  it("says of a call in the branch not taken that it does not count, and why", () => {
    const { calls } = first('IF(D1="square",FANROW.FLOW(B1,1),FANROW.FLOW(B1,C1))');
    expect(calls.map(({ unused }) => unused)).toEqual([
      'the condition D1="square" is false',
      undefined,
    ]);
    const fallback = first("IFERROR(FANROW.FLOW(B1,C1),FANROW.FLOW(B1,1))");
    expect(fallback.calls[1]?.unused).toBe("FANROW.FLOW(B1,C1) gives no error");
    expect(lines(fallback).join("\n")).toContain(
      "not used here: FANROW.FLOW(B1,C1) gives no error",
    );
  });

  it("may name parts of itself with LET", () => {
    const { calls, agreement } = first("LET(a,B1,p,C1+0,FANROW.FLOW(a,p))");
    expect(calls[0]?.arguments.map(({ value }) => value)).toEqual([24, 4, undefined, undefined]);
    expect(agreement).toEqual({ state: "agrees" });
  });

  it("may leave arguments out or write them in place", () => {
    const { calls } = first('FANROW.FLOW(B1,4,,"ip")');
    expect(calls[0]?.arguments.map(({ given, stoodIn }) => [given, stoodIn])).toEqual([
      ["cell", undefined],
      ["literal", undefined],
      ["left out", 1.07],
      ["literal", undefined],
    ]);
    expect(lines(first("FANROW.FLOW(B1,4)")).join("\n")).toContain(
      "constant: left out, 1.07 stands in",
    );
  });

  it("that asks for the time or for what is not evaluated here is not compared", () => {
    expect(first("TODAY()").agreement).toMatchObject({ state: "changes" });
    expect(first("FANROW.NO_SUCH(B1)")).toMatchObject({
      kind: "native",
      agreement: { state: "not evaluated", why: expect.stringContaining("NO_SUCH") },
    });
    for (const formula of ["B1*Rate", "PIVOTBY(A1,0,1)*2.14", "A1#"])
      expect(first(formula).agreement).toMatchObject({ state: "not evaluated" });
  });

  it("may itself ask for the sum of another", () => {
    const text =
      "Q = K · A · √ΔP = 1.07 · 24 · √4 = 51.36 cfm — orifice equation Q = C·A·√(2·ΔP/ρ), ISO 5167-2:2003, 4 (incompressible, no approach velocity) (two sources)";
    const file = fileOf(
      gridOf("Fans", [[{ formula: 'FANROW.WORKING("FLOW",B1,C1)', value: text }, 24, 4]]),
    );
    const found = trace(file, "Fans", 0, 0);
    expect(found.agreement).toEqual({ state: "agrees" });
    expect(found.calls[0]?.arguments.map(({ value }) => value)).toEqual(["FLOW", 24, 4]);
  });

  it("may be a text that is no formula at all", () => {
    expect(first("IF(((").formula).toBe("=IF(((");
    expect(first("IF(((").agreement).toMatchObject({ state: "not evaluated" });
  });
});

describe("a result that spills", () => {
  const flow = (pressure: number) => 1.07 * 24 * Math.sqrt(pressure);
  const file = fileOf(
    gridOf("Fans", [
      [24, 1, { formula: "FANROW.FLOW(A1:A3,B1:B3)", value: flow(1) }, 9],
      [24, 4, flow(4), 9],
      [24, 7, flow(7), 9],
      [{ formula: "FANROW.REACH(A1)", value: flow(1) }, flow(8), null, null],
    ]),
  );

  it("is traced from each cell it fills, with that row's numbers", () => {
    const third = trace(file, "Fans", 2, 2);
    expect(third).toMatchObject({ kind: "ours", spilledFrom: { name: "Fans!C1" } });
    expect(third.calls[0]?.lines).toEqual(["Q = K · A · √ΔP = 1.07 · 24 · √7 = 67.9429 cfm"]);
    expect(third.calls[0]?.arguments[1]).toMatchObject({ given: "range", value: 7 });
    expect(trace(file, "Fans", 3, 1)).toMatchObject({ spilledFrom: { name: "Fans!A4" } });
  });

  it("does not claim the typed cells beside it", () => {
    expect(trace(file, "Fans", 2, 3).kind).toBe("typed");
    expect(trace(file, "Fans", 2, 1).kind).toBe("typed");
  });
});

describe("a flow whose row works out its spread", () => {
  const spread = "INDEX(FANROW.FLOW_SPREAD(C2:D2,B2,0.3,1.07,2,1,0.25),1,1)";
  const file = fileOf(
    gridOf("Fans", [
      ["Fan", "Area", "Reading 1", "Reading 2", "Flow", "Spread"],
      [
        "B1",
        24,
        4,
        4,
        { formula: "FANROW.FLOW(B2,AVERAGE(C2:D2))", value: 51.36 },
        { formula: spread, value: 1.4276 },
      ],
    ]),
  );

  it("points at it, and its trace shows the budget", () => {
    const flow = trace(file, "Fans", 1, 4);
    expect(flow.spread).toMatchObject({ name: "Fans!F2", label: "Spread" });
    const [call] =
      traceBack(file, "Fans", 1, 4).find(({ name }) => name === "Fans!F2")?.calls ?? [];
    expect(call?.budget?.lines.map(({ label }) => label)).toEqual([
      "flow constant",
      "opening size",
      "manometer limit",
      "scatter of 2 readings",
    ]);
    expect(call?.lines.some((line) => line.startsWith("manometer limit: ΔP ± 0.144338 Pa"))).toBe(
      true,
    );
  });
});

describe("speed", () => {
  // A sum over three columns of 20,000 rows, which the scratch model has to read.
  const count = 20_000;
  const rows = Array.from({ length: count }, (_, i) => [`Lot ${i % 500}`, i % 2 ? "on" : "off", 1]);
  const sum = (i: number) => ({
    formula: `SUMIFS($C$2:$C$${count + 1},$A$2:$A$${count + 1},A${i},$B$2:$B$${count + 1},"on")`,
    value: 40,
  });
  const file = fileOf(
    gridOf("Fans", [
      ["Lot", "Duty", "Flow", "Sum"],
      ...rows.map((row, i) => (i % 1000 === 1 ? [...row, sum(i + 2)] : row)),
    ]),
  );

  it("is within a blink also for a cell that reads 60,000 others", () => {
    const times = [2, 1002, 2002, 3002, 4002, 5002, 6002].map((row) => {
      const start = performance.now();
      expect(trace(file, "Fans", row, 3).agreement).toEqual({ state: "agrees" });
      return performance.now() - start;
    });
    // About 20 ms on a quiet machine; the rest is room for a busy one.
    expect(Math.min(...times)).toBeLessThan(150);
  });
});
