import { describe, expect, it } from "vitest";
import { acceptanceHeadings, boxProofs, fingerprintOf } from "../../src/job";
import {
  allRecords,
  dwellingRecord,
  jobRecord,
  proofRecord,
  type SheetPlan,
} from "../../src/records";
import { checked, smallJob } from "./small-job";

/** All that a plan says, a line a row. */
function textOf({ rows }: SheetPlan): string {
  return rows
    .map(({ cells }) =>
      cells
        .map((cell) =>
          typeof cell?.value === "number" ? cell.value.toFixed(2) : cell?.value?.replace("\n", " "),
        )
        .filter((value) => value !== null && value !== undefined && value !== "")
        .join(" | "),
    )
    .join("\n");
}

function sectionOf(plan: SheetPlan, title: string): string[] {
  const lines = textOf(plan).split("\n");
  const from = lines.indexOf(title);
  const to = lines.findIndex((line, i) => i > from && line === "");
  return lines.slice(from + 1, to < 0 ? undefined : to);
}

describe("The record of a job", () => {
  const check = checked(smallJob());
  const plan = jobRecord(check);
  const text = textOf(plan);

  it("says what was measured, by whom, when and by which edition", () => {
    expect(text).toContain("Measured | 3 of 3 fans in 3 dwellings");
    // 46300 is 2026-10-05: days are counted from 1899-12-30.
    expect(text).toContain("Tested | 2026-10-05 to 2026-10-07");
    expect(text).toContain("Tested by | T. Wren (2 fans), M. Lark (1 fan)");
    expect(text).toContain("Required by | ASHRAE 62.2-2016");
  });

  it("counts the verdicts and lists the dwellings that fall short", () => {
    expect(sectionOf(plan, "Verdicts")).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^meets \| 0.00 \| 1.00 \| 1.00/),
        expect.stringMatching(/^short \| 1.00 \| 0.00 \| 1.00/),
        expect.stringMatching(/^out of range \| 0.00 \| 1.00 \| 1.00/),
      ]),
    );
    // 0.03 · 1200 + 7.5 · 3 = 58.5 (62.2-2016, 4.1); 1.07 · 24 · √4 = 51.36.
    expect(sectionOf(plan, "Dwellings that fall short").at(-1)).toBe(
      "Lot 1 | Elm | 58.50 | 51.36 | 7.14",
    );
  });

  it("names each rate with its clause, and says which are from memory", () => {
    const rates = sectionOf(plan, "Rates required");
    expect(rates).toContain(
      "bathroom, continuous | 20 cfm, delivered | 2 fans | ASHRAE 62.2-2016, table 5.2 | two sources",
    );
    expect(rates.at(-1)).toMatch(/whole dwelling .*4\.1\.1, eq\. 4\.1a \| read$/);
  });

  it("gives findings by kind with where they are, and what it rests on", () => {
    const findings = sectionOf(plan, "Faults left open").join("\n");
    expect(sectionOf(plan, "Results that ask for something").join("\n")).toMatch(
      /pressure above the window \| result \| 1.00 \| Fans I4/,
    );
    expect(findings).toMatch(/dwelling with no fan \| missing \| 1.00 \| Dwellings A4/);
    expect(text).toMatch(
      /Codes \| [0-9a-f]{8} [0-9a-f]{8} [0-9a-f]{8}\. The first code \(inputs\) changes/,
    );
    expect(plan.page.footer.right).toMatch(/^Codes( [0-9a-f]{8}){3}$/);
  });

  it("defers to the authority and to licensed practice", () => {
    expect(text).toContain("The authority that has jurisdiction decides");
    expect(text).toContain("licensed");
  });

  it("lists accepted findings with reason, initials and date, and not among the open ones", () => {
    const [finding] = check.findings.filter(({ kind }) => kind === "pressure-above");
    if (!finding) throw new Error("no finding");
    const fingerprint = fingerprintOf(check.job.file, finding);
    const row = [finding.sheet, finding.cell, finding.kind, finding.about];
    const accepted = [
      [...acceptanceHeadings],
      [...row, "No smaller opening fits", "TW", 46_310, fingerprint],
    ];
    const after = jobRecord(checked(smallJob({ accepted })));
    expect(sectionOf(after, "Findings accepted").at(-1)).toBe(
      "Fans I4: Lot 2, B1 | pressure above the window | No smaller opening fits | TW | 2026-10-15",
    );
    expect(sectionOf(after, "Faults left open").join("\n")).not.toContain("pressure above");
  });

  it("says so where the job names nothing", () => {
    const bare = jobRecord(checked(smallJob({ settings: { "Job name": null, Edition: null } })));
    expect(textOf(bare)).toContain("Job without a name");
    expect(textOf(bare)).toContain("no edition named");
  });
});

