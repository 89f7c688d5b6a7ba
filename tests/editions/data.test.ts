import { describe, expect, it } from "vitest";
import { duties, editions, roomKinds, type TableRule } from "../../src/editions";
import type { Source } from "../../src/formulas";

const marks = ["read", "two sources", "from memory", "common practice", "by definition"];

function expectTraced(source: Source) {
  expect(source.work).not.toBe("");
  expect(source.clause).not.toBe("");
  expect(marks).toContain(source.mark);
}

describe("the editions", () => {
  it("keep the ids that job workbooks hold", () => {
    expect(editions.map(({ id }) => id)).toEqual([
      "62.2-2010",
      "62.2-2013",
      "62.2-2016",
      "62.2-2019",
      "62.2-2022",
      "IRC-2021",
      "HUD-3280",
      "ADF-2010",
      "ADF-2021",
    ]);
  });
});

describe.each(editions.map((edition) => [edition.id, edition] as const))("%s", (_, edition) => {
  it("gives every number a work, a clause and a mark", () => {
    for (const rule of [...edition.rooms, ...edition.dwelling]) expectTraced(rule.source);
    if (edition.runTime) expectTraced(edition.runTime.source);
    for (const rule of edition.dwelling)
      if (rule.method === "larger") expectTraced(rule.areaSource);
  });

  it("has one rule at most for a room at a duty, of the known kinds", () => {
    const keys = edition.rooms.map(({ room, duty }) => `${room}, ${duty}`);
    expect(new Set(keys).size).toBe(keys.length);
    for (const { room, duty } of edition.rooms) {
      expect(roomKinds).toContain(room);
      expect(duties).toContain(duty);
    }
  });

  it("states a rate or air changes for each room, and rates only in its own units", () => {
    for (const { rate, airChanges } of edition.rooms) {
      expect(rate !== undefined || airChanges !== undefined).toBe(true);
      if (rate) expect(Object.keys(rate).sort()).toEqual([...edition.systems].sort());
      for (const value of Object.values(rate ?? {})) expect(value).toBeGreaterThan(0);
    }
  });

  it("has a rule for the whole dwelling in each of its units", () => {
    for (const system of edition.systems)
      expect(
        edition.dwelling.some((rule) =>
          "system" in rule ? rule.system === system : rule.areaRate[system] !== undefined,
        ),
      ).toBe(true);
  });

  const tables = edition.dwelling.filter((rule): rule is TableRule => rule.method === "table");
  it.each(tables.map((table) => [table.source.clause, table] as const))(
    "has a whole %s: edges that rise, and cells that never fall with area or bedrooms",
    (_clause, { areas, bedrooms, cells }) => {
      const rises = (edges: readonly number[]) =>
        edges.every((edge, i) => i === 0 || edge > (edges[i - 1] as number));
      expect(rises(areas)).toBe(true);
      expect(rises(bedrooms)).toBe(true);
      expect(cells).toHaveLength(areas.length);
      for (const row of cells) expect(row).toHaveLength(bedrooms.length);
      cells.forEach((row, r) => {
        row.forEach((cell, c) => {
          expect(cell).toBeGreaterThan(cells[r - 1]?.[c] ?? 0);
          expect(cell).toBeGreaterThan(row[c - 1] ?? 0);
        });
      });
    },
  );

  it("has run-time factors, if any, that rise in share and never rise in factor", () => {
    const rows = edition.runTime?.rows ?? [];
    rows.forEach(([share, factor], i) => {
      expect(share).toBeGreaterThan(rows[i - 1]?.[0] ?? 0);
      expect(factor).toBeLessThan(rows[i - 1]?.[1] ?? Number.POSITIVE_INFINITY);
    });
    if (edition.runTime) expect(rows.at(-1)).toEqual([1, 1]);
  });

  it("states the numbers of credits, cycles and deficits in each of its units, and traced", () => {
    const { infiltration, credit, cycle, deficits } = edition;
    const whole = (rate: object) =>
      expect(Object.keys(rate).sort()).toEqual([...edition.systems].sort());
    if (infiltration) {
      expectTraced(infiltration.source);
      whole(infiltration.factor);
      whole(infiltration.referenceHeight);
    }
    // A leakage is of no use without a credit, nor a credit without an infiltration.
    expect(credit === undefined).toBe(infiltration === undefined);
    for (const part of [credit, credit?.newWork, credit?.excess, credit?.exposure])
      if (part) expectTraced(part.source);
    if (credit?.unbalanced) expectTraced(credit.unbalanced.source);
    if (credit?.excess) whole(credit.excess.byDefault);
    if (deficits) {
      expectTraced(deficits.source);
      whole(deficits.window);
      for (const { rate } of deficits.rooms) whole(rate);
    }
    if (cycle) {
      expectTraced(cycle.source);
      expectTraced(cycle.longer.source);
    }
  });

  it("has an effectiveness, if any, for every share of the time, that never falls with it", () => {
    const rows = edition.cycle?.longer.rows ?? [];
    rows.forEach(({ upTo, effectiveness }, i) => {
      expect(upTo).toBeGreaterThan(rows[i - 1]?.upTo ?? 0);
      expect(effectiveness).toBeGreaterThan(rows[i - 1]?.effectiveness ?? 0);
    });
    if (edition.cycle) expect(rows.at(-1)).toEqual({ upTo: 1, edge: "inside", effectiveness: 1 });
  });
});
