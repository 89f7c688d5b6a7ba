import { describe, expect, it } from "vitest";
import { fieldPapers, type SheetPlan } from "../../src/records";
import { checked, smallJob } from "./small-job";

const { plans, problems } = fieldPapers(checked(smallJob()));
const valuesOf = (plan: SheetPlan | undefined) =>
  (plan?.rows ?? []).map(({ cells }) => cells.map((cell) => cell?.value ?? null));
const rowOf = (plan: SheetPlan | undefined, first: string | number) =>
  valuesOf(plan).filter((row) => row[0] === first);

describe("What a tester takes along", () => {
  it("is a card for each box and one form", () => {
    expect(plans.map(({ name }) => name)).toEqual(["Card Box 1", "Form"]);
    expect(problems).toEqual([]);
  });

  it("gives flows by cfm = 1.07 · in² · √Pa (trade form, common practice)", () => {
    for (const pressure of [1, 4, 7.5]) {
      const [row] = rowOf(plans[0], pressure);
      expect(row?.[1]).toBeCloseTo(1.07 * 24 * Math.sqrt(pressure), 9);
    }
    expect(rowOf(plans[0], 8.5)).toEqual([]);
  });

  it("rounds the lowest pressure of a rate up, so that a fan at it is not short", () => {
    const [row] = rowOf(plans[0], 50);
    const exact = (50 / (1.07 * 24)) ** 2;
    expect(row?.[1]).toBeGreaterThanOrEqual(exact);
    expect(row?.[1]).toBeLessThan(exact + 0.1);
    expect(rowOf(plans[0], 100)[0]?.[1]).toBe("–");
    expect(rowOf(plans[0], 20)[0]?.[1]).toBe("any");
  });

  it("lists every fan under its dwelling, with nothing filled in where a reading goes", () => {
    const rows = valuesOf(plans[1]);
    const lots = rows.map((row) => row[0]).filter((value) => /^Lot/.test(String(value)));
    expect(lots).toEqual(["Lot 1", "Lot 2"]);
    for (const row of rowOf(plans[1], "B1")) expect(row.slice(6)).toEqual(Array(5).fill(null));
  });

  it("starts a page before a dwelling that the one before has no room for", () => {
    const workbook = smallJob();
    const fans = workbook.sheet("Fans");
    for (let i = 0; i < 20; i++) {
      fans?.setValue(8 + i, 0, `Lot ${3 + Math.floor(i / 4)}`);
      fans?.setValue(8 + i, 1, `B${1 + (i % 4)}`);
    }
    const form = fieldPapers(checked(workbook)).plans.at(-1);
    const starts = form?.page.breaksBefore ?? [];
    expect(starts.length).toBeGreaterThan(0);
    // The gap over a dwelling's name begins the page.
    for (const row of starts) expect(String(valuesOf(form)[row + 1]?.[0])).toMatch(/^Lot \d+$/);
  });

  it("makes no card of a box that lists an opening twice, and says how to mend it", () => {
    const workbook = smallJob();
    const boxes = workbook.sheet("Boxes");
    const line = ["Box 1", "A", "round", 5, 19.6, 1.07, null];
    for (const [col, value] of line.entries()) boxes?.setValue(2, col, value);
    const twice = fieldPapers(checked(workbook));
    expect(twice.plans.map(({ name }) => name)).toEqual(["Form"]);
    expect(twice.problems[0]).toContain("lists opening A twice");
  });
});
