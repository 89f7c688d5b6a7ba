import { describe, expect, it } from "vitest";
import { allEditions, duties, editions, roomKinds, type TableRule } from "../../src/editions";
import type { Source } from "../../src/formulas";

const marks = ["read", "two sources", "from memory", "common practice", "by definition"];

function expectTraced(source: Source) {
  expect(source.work).not.toBe("");
  expect(source.clause).not.toBe("");
  expect(marks).toContain(source.mark);
  // What was read was read in something, on a day; what is recalled may have a witness.
  if (source.mark === "read" || source.mark === "two sources") expect(source.document).toBeTruthy();
  expect(source.traced ?? "2026-01-01").toMatch(/^\d{4}-\d\d-\d\d$/);
  expect(source.document === undefined).toBe(source.traced === undefined);
}

describe("the editions", () => {
  it("keep the ids that job workbooks hold", () => {
    expect(editions.map(({ id }) => id)).toEqual(
      expect.arrayContaining([
        "62.2-2010",
        "62.2-2013",
        "62.2-2016",
        "62.2-2019",
        "62.2-2022",
        "IRC-2021",
        "HUD-3280",
        "ADF-2010",
        "ADF-2021",
      ]),
    );
    expect(new Set(allEditions.map(({ id }) => id)).size).toBe(allEditions.length);
  });
});

describe.each(editions.map((edition) => [edition.id, edition] as const))("%s", (_, edition) => {
  it("gives every number a work, a clause and a mark", () => {
    for (const rule of [...edition.rooms, ...edition.dwelling]) expectTraced(rule.source);
    if (edition.runTime) expectTraced(edition.runTime.source);
    for (const rule of edition.dwelling)
      if (rule.method === "larger") expectTraced(rule.areaSource);
  });

  it("has one rule at most for a room at a duty under the same conditions, of the known kinds", () => {
    const keys = edition.rooms.map(({ room, duty, when = {} }) =>
      JSON.stringify([room, duty, when]),
    );
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

  it("puts the rule that asks for most first, where conditions tell rules apart", () => {
    for (const { room, duty } of edition.rooms) {
      const [system = "ip"] = edition.systems;
      const rates = edition.rooms
        .filter(
          (rule) => rule.room === room && rule.duty === duty && rule.when?.cooking !== "electric",
        )
        .map(({ rate }) => rate?.[system] ?? 0);
      expect(rates).toEqual([...rates].sort((a, b) => b - a));
    }
  });

  it("has a rule for the whole dwelling in each of its units, or none at all", () => {
    if (edition.dwelling.length === 0) return;
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
          // Washington's lowest cells are all 30: an edge may repeat, never fall.
          expect(cell).toBeGreaterThanOrEqual(cells[r - 1]?.[c] ?? 0);
          expect(cell).toBeGreaterThanOrEqual(row[c - 1] ?? 0);
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
    if (cycle) expectTraced(cycle.source);
  });
});
