import { describe, expect, it } from "vitest";
import { call, column, failureOf, type Matrix } from "./call";
import { byRow, contracts, soundArguments } from "./contract";

const asColumn = (_: unknown, cells: unknown[]): Matrix => cells.map((cell) => [cell]);

describe.each(byRow.map((contract) => [contract.id, contract] as const))(
  "%s and the shape of its arguments",
  (id, contract) => {
    const isList = (i: number) => contract.arguments[i]?.role === "list";
    const isRow = (i: number) =>
      !isList(i) && !["units", "word"].includes(contract.arguments[i]?.role ?? "");
    const columns = soundArguments(contract, asColumn);
    const whole = call(id, ...columns);
    const width = contract.cells ?? 1;
    const rowAlone = (r: number) =>
      call(id, ...columns.map((cells, i) => (isRow(i) ? [(cells as Matrix)[r]] : cells)));

    it("gives a result a row for columns", () => {
      expect(whole).toHaveLength(3);
      for (const row of whole) expect(row).toHaveLength(width);
    });

    it("gives every row what it gives that row alone", () => {
      for (const r of [0, 1, 2]) expect(rowAlone(r)).toEqual([whole[r]]);
    });

    it("takes bare values for single cells", () => {
      const bare = columns.map((cells, i) => (isRow(i) ? (cells as Matrix)[1]?.[0] : cells));
      expect(call(id, ...bare)).toEqual([whole[1]]);
    });

    it("takes rows for columns, in arguments and in lists", () => {
      const turned = columns.map((cells, i) =>
        Array.isArray(cells) && !contract.arguments[i]?.repeats
          ? [(cells as Matrix).map(([cell]) => cell)]
          : cells,
      );
      // Repeats of one row lie side by side: beside rows of the others, one cell has to do.
      const repeats = contract.arguments.findIndex((argument) => argument.repeats);
      if (repeats >= 0) turned[repeats] = [(columns[repeats] as Matrix)[0]];
      const expected =
        repeats < 0
          ? whole
          : call(id, ...columns.map((cells, i) => (i === repeats ? turned[i] : cells)));
      const flat = call(id, ...turned);
      // Several cells stand side by side for each row, whichever way the rows lie.
      expect(width > 1 ? flat : flat[0]).toEqual(width > 1 ? expected : expected.flat());
    });

    const rowIndexes = contract.arguments.map((_, i) => i).filter(isRow);

    it("uses one cell for every row beside ranges, whichever argument it is", () => {
      for (const single of rowIndexes) {
        const mixed = columns.map((cells, i) => (i === single ? [(cells as Matrix)[0]] : cells));
        const result = call(id, ...mixed);
        const rows = rowIndexes.length === 1 ? 1 : 3;
        expect(result).toHaveLength(rows);
        for (let r = 0; r < rows; r++) {
          const alone = columns.map((cells, i) =>
            isRow(i) ? [(cells as Matrix)[i === single ? 0 : r]] : cells,
          );
          expect(call(id, ...alone)).toEqual([result[r]]);
        }
      }
    });
  },
);

const several = contracts
  .map((contract) => ({
    contract,
    rows: contract.arguments.flatMap(({ role }, i) =>
      role === "number" || role === "name" ? [i] : [],
    ),
  }))
  .filter(({ rows }) => rows.length > 1);

describe.each(several.map(({ contract, rows }) => [contract.id, contract, rows] as const))(
  "%s and ranges that do not fit",
  (id, contract, rows) => {
    const [first, second] = rows as [number, number];
    const columns = soundArguments(contract, asColumn);
    const cellsOf = (i: number) => columns[i] as Matrix;

    it("refuses ranges of two sizes, says which and how to mend it", () => {
      const mixed = columns.map((cells, i) => (i === second ? cellsOf(i).slice(0, 2) : cells));
      const failure = failureOf(id, ...mixed);
      expect(failure.code).toBe("#VALUE!");
      expect(failure.message).toBe(
        `${contract.arguments[second]?.name} is 2 × 1 cells where 3 × 1 are needed: give ranges of one size, or one cell`,
      );
    });

    it("refuses more cells than a column of a sheet has, before it works", () => {
      const long = 1025;
      const crossed = columns.map((cells, i) => {
        if (i === first) return Array.from({ length: long }, () => cellsOf(i)[0]);
        if (i === second) return [new Array(long).fill(cellsOf(i)[0]?.[0])];
        return rows.includes(i) ? [cellsOf(i)[0]] : cells;
      });
      const failure = failureOf(id, ...crossed);
      expect(failure.code).toBe("#VALUE!");
      expect(failure.message).toContain("1050625 cells in one call: give at most 1048576");
    });
  },
);

describe("shapes of two dimensions", () => {
  it("cross a column with a row into a grid", () => {
    const grid = call("FLOW", column(10, 20), [[1, 4, 9]]);
    expect(grid).toHaveLength(2);
    [10, 20].forEach((area, r) => {
      [1, 2, 3].forEach((root, c) => {
        expect(grid[r]?.[c]).toBeCloseTo(1.07 * area * root, 12);
      });
    });
  });

  it("refuse one argument alone of too many cells", () => {
    const failure = failureOf("ROUND_AREA", [new Array(1_048_577).fill(1)]);
    expect(failure.message).toContain("1048577 cells in one call");
  });

  const paired = contracts.filter((contract) => !byRow.includes(contract) && !contract.table);

  it.each(paired.map((contract) => [contract.id, contract] as const))(
    "%s makes one row of whole ranges, lying or standing, and refuses two lengths",
    (id, contract) => {
      const ranges = soundArguments(contract, asColumn) as Matrix[];
      const result = call(id, ...ranges);
      expect(result).toHaveLength(1);
      expect(result[0]).toHaveLength(contract.cells as number);
      expect(call(id, ...ranges.map((cells) => [cells.flat()]))).toEqual(result);
      const failure = failureOf(id, ranges[0], ...ranges.slice(1).map((cells) => cells.slice(1)));
      expect(failure.code).toBe("#VALUE!");
      expect(failure.message).toMatch(/^\d+ \w+, .*: give ranges of one length$/);
    },
  );

  it("take a whole column of a sheet", () => {
    const areas = call("ROUND_AREA", [new Array(1_048_576).fill(2)]);
    expect(areas[0]).toHaveLength(1_048_576);
    expect(areas[0]?.at(-1)).toBeCloseTo(Math.PI, 14);
  });

  it.each(["OPEN_AREA", "NEXT_OPENING"])("%s refuses lists of two lengths", (id) => {
    const start = id === "OPEN_AREA" ? ["A"] : [16, 12];
    const lists = failureOf(id, ...start, column("A", "B"), column(4));
    expect(lists.message).toBe("2 labels, 1 areas: give ranges of one length");
    const boxes = failureOf(id, ...start, column("A", "B"), column(4, 5), "one", column("one"));
    expect(boxes.message).toBe("2 labels, 2 areas, 1 boxes: give ranges of one length");
  });
});
