import { describe, expect, it } from "vitest";
import { toJobFile } from "../../src/command/job-file";
import { readOlderFile } from "../../src/pane/session/older-file";
import { Workbook } from "../../src/workbook";
import { demo } from "../excel/demo";
import { compareJobs } from "../job/compare";

const blobOf = (bytes: Uint8Array) => new Blob([bytes as BlobPart]);

describe("an older file in the pane", () => {
  it("is read cell by cell as the command reads it, without evaluating anything", async () => {
    const workbook = Workbook.open(demo().save());
    const [older, whole] = [await readOlderFile(blobOf(workbook.save())), toJobFile(workbook)];
    expect(older.calculator).toBeUndefined();
    expect(older.sheets.map(({ name }) => name)).toEqual(whole.sheets.map(({ name }) => name));
    let formulas = 0;
    older.sheets.forEach((grid, i) => {
      const other = whole.sheets[i];
      if (!other) throw new Error("a sheet is missing");
      expect([grid.rowCount, grid.colCount]).toEqual([other.rowCount, other.colCount]);
      for (let row = 0; row < grid.rowCount; row++)
        for (let col = 0; col < grid.colCount; col++) {
          expect(grid.value(row, col)).toEqual(other.value(row, col));
          expect(grid.formula(row, col)).toBe(other.formula(row, col));
          if (grid.hasFormula?.(row, col)) formulas++;
        }
    });
    expect(formulas).toBeGreaterThan(500);
  });

  it("differs from itself in nothing, and from an edited one in the edit", async () => {
    const workbook = demo();
    const older = await readOlderFile(blobOf(workbook.save()));
    expect(compareJobs(older, await readOlderFile(blobOf(workbook.save())))).toEqual([]);
    workbook.sheet("Fans")?.setValue(1, 10, 3.3);
    const changes = compareJobs(older, await readOlderFile(blobOf(workbook.save())));
    expect(changes.filter(({ kind }) => kind === "typed")).toMatchObject([
      { sheet: "Fans", cell: "K2", after: "3.3" },
    ]);
  });

  it("says in one line what is wrong with a file that is none", async () => {
    const reading = readOlderFile(new Blob(["not a workbook at all"]));
    await expect(reading).rejects.toThrow(/^[^\n]+$/);
  });

  it("refuses a file beyond the limit before its bytes are in memory", async () => {
    const huge = {
      size: 101 * 2 ** 20,
      arrayBuffer: () => Promise.reject(new Error("was read")),
    } as Blob;
    await expect(readOlderFile(huge)).rejects.toThrow("101 MB: workbooks of up to 100 MB");
  });
});
