import { describe, expect, it } from "vitest";
import { editions, findEdition, type System } from "../../src/editions";
import { dwellingRate } from "../../src/job";

const edition = findEdition("62.2-2016");

describe("the rate of a dwelling", () => {
  it("comes with its source and the sum in numbers", () => {
    expect(dwellingRate(edition, 1800, 3, "ip")).toMatchObject({
      rate: 84,
      working: "Q_req = 0.03 · 1800 + 7.5 · (3 + 1)",
    });
    expect(dwellingRate(edition, 1800, 3, "ip", "table").working).toBe("table row 4, column 3: 90");
  });

  it("counts one bedroom where an edition sets that as the least", () => {
    expect(dwellingRate(edition, 1000, 0, "ip").rate).toBe(
      dwellingRate(edition, 1000, 1, "ip").rate,
    );
    expect(dwellingRate(edition, 1000, 0, "ip", "table").rate).toBe(45);
  });

  it("takes a method in any case", () => {
    expect(dwellingRate(edition, 1800, 3, "ip", " Table ").rate).toBe(90);
  });

  it("refuses an unknown method and lists those the edition has", () => {
    expect(() => dwellingRate(edition, 1800, 3, "ip", "guess")).toThrow(
      'unknown method "guess" in 62.2-2016: use one of equation, table',
    );
    expect(() => dwellingRate(findEdition("ADF-2021"), 80, 3, "si", "table")).toThrow(
      "use one of larger",
    );
  });

  it("says where a table ends and what to use instead", () => {
    expect(() => dwellingRate(edition, 4501, 3, "ip", "table")).toThrow(
      'ends at 4500 of floor and 5 bedrooms: use the method "equation"',
    );
    expect(() => dwellingRate(edition, 1000, 6, "ip", "table")).toThrow(
      'use the method "equation"',
    );
  });

  it.each([0, -5, Number.NaN])("refuses a floor area of %d", (area) => {
    expect(() => dwellingRate(edition, area, 3, "ip")).toThrow("give an area above 0");
  });

  it.each([-1, 2.5, Number.NaN])("refuses %d bedrooms", (bedrooms) => {
    expect(() => dwellingRate(edition, 1000, bedrooms, "ip")).toThrow("give a whole number");
  });

  it("names the clause of the side that governs where the larger of two counts", () => {
    const adf = findEdition("ADF-2021");
    expect(dwellingRate(adf, 80, 3, "si").source.clause).toBe("table 1.3");
    expect(dwellingRate(adf, 200, 3, "si")).toMatchObject({ rate: 60, source: { clause: "1.24" } });
  });

  it.each(
    editions
      .filter(({ dwelling }) => dwelling.length > 0)
      .flatMap((entry) => entry.systems.map((system) => [entry.id, system] as const)),
  )("of %s in %s never falls as area or bedrooms grow", (id, system: System) => {
    const rates = (method: string | undefined, area: number, bedrooms: number) => {
      try {
        return dwellingRate(findEdition(id), area, bedrooms, system, method).rate;
      } catch {
        return Number.NaN;
      }
    };
    const methods = findEdition(id)
      .dwelling.filter((rule) => !("system" in rule) || rule.system === system)
      .map(({ method }) => method);
    const step = system === "ip" ? 250 : 20;
    let compared = 0;
    for (const method of methods)
      for (let n = 0; n < 10; n++)
        for (let area = step; area < 40 * step; area += step) {
          const here = rates(method, area, n);
          for (const more of [rates(method, area + step, n), rates(method, area, n + 1)])
            if (!Number.isNaN(here) && !Number.isNaN(more)) {
              expect(more).toBeGreaterThanOrEqual(here);
              compared++;
            }
        }
    expect(compared).toBeGreaterThan(50);
  });
});
