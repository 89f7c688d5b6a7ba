import { describe, expect, it } from "vitest";
import { everyNumber } from "../../src/job";
import { mostNumbers, numberEditions, numbersPage } from "../../src/pane/model/numbers-view";

describe("every number", () => {
  it("is listed under some edition, none lost and none twice", () => {
    const editions = numberEditions();
    expect(new Set(editions).size).toBe(editions.length);
    const totals = editions.map((edition) => numbersPage(edition, "").total);
    expect(totals.reduce((sum, total) => sum + total, 0)).toBe(everyNumber().length);
  });

  it("ends with what holds whatever the edition", () => {
    const last = numberEditions().at(-1) ?? "";
    const constant = numbersPage(last, "flow constant").rows.map(({ value }) => value);
    expect(constant).toContain("1.07 cfm/(in²·√Pa)");
  });

  it("shows value, unit, clause and mark, and is searched by all of these", () => {
    // ASHRAE 62.2-2016 table 5.1: 50 cfm for a bathroom on demand.
    expect(numbersPage("62.2-2016", "bathroom demand cfm").rows).toEqual([
      {
        what: "rooms, bathroom, on demand, rate",
        value: "50 cfm",
        clause: {
          work: "ASHRAE 62.2-2016",
          clause: "table 5.1",
          mark: "read in two independent texts",
        },
      },
    ]);
    const recalled = numbersPage("62.2-2016", "Verify memory");
    expect(recalled.total).toBeGreaterThan(0);
    for (const { clause } of recalled.rows) expect(clause.mark).toMatch(/^from memory/);
    expect(numbersPage("62.2-2016", "no such thing")).toEqual({ rows: [], total: 0 });
    expect(numbersPage("none", "").total).toBe(0);
  });

  it("says an open end of a table in words", () => {
    const values = numberEditions().flatMap((edition) =>
      numbersPage(edition, "").rows.map(({ value }) => value),
    );
    expect(values.some((value) => value.startsWith("without end"))).toBe(true);
    for (const value of values) expect(value).not.toMatch(/Infinity|NaN|undefined/);
  });

  it("never hands over more rows than can be drawn at once", () => {
    for (const edition of numberEditions())
      expect(numbersPage(edition, "").rows.length).toBeLessThanOrEqual(mostNumbers);
    expect(numbersPage("IRC-2021", "", 5).rows).toHaveLength(5);
    expect(numbersPage("IRC-2021", "", 5).total).toBeGreaterThan(100);
  });
});
