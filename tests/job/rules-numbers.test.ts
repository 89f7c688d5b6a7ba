import { describe, expect, it } from "vitest";
import * as editionData from "../../src/editions";
import { everyNumber, numbersOf, usualConstant } from "../../src/job";
import { numberLeaves } from "../../src/rules/reading-along/number-leaves";

const marks = ["read", "two sources", "from memory", "common practice", "by definition"];

/** Every number in a value, whatever its shape: a walk apart from the one under test. */
function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}
const sorted = (values: readonly number[]) => [...values].sort((a, b) => a - b);

describe("the list of every number", () => {
  const all = everyNumber();

  it.each(editionData.allEditions.map((edition) => [edition.id, edition] as const))(
    "has every number of %s, each as often as the edition states it",
    (id, edition) => {
      const listed = all.filter((entry) => entry.edition === id).map(({ value }) => value);
      expect(sorted(listed)).toEqual(sorted(numbersIn(edition)));
    },
  );

  it("says for each number what it is, its unit, its work, its clause and its mark", () => {
    for (const { what, unit, source, value } of all) {
      expect(what).not.toBe("");
      expect(unit, what).not.toBe("");
      expect(source.work, what).not.toBe("");
      expect(source.clause, what).not.toBe("");
      expect(marks, what).toContain(source.mark);
      expect(value, what).not.toBeNaN();
      // What was read was read in something, on a day.
      if (/^(read|two sources)$/.test(source.mark)) {
        expect(source.document, what).toBeTruthy();
        expect(source.traced, what).toMatch(/^\d{4}-\d\d-\d\d$/);
      }
    }
  });

  it("calls no two numbers of an edition by one name and unit", () => {
    const names = all.map(({ edition, what, unit }) => `${edition}: ${what}, ${unit}`);
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
  });

  it("has the constants and limits of the rules", () => {
    const fixed = numbersOf("Every edition");
    const valuesOf = (what: string) =>
      fixed.filter((entry) => entry.what.includes(what)).map(({ value }) => value);
    expect(valuesOf("flow constant")).toEqual([usualConstant.ip, usualConstant.si]);
    expect(valuesOf("pressure of the window")).toEqual([1, 8]);
    expect(valuesOf("manometer, limits, 1")).toEqual([1, 0.25]);
    expect(valuesOf("repeats of the bag test")).toEqual([3]);
    expect(valuesOf("reference density")).toEqual([1.2]);
    expect(valuesOf("pan reading")).toEqual([1]);
  });

  it("is found by any name of an edition, and lists the known ones for another", () => {
    expect(numbersOf("ashrae 62.2 2016")).toEqual(numbersOf("62.2-2016"));
    expect(numbersOf("iecc 2021").length).toBeGreaterThan(0);
    expect(() => numbersOf("62.2-1999")).toThrow(
      /use one of 62.2-2010, .*62.2-2025; =FANROW.EDITIONS\(\) lists all/,
    );
  });
});

describe("the walk over data", () => {
  // Invented data: only the shape counts.
  const source = { work: "W", clause: "1", mark: "read" } as const;
  const other = { work: "W", clause: "2", mark: "read" } as const;

  it("finds numbers at any depth and keeps the nearest source", () => {
    const leaves = numberLeaves({
      source,
      deep: {
        er: [
          { name: "x", far: 7, source: other },
          { name: "y", far: 8 },
        ],
      },
    });
    expect(leaves.map(({ parts, value, source: from }) => [parts.join(" "), value, from])).toEqual([
      ["deep er x far", 7, other],
      ["deep er y far", 8, source],
    ]);
  });

  it("takes the source that a number has of its own, and the system in its key or beside it", () => {
    const leaves = numberLeaves({
      areaRate: 0.3,
      areaSource: other,
      each: { ip: 1, si: 2 },
      source,
    });
    expect(leaves.map(({ key, source: from, system }) => [key, from, system])).toEqual([
      ["areaRate", other, undefined],
      ["each", source, "ip"],
      ["each", source, "si"],
    ]);
    expect(numberLeaves({ system: "si", rate: 5 })[0]?.system).toBe("si");
  });

  it("names a table's cells by the edges beside it, and what is alike by a number or a place", () => {
    const table = numberLeaves({
      areas: [10, 20],
      beds: [1, 2, 3],
      cells: [
        [1, 2, 3],
        [4, 5, 6],
      ],
    });
    expect(table.at(-1)?.parts).toEqual(["cells", "areas 20", "beds 3"]);
    const rows = numberLeaves({
      edges: [5, 9],
      rows: [
        { d: 3, long: [1, 2] },
        { d: 4, long: [1, 2] },
      ],
    });
    expect(rows.at(-1)?.parts).toEqual(["rows", "d 4", "long", "edges 9"]);
    const alike = numberLeaves([{ n: 1 }, { n: 1 }]);
    expect(alike.map(({ parts }) => parts)).toEqual([
      ["1", "n"],
      ["2", "n"],
    ]);
  });
});