describe("The record of a dwelling", () => {
  const check = checked(smallJob());

  it("has its fans row by row with what is missing", () => {
    const fans = sectionOf(dwellingRecord(check, "lot 1"), "Fans");
    expect(fans).toHaveLength(3);
    expect(fans[1]).toMatch(
      /^B1 \| Bath \| continuous \| Box 1 · A \| 4.1, 3.9 \| 4.00 \| 51.36 \| .*20.00 \| meets \(delivered\) \| 2026-10-05$/,
    );
    expect(fans[2]).toMatch(/100.00 \| 48.64 \| short \(delivered\) \| 2026-10-05$/);
  });

  it("has its rate, and what is missing of it", () => {
    const lines = sectionOf(dwellingRecord(check, "Lot 1"), "Whole dwelling");
    expect(lines[0]).toContain("58.5 cfm by ASHRAE 62.2-2016");
    expect(lines.at(-1)).toBe("Missing | 7.1 cfm");
    const other = sectionOf(dwellingRecord(check, "Lot 2"), "Whole dwelling");
    expect(other.at(-1)).toBe("Missing | cannot be told");
  });

  it("has only the findings about it", () => {
    const lines = sectionOf(dwellingRecord(check, "Lot 2"), "Findings left open");
    expect(lines.every((line) => line.includes("Lot 2"))).toBe(true);
    expect(lines.join("\n")).toContain("Fans I4");
  });

  it("is refused for a dwelling that the job does not have", () => {
    expect(() => dwellingRecord(check, "Lot 9")).toThrow('no dwelling "Lot 9"');
  });
});

describe("The proof of a box", () => {
  /** Reference flows that 1.07 · A · √P gives, times so much. */
  const pairsTimes = (factor: number) =>
    [1.2, 2, 3, 4.5, 6, 7.5].map((pressure): [string, number, number, number] => [
      "A",
      24,
      pressure,
      factor * 1.07 * 24 * Math.sqrt(pressure),
    ]);
  const recordOf = (factor: number) => {
    const { job } = checked(smallJob({ pairs: pairsTimes(factor) }));
    const own = boxProofs(job).get("BOX 1");
    if (!own) throw new Error("no proof");
    return proofRecord(job, own);
  };

  it("states verdict, figures, coverage, reference and what is not shown", () => {
    const text = textOf(recordOf(1.02));
    expect(text).toContain("Verdict | proved, against a written accuracy of ±10 % of the reading");
    // The pairs give 1.02 · 1.07 = 1.0914; a box that reads 1/1.02 of the truth is 1.96 % low.
    expect(text).toContain("the pairs give 1.0914");
    expect(text).toContain("Bias | −2 % (standard error 0 %), over 6 pairs at 6 flows");
    expect(text).toContain("Opening A | 6 pairs from 1.2 to 7.5 Pa: 90 % of its window");
    expect(text).toContain("Reference | Hood 3; standard spread 1.2 %");
    expect(text).toContain("It cannot prove the box better than its reference.");
    expect(textOf(recordOf(1.2))).toContain("does not yet show that the box meets ±10 % there");
  });

  it("draws the pairs, the line of equality and the lines of the requirement", () => {
    const plan = recordOf(1.02);
    const { chart } = plan;
    expect(chart?.series.map(({ name }) => name)).toEqual(["pairs", "equal", "+10 %", "−10 %"]);
    const cell = (ref: string) => {
      const row = plan.rows[Number(ref.slice(1)) - 1];
      return row?.cells[ref.charCodeAt(0) - 65]?.value;
    };
    const [pairs, , above, below] = chart?.series ?? [];
    const [firstX = ""] = pairs?.x.split(":") ?? [];
    const [firstY = ""] = pairs?.y.split(":") ?? [];
    expect(cell(firstY)).toBeCloseTo(1.07 * 24 * Math.sqrt(1.2), 9);
    expect(cell(firstX)).toBeCloseTo(1.02 * 1.07 * 24 * Math.sqrt(1.2), 9);
    const end = chart?.x.max ?? 0;
    expect(cell(above?.y.split(":")[1] ?? "")).toBeCloseTo(1.1 * end, 9);
    expect(cell(below?.y.split(":")[1] ?? "")).toBeCloseTo(0.9 * end, 9);
    // The figures of the lines stand outside what is printed.
    const printed = plan.page.area.split(":")[1]?.charCodeAt(0) ?? 0;
    expect(above?.x.charCodeAt(0)).toBeGreaterThan(printed);
  });
});

describe("The records of a job", () => {
  it("are the job's, one of each dwelling with fans and one of each box with pairs", () => {
    const pairs: [string, number, number, number][] = [["A", 24, 4, 50]];
    const names = allRecords(checked(smallJob({ pairs }))).map(({ name }) => name);
    expect(names).toEqual(["Record", "Record Lot 1", "Record Lot 2", "Proof Box 1"]);
  });

  it("merge no cell twice and have rows as high as their text", () => {
    for (const { rows, merges, columns } of allRecords(checked(smallJob()))) {
      const seen = new Set<string>();
      for (const merge of merges) {
        const [, from = "", row = "", to = ""] = /^([A-Z])(\d+):([A-Z])/.exec(merge) ?? [];
        for (let col = from.charCodeAt(0); col <= to.charCodeAt(0); col++) {
          const key = `${col} ${row}`;
          expect(seen.has(key)).toBe(false);
          seen.add(key);
        }
      }
      for (const { cells, height } of rows) {
        expect(cells.length).toBeLessThanOrEqual(columns.length);
        expect(height).toBeGreaterThan(0);
      }
    }
  });
});
