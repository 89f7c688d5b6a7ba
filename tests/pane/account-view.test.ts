import { describe, expect, it } from "vitest";
import { type AccountView, accountView, whileOn } from "../../src/pane/model/account-view";
import type { Outcome } from "../../src/pane/model/said";
import { dwellingAt, estimating, existing, withSettings } from "./demo-jobs";

const account = (name: string) => accountView(existing, dwellingAt(existing, name));
const step = ({ further }: AccountView, title: string) => {
  const found = further.find((each) => each.title === title);
  if (!found) throw new Error(`no step ${title}`);
  return found;
};
const rateOf = (outcome: Outcome) => ("rate" in outcome ? Number.parseFloat(outcome.rate) : NaN);

describe("the account of a dwelling", () => {
  const flat = account("Flat 1");

  it("adds a quarter of the rooms' deficits to the required rate", () => {
    // ASHRAE 62.2-2016, 4.1.1: 0.03 · 780 ft² + 7.5 · (2 + 1), by hand.
    expect(flat.required.outcome).toMatchObject({ rate: "45.9 cfm" });
    const rooms = flat.deficits?.rooms ?? [];
    expect(rooms.map(({ fan }) => fan)).toEqual(["Flat 1, B1", "Flat 1, K1"]);
    const sum = rooms.reduce((total, { outcome }) => total + rateOf(outcome), 0);
    expect(Number.parseFloat(flat.deficits?.sum ?? "")).toBeCloseTo(sum, 0);
    const raised = rateOf(step(flat, "Rate with deficits").outcome);
    expect(raised).toBeCloseTo(45.9 + sum / 4, 1);
  });

  it("takes the outside part of the infiltration off, and says where each step stands", () => {
    const raised = rateOf(step(flat, "Rate with deficits").outcome);
    const infiltration = step(flat, "Infiltration");
    expect(infiltration.note).toMatch(/outside: 0\.7/);
    const needed = rateOf(step(flat, "Fans must move").outcome);
    expect(needed).toBeCloseTo(raised - 0.72 * rateOf(infiltration.outcome), 0);
    for (const { outcome } of [flat.required, ...flat.further])
      expect(outcome).toMatchObject({
        working: expect.arrayContaining([expect.stringMatching(/ = /)]),
        clause: { work: "ASHRAE 62.2-2016", mark: expect.stringMatching(/\w/) },
      });
  });

  it("counts the whole rate as the deficit of a room without a fan, less its window", () => {
    const kitchen = account("Flat 2").deficits?.rooms.find(({ fan }) => /no fan/.test(fan));
    // 100 cfm on demand less 20 cfm for a window that opens, by the same appendix.
    expect(kitchen).toMatchObject({ fan: "Flat 2, Kitchen (no fan)", outcome: { rate: "80 cfm" } });
  });

  it("says what is still missing, and what there is to spare", () => {
    expect(account("Flat 6")).toMatchObject({
      continuous: "Its continuous fan moves 46.3 cfm.",
      result: { isShort: true, words: expect.stringMatching(/^Still missing: \d/) },
    });
    expect(flat.result).toMatchObject({ isShort: false, words: expect.stringMatching(/to spare/) });
  });

  it("says that a dwelling has no continuous fan on the sheet", () => {
    const view = accountView(estimating, 0);
    expect(view.deficits).toBeUndefined();
    expect(view.further).toEqual([]);
    expect(view.continuous).toMatch(/^No continuous fan/);
    expect(view.result.isShort).toBeUndefined();
  });

  it("says which setting an infiltration lacks, and that what is missing is not known then", () => {
    const job = withSettings(existing, { weather: undefined });
    const view = accountView(job, dwellingAt(existing, "Flat 1"));
    expect(step(view, "Infiltration").outcome).toMatchObject({
      problem: expect.stringMatching(/weather/),
    });
    expect(view.result).toMatchObject({
      isShort: undefined,
      words: expect.stringMatching(/cannot/),
    });
  });
});

describe("a fan that runs part of the time", () => {
  const on = (share: string, hours: string, job = existing) =>
    whileOn(job, dwellingAt(existing, "Flat 1"), share, hours);
  const needed = rateOf(step(account("Flat 1"), "Fans must move").outcome);

  it("moves twice as much in half the time, over cycles that are averaged plainly", () => {
    const outcome = on("50", "");
    expect(rateOf(outcome)).toBeCloseTo(2 * needed, 0);
    expect(outcome).toMatchObject({ clause: { work: "ASHRAE 62.2-2016" } });
    expect(rateOf(on("50,0", "3"))).toBe(rateOf(outcome));
    expect(on("50", "12")).toMatchObject({
      problem: expect.stringMatching(/averages plainly over 3 hours/),
    });
  });

  it("says in the words of the screen what to type instead", () => {
    for (const share of ["", "0", "half", "120", "-5"])
      expect(on(share, "")).toMatchObject({ problem: expect.stringMatching(/share of the time/) });
    for (const hours of ["0", "long"])
      expect(on("50", hours)).toMatchObject({ problem: expect.stringMatching(/hours/) });
    const long = on("50", "48");
    expect("problem" in long && long.problem).toMatch(/^A cycle of 48 h: /);
    const irc = withSettings(existing, { edition: undefined });
    expect(on("50", "", irc)).toMatchObject({ problem: expect.stringMatching(/edition/) });
  });
});
