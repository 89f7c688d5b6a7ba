// LibreOffice Calc recalculates the same formulas: an independent implementation of the functions
// (OASIS OpenFormula 1.2 and the Excel import filter).
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { inStoredForm, SheetModel } from "../../src/sheet";
import { Workbook } from "../../src/workbook";
import { cases, dataRows } from "./cases";

/** Where Excel and LibreOffice are known to differ; the first value is Excel's (from memory). */
const differs: Readonly<Record<string, { excel: unknown; why: string }>> = {
  '"z"<TRUE': { excel: true, why: "booleans are numbers there" },
  '"a"&1&TRUE': { excel: "a1TRUE", why: "booleans are numbers there" },
  'CONCATENATE("a",1,TRUE)': { excel: "a1TRUE", why: "booleans are numbers there" },
  'SUM("5",TRUE)': { excel: 6, why: "text as an argument is refused there" },
  "ISBLANK(Data!B5)": { excel: false, why: "an empty text in a file is read as a blank there" },
};

let folder: string;
let theirs: string[];
let model: SheetModel;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "sheet-"));
  const workbook = Workbook.create();
  // A format of its own keeps LibreOffice from showing dates and percents, and shows all digits.
  const style = workbook.addStyle({ numberFormat: "0.00000000000000E+00" });
  workbook.addSheet("Cases", {
    rows: cases.map((formula) => [{ formula: inStoredForm(formula, []), value: 0, style }]),
  });
  workbook.addSheet("Data", { rows: dataRows });
  const file = join(folder, "cases.xlsx");
  writeFileSync(file, workbook.save());
  theirs = converted(file);
  model = new SheetModel(workbook, []);
  model.recalculateAll();
}, 180_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The first sheet as LibreOffice calculates it: text in quotes, numbers in full. */
function converted(file: string): string[] {
  const profile = join(folder, "profile");
  mkdirSync(join(profile, "user"), { recursive: true });
  // 0: always recalculate on load; otherwise the stored values would be believed.
  writeFileSync(
    join(profile, "user", "registrymodifications.xcu"),
    `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`,
  );
  execFileSync(
    "soffice",
    [
      `-env:UserInstallation=${pathToFileURL(profile)}`,
      "--headless",
      "--convert-to",
      "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,true,false",
      "--outdir",
      folder,
      file,
    ],
    { stdio: "pipe", timeout: 150_000 },
  );
  return readFileSync(join(folder, "cases.csv"), "utf8").trimEnd().split("\n");
}

/** Their cell as a value; booleans are numbers there. */
function read(cell: string): unknown {
  const text = cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell;
  if (/^#[A-Z0-9/]+[!?]?$/.test(text)) return { error: text };
  // LibreOffice has one code for every unusable argument.
  if (/^Err:50[24]$/.test(text)) return { error: expect.stringMatching(/^#(NUM|VALUE|REF)!$/) };
  return cell.startsWith('"') || cell === "" ? text : Number(cell);
}

/** Ours as they can show it. */
function shown(own: unknown): unknown {
  return typeof own === "boolean" ? Number(own) : own;
}

describe("native formulas agree with LibreOffice", () => {
  it("gives a value for every case", () => {
    expect(model.unsupported()).toEqual([]);
    expect(theirs).toHaveLength(cases.length);
  });

  it.each(cases.map((formula, i) => [formula, i] as const))("=%s", (formula, i) => {
    const own = shown(model.value("Cases", i, 0));
    const known = differs[formula];
    if (known) {
      expect(own).toEqual(shown(known.excel));
      expect(read(theirs[i]!), `LibreOffice now agrees: ${known.why}`).not.toEqual(own);
      return;
    }
    const other = read(theirs[i]!);
    // They show 15 digits, and sum in an order of their own.
    if (typeof own === "number" && typeof other === "number")
      expect(Math.abs(own - other)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(other)));
    else expect(own).toEqual(other);
  });
});
