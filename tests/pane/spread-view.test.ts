import { describe, expect, it } from "vitest";
import { factsOf, readJob } from "../../src/job";
import { freeFlowView, type SpreadView, spreadView } from "../../src/pane/model/spread-view";
import { acceptFrom, normalQuantile } from "../../src/spread";
import { existing, fanAt, proving, withSettings } from "./demo-jobs";
import { boxSheet, fanSheet, fileOf, goodFan, jobSheet } from "./job-file";

function spreadOf(job = existing, dwelling = "Flat 1", tag = "B2"): SpreadView {
  const view = spreadView(job, fanAt(job, dwelling, tag));
  if ("problem" in view) throw new Error(view.problem);
  return view;
}
const number = (text: string) => Number.parseFloat(text);

describe("the spread of a fan's flow", () => {
  const view = spreadOf();

  it("comes from lines whose shares make up the whole, and whose squares add up to u", () => {
    expect(view.lines.map(({ label }) => label)).toEqual([
      "flow constant",
      "opening size",
      "manometer limit",
      "resolution",
      "zero offset",
      "scatter of 3 readings",
    ]);
    expect(view.lines.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    const squares = view.lines.map(({ contribution }) => number(contribution) ** 2);
    const u = Math.sqrt(squares.reduce((sum, each) => sum + each, 0));
    expect(number(view.u)).toBeCloseTo(u, 2);
  });

  it("tells each input with its own standard spread and unit", () => {
    // 2 % of 1.07; a limit of 0.25 Pa counts as rectangular: 0.25/√3 Pa (GUM 4.3.7).
    expect(view.lines[0]?.input).toBe("K = 1.07, u 0.0214 cfm/(in²·√Pa)");
    expect(view.lines[2]?.input).toBe("ΔP = 6.17, u 0.144 Pa");
  });

  it("is widened by k to what covers 95 %", () => {
    expect(view.coverage).toBe("95 %");
    expect(view.k).toMatch(/^1\.96, of \d+ effective degrees of freedom$/);
    expect(number(view.expanded)).toBeCloseTo(1.962 * number(view.u), 1);
  });

  it("never calls a chance certain", () => {
    expect(view.chance).toBe("Chance of truly meeting 20 cfm: above 99.9 %");
    expect(spreadOf(existing, "Flat 1", "B1").chance).toMatch(/below 0\.1 %$/);
    expect(spreadOf(existing, "Flat 8", "K1").chance).toMatch(/: 5\d(\.\d)? %$/);
  });

  it("sets simple beside guarded acceptance and says which one the job uses", () => {
    const i = fanAt(existing, "Flat 8", "K1");
    const [simple, guarded] = spreadOf(existing, "Flat 8", "K1").acceptances;
    expect(simple).toMatchObject({ meetsFrom: "100 cfm", verdict: "meets", used: false });
    expect(guarded).toMatchObject({ verdict: "too close to call", used: true });
    // JCGM 106:2012, 8.3.2: the limit stands above the rate by the 95 % point of the normal (1.645).
    const u = number(spreadOf(existing, "Flat 8", "K1").u);
    expect(normalQuantile(0.95)).toBeCloseTo(1.6449, 4);
    expect(number(guarded?.meetsFrom ?? "")).toBeCloseTo(acceptFrom(100, u, 0.95), 0);
    expect(number(guarded?.shortBelow ?? "")).toBeCloseTo(
      200 - number(guarded?.meetsFrom ?? ""),
      1,
    );
    const job = withSettings(existing, { judging: "simple" });
    expect(spreadOf(job, "Flat 8", "K1").acceptances.map(({ used }) => used)).toEqual([
      true,
      false,
    ]);
    const { fans } = factsOf(job);
    expect([fans?.verdict(i), fans?.verdict(i, "guarded")]).toEqual(["meets", "too close to call"]);
  });

  it("judges the flow that the job judges, and says so", () => {
    expect(view.judged).toBe("");
    const job = withSettings(existing, { judgeBy: "standard" });
    const i = fanAt(job, "Flat 8", "K1");
    expect(factsOf(job).fans?.judged(i)).toBeLessThan(existing.fans?.flow[i] ?? 0);
    const standard = spreadOf(job, "Flat 8", "K1");
    expect(standard.judged).toMatch(/^Judged is the standard flow, 9\d/);
    expect(standard.acceptances[0]?.verdict).toBe("short");
  });

  it("is told for another instrument by that instrument's limits", () => {
    expect(spreadOf(existing, "Flat 6", "B2").lines.map(({ label }) => label)).toContain(
      "device limit",
    );
  });

  it("says why there is none to tell", () => {
    const problem = (job: Parameters<typeof spreadView>[0], i: number) => {
      const found = spreadView(job, i);
      return "problem" in found ? found.problem : "";
    };
    expect(problem(existing, fanAt(existing, "Flat 2", "none"))).toMatch(/no fan/);
    const fan = (pressure: number | null) =>
      goodFan.map((cell, col) => (col === 7 || col === 8 ? pressure : cell));
    const job = readJob(fileOf(jobSheet, boxSheet, fanSheet(fan(null), fan(-4))));
    expect(problem(job, 0)).toMatch(/measured/);
    expect(problem(job, 1)).toMatch(/above 0/);
    const { instruments: _, ...rest } = existing.tables;
    const hood = existing.fans;
    if (!hood) throw new Error("no fans");
    const fans = Object.assign(Object.create(hood) as typeof hood, { instruments: undefined });
    const unlisted = { ...existing, tables: rest, instruments: undefined, fans };
    expect(problem(unlisted, fanAt(existing, "Flat 6", "B2"))).toMatch(/Hood R2 is not on/);
  });
});

describe("the flow without the box", () => {
  it("stands beside the measured one with its own, larger spread", () => {
    const view = freeFlowView(existing, fanAt(existing, "Flat 1", "B2"));
    if ("problem" in view) throw new Error(view.problem);
    expect(view.openings).toBe("B, then C");
    expect(number(view.free)).toBeGreaterThan(number(view.measured));
    expect(number(view.around.slice(2))).toBeGreaterThan(number(spreadOf().u));
    expect(view.gain).toMatch(/% more than measured through B$/);
  });

  it("is not made up from one reading", () => {
    expect(freeFlowView(existing, fanAt(existing, "Flat 1", "B1"))).toEqual({
      problem: expect.stringMatching(/another opening/),
    });
    expect(freeFlowView(proving, 0)).toHaveProperty("problem");
  });

  it("says what is wrong with two readings that no line can be drawn through", () => {
    const i = fanAt(existing, "Flat 1", "B2");
    const { fans } = existing;
    if (!fans) throw new Error("no fans");
    const second = (pressure: number) => {
      const table = Object.assign(Object.create(fans.table) as typeof fans.table, {
        number: (key: string, row: number) =>
          key === "pressure2" && row === i ? pressure : fans.table.number(key, row),
      });
      return { ...existing, fans: Object.assign(Object.create(fans) as typeof fans, { table }) };
    };
    for (const pressure of [0, -1, fans.pressure[i] as number])
      expect(freeFlowView(second(pressure), i)).toHaveProperty("problem");
    expect(freeFlowView(second(1.5), i)).toHaveProperty("free");
  });
});
