import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { Workbook } from "../../src/workbook";
import { blankName, demoName } from "../../workbooks/files";

const inWorkbooks = (name: string) => join(import.meta.dirname, "../../workbooks", name);
const file = inWorkbooks(demoName);
/** Comma, double quote, UTF-8, from row 1, as stored and not as formatted, every sheet. */
const everySheet = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";

describe("the demo job in LibreOffice", () => {
  const folder = mkdtempSync(join(tmpdir(), "fanrow-lo-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const convert = (to: string, ...files: string[]) => {
    const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
    const how = ["--headless", "--convert-to", to, "--outdir", folder];
    execFileSync("soffice", [profile, ...how, ...files]);
  };
  beforeAll(() => convert(everySheet, file));

  it("prints on as many pages as a sheet has strips of columns that can be read, and no more", () => {
    convert("pdf", file, inWorkbooks(blankName));
    const pages = (name: string) =>
      readFileSync(join(folder, name.replace("xlsx", "pdf")), "latin1").match(/\/Type ?\/Page\b/g);
    // 104 fans on two, each other sheet on one; 60 rows with the spread of each flow in two strips.
    expect([demoName, blankName].map((name) => pages(name)?.length)).toEqual([5, 7]);
  });

  const workbook = Workbook.open(new Uint8Array(readFileSync(file)));

  it.each(workbook.sheets.map((sheet) => sheet.name))("shows the stored values of %s", (name) => {
    const csv = join(folder, demoName.replace(".xlsx", `-${name}.csv`));
    const shown = Papa.parse<string[]>(readFileSync(csv, "utf8")).data;
    let compared = 0;
    for (const cell of workbook.sheet(name)?.cells() ?? []) {
      const text = shown[cell.row]?.[cell.col] ?? "";
      if (cell.value === null || typeof cell.value === "boolean") continue;
      compared++;
      if (typeof cell.value === "object") expect(text).toMatch(/^#|^Err/);
      else if (typeof cell.value === "string") {
        // Of a formula without its function LibreOffice shows a blank result as #NAME?.
        if (cell.value !== "") expect(text).toBe(cell.value);
      } else if (/^\d{4}-\d\d-\d\d$/.test(text))
        expect(Date.parse(text) / 86_400_000 + 25569).toBe(cell.value);
      // Fifteen digits at least: what a spreadsheet shows of a number.
      else
        expect(Math.abs(Number(text) - cell.value)).toBeLessThan(
          1e-9 * Math.abs(cell.value) + 1e-12,
        );
    }
    expect(compared).toBeGreaterThan(10);
  });
});
