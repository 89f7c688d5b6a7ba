import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { auditFormulas } from "../../src/audit";
import { toJobFile } from "../../src/command";
import { checkJob } from "../../src/job";
import { Workbook } from "../../src/workbook";
import { demo, today } from "../excel/demo";

/** What is told of a workbook and was not told of the demo job. */
function told(workbook: Workbook, kind: string) {
  return checkJob(toJobFile(workbook), today, auditFormulas).findings.filter(
    (finding) => finding.kind === kind,
  );
}

describe("An alteration that no reader would see", () => {
  it("of the window of pressures is told once, with the fans it lets pass", () => {
    const workbook = demo();
    const { fit } = checkJob(toJobFile(workbook), today).job;
    const at = fit.settings.get("high");
    if (!at) throw new Error("no setting");
    workbook.sheet(at.sheet)?.setValue(at.row, at.col, 20);
    const [finding, ...more] = told(workbook, "setting-unusual");
    expect(more).toEqual([]);
    expect(finding?.what).toBe("the highest pressure is set to 20 Pa; 8 Pa is usual");
    expect(finding?.effect).toMatch(/^\d+ fans? pass/);
    expect(told(demo(), "setting-unusual")).toEqual([]);
  });

  it("that copies the readings of one dwelling to another is told once, with all cells", () => {
    const build = (second: readonly number[]) => {
      const rows = [4.1, 2.7, 6.3, 3.9].map((p, i) => ["Lot 1", `B${i}`, p, 20]);
      const others = second.map((p, i) => ["Lot 2", `B${i}`, p, 20]);
      const workbook = Workbook.create();
      workbook.addSheet("Fans", {
        rows: [["Dwelling", "Fan", "Pressure (Pa)", "Open area (in²)"], ...rows, ...others].map(
          (row) => row.map((value) => ({ value })),
        ),
      });
      return told(workbook, "readings-copied").map(({ cell, cells }) => [cell, cells.length]);
    };
    expect(build([4.1, 2.7, 6.3, 3.9])).toEqual([["C6", 4]]);
    expect(build([4.1, 2.7, 6.3, 3.8])).toEqual([]);
    expect(build([4.1, 2.7])).toEqual([]);
    expect(told(demo(), "readings-copied")).toEqual([]);
  });

  it("that puts other readings on a sheet no menu shows is told once", () => {
    const workbook = demo();
    workbook.addSheet("Old", { rows: [[{ value: "Pa" }], [{ value: 4 }], [{ value: 5 }]] });
    expect(told(workbook, "sheet-hidden")).toEqual([]);
    const parts = unzipSync(workbook.save());
    const book = strFromU8(parts["xl/workbook.xml"] as Uint8Array);
    parts["xl/workbook.xml"] = strToU8(book.replace('name="Old"', 'name="Old" state="veryHidden"'));
    const [finding, ...more] = told(Workbook.open(zipSync(parts)), "sheet-hidden");
    expect(more).toEqual([]);
    expect(finding?.what).toBe("the sheet Old, with 2 numbers, is hidden so that no menu shows it");
  });
});
