import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import { auditFormulas } from "../../src/audit";
import { toJobFile } from "../../src/command";
import { checkJob, type JobCheck, readJob } from "../../src/job";
import { SheetModel } from "../../src/sheet";
import { Workbook } from "../../src/workbook";
import { demoName, existingName } from "../../workbooks/files";

const today = 46_350;

/** A demo job in which a column of the fans holds another formula all the way down. */
function checkWith(
  name: string,
  key: string,
  formula: (refs: (key: string) => string, row: number) => string,
  rows = Number.POSITIVE_INFINITY,
): JobCheck {
  const file = new URL(`../../workbooks/${name}`, import.meta.url);
  const workbook = Workbook.open(readFileSync(file));
  const table = readJob(toJobFile(workbook)).fans?.table;
  if (!table) throw new Error("the job has fans");
  const model = new SheetModel(workbook, worksheetFunctions);
  for (let i = 0; i < table.length; i++) {
    const place = table.place(key, i);
    if (!place) throw new Error(`the fans have ${key}`);
    if (i >= rows) for (let col = 0; col < 40; col++) model.enter("Fans", place.row, col, "");
    else
      model.enter("Fans", place.row, place.col, `=${formula((of) => table.ref(of, i), place.row)}`);
  }
  model.recalculateAll();
  return checkJob(toJobFile(workbook), today, auditFormulas);
}

const differing = ({ findings }: JobCheck) =>
  findings.filter(({ kind }) => kind === "value-differs" || kind.startsWith("formula-"));

describe("a whole column of formulas that is not the one it should be", () => {
  it("is told once where some of its values are wrong", () => {
    const check = checkWith(demoName, "verdict", (ref) => `IF(${ref("required")}>0,"meets","")`);
    const told = differing(check).filter(({ what }) => what.startsWith("Verdict"));
    expect(told).toHaveLength(1);
    const [finding] = told;
    expect(finding?.cells.length).toBeGreaterThan(90);
    expect(finding?.what).toContain('Verdict is "meets" but the row gives "');
    expect(finding?.effect).toMatch(/^The formula does not read .*: the result stays as it is/);
  });

  it("is told once where each value happens to be right, in a sheet of three rows too", () => {
    const check = checkWith(existingName, "verdict", () => '"short"', 3);
    const job = check.job.fans?.table;
    expect(job?.texts("verdict").filter((text) => text !== "").length).toBeLessThanOrEqual(3);
    const told = differing(check).filter(({ what }) => what.startsWith("Verdict"));
    expect(told).toHaveLength(1);
  });

  it("is none where the formula says the same in a firm's own way", () => {
    const same = checkWith(
      demoName,
      "flow",
      (ref) =>
        `IF(COUNT(${ref("pressure")})=0,"",${ref("constant")}*${ref("area")}*SQRT(${ref("pressure")}))`,
    );
    expect(differing(same).filter(({ what }) => /does not follow/.test(what))).toEqual([]);
  });

  it("tells the column that a formula passes over", () => {
    const check = checkWith(
      demoName,
      "required",
      (ref) => `IF(${ref("roomKind")}="kitchen",100,50)`,
    );
    const told = differing(check).filter(({ what }) => what.startsWith("Required"));
    expect(told.map(({ cells }) => cells.length > 80)).toContain(true);
    expect(told[0]?.mend).toContain("Duty");
  });
});
