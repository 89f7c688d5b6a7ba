import { describe, expect, it } from "vitest";
import { writePlan } from "../../src/excel/sheets";
import { boxProofs } from "../../src/job";
import { addPlan, dwellingRecord, jobRecord, proofRecord } from "../../src/records";
import { Workbook } from "../../src/workbook";
import { hostOf } from "../desk-host/desk";
import { checked, smallJob } from "../records/small-job";

const pairs = [1.2, 2, 3, 4.5, 6, 7.5].map((pressure): [string, number, number, number] => [
  "A",
  24,
  pressure,
  26 * Math.sqrt(pressure),
]);
const check = checked(smallJob({ pairs }));
const own = boxProofs(check.job).get("BOX 1");
if (!own) throw new Error("no proof");
const proof = proofRecord(check.job, own);

/** What is said of a sheet in a file, to be compared. */
function told(workbook: Workbook, name: string) {
  const sheet = workbook.sheet(name);
  if (!sheet) throw new Error(`no sheet ${name}`);
  const cells = [...sheet.cells()].map(({ row, col, value, style }) => {
    const { border, ...look } = workbook.styleSpec(style);
    return { row, col, value, look };
  });
  const widths = [...sheet.columnWidths].map(([col, width]) => [col, Math.round(width)]);
  return {
    cells: cells.filter(
      ({ value, look }) => value !== null || Object.values(look).some((each) => each !== undefined),
    ),
    widths,
    merges: sheet.merges,
    charts: sheet.charts,
    names: workbook.names.filter((each) => each.sheet === name),
  };
}

describe("A record written into the open workbook", () => {
  it.each([
    ["of a job", jobRecord(check)],
    ["of a dwelling", dwellingRecord(check, "Lot 1")],
    ["of the proof of a box", proof],
  ])("%s is the same in the saved copy as one written into a file", async (_, plan) => {
    const host = hostOf(smallJob({ pairs }));
    const name = await writePlan(plan);
    const file = smallJob({ pairs });
    expect(addPlan(file, plan)).toBe(name);
    const [written, wanted] = [Workbook.open(host.save()), Workbook.open(file.save())];
    const [a, b] = [told(written, name), told(wanted, name)];
    expect(a.cells).toEqual(b.cells);
    expect(a.widths).toEqual(b.widths);
    expect([...a.merges].sort()).toEqual([...b.merges].sort());
    expect([a.charts, a.names.length]).toEqual([b.charts, b.names.length]);
  });

  it("is printed as the one in a file", async () => {
    const plan = dwellingRecord(check, "Lot 1");
    const host = hostOf(smallJob());
    await writePlan(plan);
    const file = smallJob();
    addPlan(file, plan);
    const part = (workbook: Workbook) => {
      const last = workbook.partNames().filter((name) => name.includes("worksheets/sheet"));
      return new TextDecoder().decode(workbook.part(last.at(-1) ?? ""));
    };
    const pieces = (text: string, name: string) =>
      [...(new RegExp(`<${name} ([^>]*)/>`).exec(text)?.[1]?.split(" ") ?? [])].sort();
    const [a, b] = [part(Workbook.open(host.save())), part(file)];
    for (const name of ["pageSetup", "pageMargins", "printOptions"])
      expect([name, pieces(a, name)]).toEqual([name, pieces(b, name)]);
    const footer = /<headerFooter>.*<\/headerFooter>/;
    expect(footer.exec(a)?.[0]).toBe(footer.exec(b)?.[0]);
  });

  it("takes its own place when it is written again, with one chart", async () => {
    const workbook = smallJob({ pairs });
    workbook.addSheet("Proof Box 1", { rows: [[{ value: "someone's own" }]] });
    const host = hostOf(workbook);
    expect(await writePlan(proof)).toBe("Proof Box 1 2");
    const next = hostOf(Workbook.open(host.save()));
    expect(await writePlan(proof)).toBe("Proof Box 1 2");
    const saved = Workbook.open(next.save());
    expect(saved.sheet("Proof Box 1 2")?.charts).toHaveLength(1);
    expect(saved.sheet("Proof Box 1")?.cell(0, 0)?.value).toBe("someone's own");
    expect(saved.partNames().filter((name) => name.includes("charts/chart"))).toHaveLength(1);
  });
});
