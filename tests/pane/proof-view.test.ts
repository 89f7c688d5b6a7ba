import { describe, expect, it } from "vitest";
import { axisEnd, type ProofView, proofView } from "../../src/pane/model/proof-view";
import { existing, proving, withSettings } from "./demo-jobs";

/** 2026-11-25 as a serial number. */
const today = 46_351;

function proofOf(box: string, job = proving, day = today): ProofView {
  const view = proofView(job, box, day);
  if (!view) throw new Error(`no proof of ${box}`);
  return view;
}
const figure = ({ figures }: ProofView, name: string) =>
  figures.find((each) => each.name === name)?.value;

describe("the proof of a box", () => {
  const proved = proofOf("Box 5");

  it("gives the verdict with its reasons, and what was covered beside it", () => {
    expect(proved.verdict).toBe("proved");
    expect(proved.reasons.join(" ")).toMatch(/within ±10 %/);
    expect(proofOf("box 6").verdict).toBe("too few pairs");
    expect(proofOf("box 6").reasons[0]).toMatch(/2 flows/);
    for (const { reasons } of [proved, proofOf("Box 6")])
      for (const reason of reasons) expect(reason).not.toMatch(/^Opening/);
  });

  it("compares each pair by the constant in use", () => {
    const [first] = proved.pairs;
    if (!first) throw new Error("no pair");
    // A round opening of 3.5 in: 1.07 · (π/4 · 3.5²) · √pressure, by hand.
    expect(first.box).toBeCloseTo(1.07 * (Math.PI / 4) * 3.5 ** 2 * Math.sqrt(first.pressure), 9);
    const errors = proved.pairs.map(({ box, reference }) => 100 * (box / reference - 1));
    expect(Number.parseFloat(first.difference)).toBeCloseTo(errors[0] ?? 0, 1);
    const bias = errors.reduce((sum, each) => sum + each, 0) / errors.length;
    expect(figure(proved, "Bias")).toBe(`+${Number(bias.toFixed(1))} %`);
    const largest = Math.max(...errors.map(Math.abs));
    expect(Number.parseFloat(figure(proved, "Largest error") ?? "")).toBeCloseTo(largest, 1);
  });

  it("names the reference with its own spread, or that its limit is nowhere stated", () => {
    expect(figure(proved, "Reference")).toMatch(/^Hood R1; u 2\.\d %$/);
    const unlisted = { ...proving, instruments: undefined };
    expect(figure(proofOf("Box 5", unlisted), "Reference")).toMatch(/not on the Instruments sheet/);
  });

  it("tells when it was proved, and until when that holds", () => {
    expect(figure(proved, "Date")).toBe("2026-10-05");
    expect(figure(proved, "Expires")).toBe("2027-10-05, after 365 days");
    const later = proofOf("Box 5", proving, today + 365);
    expect(figure(later, "Expires")).toBeUndefined();
    expect(figure(later, "Expired")).toMatch(/^2027-10-05/);
    const monthly = withSettings(proving, { interval: 30 });
    expect(figure(proofOf("Box 5", monthly), "Expired")).toMatch(/^2026-11-04/);
  });

  it("shows what part of the window the pairs of each opening cover", () => {
    expect(proved.coverage.map(({ opening }) => opening)).toEqual(["A", "B", "C", "D"]);
    for (const { from, to, words } of proved.coverage) {
      expect(from).toBeGreaterThanOrEqual(0);
      expect(to).toBeLessThanOrEqual(1);
      const share = Number(/(\d+) %/.exec(words)?.[1]) / 100;
      expect(to - from).toBeCloseTo(share, 1);
    }
    const [only] = proofOf("Box 6").coverage;
    expect(only?.words).toMatch(/^2\.\d to 4(\.\d)? Pa, \d+ %, 2 pairs$/);
  });

  it("is drawn on axes that end on a round number beyond every pair", () => {
    const end = axisEnd(proved.pairs);
    const flows = proved.pairs.flatMap(({ box, reference }) => [box, reference]);
    expect(end).toBeGreaterThan(Math.max(...flows));
    expect(end % 50).toBe(0);
    expect(end).toBeLessThan(1.5 * Math.max(...flows));
  });

  it("is not there for a box without pairs, nor in a job without a Pairs sheet", () => {
    expect(proofView(proving, "Box 9", today)).toBeUndefined();
    expect(proofView(existing, "Box 7", today)).toBeUndefined();
  });
});
