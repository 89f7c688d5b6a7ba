import { describe, expect, it } from "vitest";
import { version } from "../../package.json";
import { toJobFile } from "../../src/command";
import { provenanceLine, provenanceOf, readJob } from "../../src/job";
import { demo } from "../excel/demo";
import {
  boxes,
  dwellings,
  fanHeadings,
  grid,
  jobFile,
  settings,
  soundFan,
  type TestCell,
} from "./grids";

type Change = Partial<Record<string, TestCell>>;

function job(change: Change = {}, headings: readonly string[] = fanHeadings) {
  const cells: Record<string, TestCell> = { ...soundFan, ...change };
  const fans = grid("Fans", [[...headings], headings.map((heading) => cells[heading] ?? null)]);
  return readJob(jobFile(settings, boxes, dwellings, fans));
}

const codes = (change?: Change, headings?: readonly string[]) =>
  provenanceOf(job(change, headings)).codes;

describe("what a job rests on", () => {
  it("names version, edition, clauses, constants, window, judging and rows", () => {
    const provenance = provenanceOf(job());
    expect(provenance).toMatchObject({
      version,
      edition: { id: "IRC-2021" },
      constants: [{ value: 1.07, fans: 1, mark: "common practice" }],
      window: { low: 1, high: 8, mark: "common practice" },
      judging: "simple acceptance",
      rows: 1 + 1 + 3,
    });
    for (const { clause, mark } of provenance.clauses) {
      expect(clause).not.toBe("");
      expect(mark).not.toBe("");
    }
    expect(provenance.clauses.length).toBeGreaterThanOrEqual(2);
  });

  it("marks a constant that the job states itself", () => {
    expect(provenanceOf(job({ Constant: 1.2 }, [...fanHeadings, "Constant"])).constants).toEqual([
      { value: 1.2, text: "1.2", fans: 1, mark: "stated" },
    ]);
  });

  it("fits into one line", () => {
    const line = provenanceLine(provenanceOf(readJob(toJobFile(demo()))));
    expect(line).not.toContain("\n");
    for (const part of [`Fanrow ${version}`, "IRC-2021", "1.07", "1 to 8 Pa", "148 rows"])
      expect(line).toContain(part);
  });
});

describe("the three codes of a job", () => {
  const { inputs, formulas, settings: stated } = codes();

  it("have eight hex digits each, the same for the same job", () => {
    for (const code of [inputs, formulas, stated]) expect(code).toMatch(/^[0-9a-f]{8}$/);
    expect(codes()).toEqual({ inputs, formulas, settings: stated });
  });

  it("tell by which of them changes whether it was a typed cell, a formula or a setting", () => {
    expect(codes({ "Box pressure (Pa)": 4.6 })).toMatchObject({ formulas, settings: stated });
    expect(codes({ "Box pressure (Pa)": 4.6 }).inputs).not.toBe(inputs);
    expect(codes({ Fan: "1" }).inputs).not.toBe(codes({ Fan: 1 }).inputs);
    const computed = (formula: string, value: number) =>
      codes({ "Flow (cfm)": { formula, value } });
    expect(computed("H2*I2", 54)).toEqual(computed("H2*I2", 55));
    const [a, b] = [computed("H2*I2", 54), computed("H2*J2", 54)];
    expect([a.inputs, a.settings]).toEqual([b.inputs, b.settings]);
    expect(a.formulas).not.toBe(b.formulas);
    const other = provenanceOf(
      readJob(
        jobFile(
          grid("Job", [
            ["Setting", "Value"],
            ["Edition", "62.2-2016"],
          ]),
          boxes,
          dwellings,
        ),
      ),
    ).codes;
    expect(other.settings).not.toBe(stated);
  });

  it("do not change with a row that is moved, columns in another order, or columns that are no field", () => {
    const turned = [...fanHeadings].reverse();
    expect(codes({}, turned).inputs).toBe(inputs);
    expect(codes({ "Crew notes": "x" }, [...fanHeadings, "Crew notes"])).toEqual(codes());
  });
});
