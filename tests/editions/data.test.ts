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
      "62.2-2016",
      "62.2-2019",
      "IRC-2021",
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
});
