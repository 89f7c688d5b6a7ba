import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { Workbook } from "../../src/workbook";

/*
 * An independent reader and writer of the format: LibreOffice Calc. It writes the workbook that is
 * edited here, and reads what was saved.
 */
let folder = "";

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "workbook-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function convert(file: string, to: string, ...more: string[]): void {
  const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
  const target = ["--convert-to", to, "--outdir", folder, join(folder, file)];
  execFileSync("soffice", [profile, "--headless", "--norestore", ...more, ...target], {
    stdio: "pipe",
  });
}

describe("beside LibreOffice", () => {
  it("a workbook it saved is edited, and it reads the edits back", () => {
    writeFileSync(join(folder, "in.csv"), "Tag,Area,Note\nF-1,12.5,first\nF-2,20,\n");
    convert("in.csv", "xlsx:Calc MS Excel 2007 XML");
    const bytes = new Uint8Array(readFileSync(join(folder, "in.xlsx")));
    const workbook = Workbook.open(bytes);
    expect(workbook.save()).toEqual(bytes);
    const sheet = workbook.sheets[0];
    expect(sheet?.cell(0, 1)?.value).toBe("Area");
    expect(sheet?.cell(1, 1)?.value).toBe(12.5);
    sheet?.setValue(1, 1, 13.25);
    sheet?.setValue(2, 2, 'said "so" & <left>');
    sheet?.setFormula(3, 1, "SUM(B2:B3)", 33.25);
    sheet?.setValue(3, 2, true);
    sheet?.clear(0, 2);
    const style = workbook.addStyle({
      numberFormat: "0.000",
      bold: true,
      fill: "FFEE88",
      border: true,
    });
    workbook.addSheet("It's new", {
      rows: [
        [
          { value: "Größe", style },
          { formula: "SUM(in!A1:A1)+2", value: 2, style },
        ],
        [{ value: { error: "#N/A" } }, null, { value: " end " }],
      ],
      frozenRows: 1,
      autoFilter: "A1:B1",
      validations: [{ ref: "A3", list: ["a", "b"] }],
    });
    writeFileSync(join(folder, "out.xlsx"), workbook.save());
    // Filter token 12 = -1 writes every sheet to a file of its own; field 3 = 76 is UTF-8.
    convert(
      "out.xlsx",
      "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1",
    );
    const read = (name: string) => readFileSync(join(folder, name), "utf8").replaceAll("\r", "");
    const first = workbook.sheets[0]?.name;
    expect(read(`out-${first}.csv`)).toBe(
      'Tag,Area,\nF-1,13.25,first\nF-2,20,"said ""so"" & <left>"\n,33.25,TRUE\n',
    );
    expect(read("out-It's new.csv")).toBe("Größe,2,\n#N/A,, end \n");
    // Its own flat format shows each cell as displayed: the number format reached the cell.
    convert("out.xlsx", "fods");
    expect(read("out.fods")).toContain("<text:p>2.000</text:p>");
  });

  it("a workbook made from nothing is read by it", () => {
    const workbook = Workbook.create();
    workbook.addSheet("Job", {
      rows: [[{ value: "Flow" }, { value: 1.5 }], [{ formula: "B1*2", value: 3 }]],
    });
    writeFileSync(join(folder, "made.xlsx"), workbook.save());
    convert("made.xlsx", "csv");
    expect(readFileSync(join(folder, "made.csv"), "utf8")).toBe("Flow,1.5\n3,\n");
  });
});
