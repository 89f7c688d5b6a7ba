// A blank cell reaches a function as 0, null or "" by the version of Excel (office-js issues 1951, 4702 and 5262).
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import { isCellError } from "../../src/cells";
import { SheetModel } from "../../src/sheet";
import { Workbook } from "../../src/workbook";

const folder = join(import.meta.dirname, "..", "..", "workbooks");
const demos = readdirSync(folder).filter((name) => name.endsWith(".xlsx"));

/** Every value of a workbook worked out with blanks passed like this; of an error its code, as messages may tell 0. */
function values(name: string, blank: 0 | null | ""): string[] {
  const book = Workbook.open(readFileSync(join(folder, name)));
  new SheetModel(book, worksheetFunctions, { blank }).recalculateAll();
  return book.sheets.flatMap((sheet) =>
    [...sheet.cells()].map(({ row, col, value }) =>
      JSON.stringify([sheet.name, row, col, isCellError(value) ? value.error : value]),
    ),
  );
}

describe("a blank cell of a job as 0, as null and as an empty text", () => {
  it("is looked at in every workbook that comes with the project", () => {
    expect(demos.length).toBeGreaterThanOrEqual(5);
  });

  it.each(demos)("gives the same values in %s", (name) => {
    const asText = values(name, "");
    expect(values(name, null)).toEqual(asText);
    expect(values(name, 0)).toEqual(asText);
  });
});
