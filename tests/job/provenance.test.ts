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

const fingerprint = (change?: Change, headings?: readonly string[]) =>
  provenanceOf(job(change, headings)).fingerprint;

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
      { value: 1.2, fans: 1, mark: "stated" },
    ]);
  });

  it("fits into one line", () => {
    const line = provenanceLine(provenanceOf(readJob(toJobFile(demo()))));
    expect(line).not.toContain("\n");
    for (const part of [`Fanrow ${version}`, "IRC-2021", "1.07", "1 to 8 Pa", "148 rows"])
      expect(line).toContain(part);
  });
});

describe("the fingerprint of the inputs", () => {
  it("is sixteen hex digits, the same for the same job", () => {
    expect(fingerprint()).toMatch(/^[0-9a-f]{16}$/);
    expect(fingerprint()).toBe(fingerprint());
  });

  it("changes with a typed cell, and not with what is computed", () => {
    const computed = (value: number) => fingerprint({ "Flow (cfm)": { formula: "H2*I2", value } });
    expect(computed(54)).toBe(computed(55));
    expect(fingerprint({ "Box pressure (Pa)": 4.6 })).not.toBe(fingerprint());
    expect(fingerprint({ Fan: "1" })).not.toBe(fingerprint({ Fan: 1 }));
  });

  it("does not hang on the order of the columns or on columns that are no field", () => {
    const turned = [...fanHeadings].reverse();
    expect(fingerprint({}, turned)).toBe(fingerprint());
    expect(fingerprint({ "Crew notes": "x" }, [...fanHeadings, "Crew notes"])).toBe(fingerprint());
  });
});
