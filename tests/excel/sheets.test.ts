import { strFromU8, unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { isEmptyWorkbook, readWorkbook } from "../../src/excel";
import { addJobSheets, saveFit, writeFindingsSheet, writeOpenings } from "../../src/excel/sheets";
import {
  checkJob,
  type FeatureKey,
  features,
  findingKinds,
  layouts,
  type OpeningPlan,
  plainPlan,
  planOpenings,
  readJob,
  usualConstant,
} from "../../src/job";
import { Workbook } from "../../src/workbook";
import { hostOf } from "../desk-host/desk";
import { today } from "./demo";
import { cellsOf, demoHost, hostError, line, placeOf, refuseFrom, typedAt } from "./hosts";

async function checkDemo() {
  const host = demoHost();
  const { file } = await readWorkbook();
  return { host, ...checkJob(file, today) };
}

function hostWith(sheets: Readonly<Record<string, ReturnType<typeof line>[]>>) {
  const workbook = Workbook.create();
  for (const [name, rows] of Object.entries(sheets)) workbook.addSheet(name, { rows });
  return hostOf(workbook);
}

const names = (host: ReturnType<typeof demoHost>) => host.sheets.map(({ name }) => name);

describe("the sheet of findings", () => {
  it("holds a row for each finding, and leads to its cell", async () => {
    const { host, findings, summary } = await checkDemo();
    expect(await writeFindingsSheet(findings, summary)).toBe("Findings");
    const rows = cellsOf(host, "Findings", `A1:H${findings.length + 2}`);
    expect(rows[0]).toEqual([
      "Sheet",
      "Cell",
      "Severity",
      "Kind",
      "About",
      "What",
      "Effect",
      "Mend",
    ]);
    expect(rows.slice(1, -1)).toEqual(
      findings.map((each) => [
        each.sheet,
        each.cell,
        each.severity,
        findingKinds[each.kind].title,
        each.about || null,
        each.what,
        each.effect,
        each.mend,
      ]),
    );
    expect(rows.at(-1)?.every((cell) => cell === null)).toBe(true);
    const row = findings.findIndex(({ sheet, cell }) => sheet === "Fans" && cell === "K3") + 2;
    expect(typedAt(host, "Findings", `B${row}`)).toBe(`=HYPERLINK("#'Fans'!K3","K3")`);
  });

  it("sums up", async () => {
    const { host, findings, summary } = await checkDemo();
    await writeFindingsSheet(findings, summary);
    expect(cellsOf(host, "Findings", "J1:K8")).toEqual([
      ["Summary", "Number"],
      ["Fans", summary.fans],
      ["Fans with a reading", summary.measured],
      ["Dwellings", summary.dwellings],
      ["Openings", summary.openings],
      ["wrong", summary.bySeverity.wrong],
      ["doubtful", summary.bySeverity.doubtful],
      ["missing", summary.bySeverity.missing],
    ]);
  });

  it("does not disturb the next check", async () => {
    const { findings, summary } = await checkDemo();
    await writeFindingsSheet(findings, summary);
    const { file } = await readWorkbook();
    expect(checkJob(file, today).findings).toEqual(findings);
  });

  it("is renewed, with nothing left of the rows before and a user's notes beside them kept", async () => {
    const { host, findings, summary } = await checkDemo();
    await writeFindingsSheet(findings, summary);
    const note = placeOf("M3");
    host.userEnters("Findings", note.row, note.col, "asked Lot 3");
    expect(await writeFindingsSheet(findings.slice(0, 2), summary)).toBe("Findings");
    expect(names(host).filter((name) => name.startsWith("Findings"))).toEqual(["Findings"]);
    expect(cellsOf(host, "Findings", "A3:A5")).toEqual([[findings[1]?.sheet], [null], [null]]);
    expect(host.value("Findings", note.row, note.col)).toBe("asked Lot 3");
  });

  it("leaves a user's own sheet of that name alone", async () => {
    const { findings, summary } = await checkDemo();
    const host = hostWith({ Findings: [line("My findings")], "Findings 2": [line("More")] });
    expect(await writeFindingsSheet(findings, summary)).toBe("Findings 3");
    expect(await writeFindingsSheet(findings, summary)).toBe("Findings 3");
    expect(names(host)).toEqual(["Findings", "Findings 2", "Findings 3"]);
    expect(host.value("Findings", 0, 0)).toBe("My findings");
  });

  it("never takes a text for a formula", async () => {
    const { findings, summary } = await checkDemo();
    const host = hostWith({ Data: [line(1)] });
    const [first] = findings;
    const texts = ["=1+1", "+A", "-0.3", "@B"];
    await writeFindingsSheet(
      texts.map((text) => ({
        ...(first as (typeof findings)[number]),
        sheet: `It's "1"`,
        cell: "K3",
        about: text,
        what: text,
      })),
      summary,
    );
    expect(cellsOf(host, "Findings", "E2:F5")).toEqual(texts.map((text) => [text, text]));
    expect(host.value("Findings", 1, 0)).toBe(`It's "1"`);
    expect(typedAt(host, "Findings", "B2")).toBe(`=HYPERLINK("#'It''s ""1""'!K3","K3")`);
  });

  it("is written in blocks that Excel takes", async () => {
    const { findings, summary } = await checkDemo();
    const host = hostWith({ Data: [line(1)] });
    const [first] = findings;
    const many = Array.from({ length: 12_000 }, (_, i) => ({
      ...(first as (typeof findings)[number]),
      about: `fan ${i}`,
      what: `finding ${i} `.padEnd(600, "x"),
    }));
    await writeFindingsSheet(many, summary);
    expect(host.value("Findings", 12_000, 4)).toBe("fan 11999");
    expect(String(host.value("Findings", 6_000, 5)).startsWith("finding 5999 ")).toBe(true);
  });

  it("is refused where it is protected", async () => {
    const { findings, summary } = await checkDemo();
    await writeFindingsSheet(findings, summary);
    await protectSheet("Findings");
    const { code } = await hostError(() => writeFindingsSheet([], summary));
    expect(code).toBe("SheetProtected");
  });

  it("is refused where the workbook takes no new sheet", async () => {
    const { host, findings, summary } = await checkDemo();
    await protectStructure();
    const { code, message } = await hostError(() => writeFindingsSheet(findings, summary));
    expect(code).toBe("WorkbookProtected");
    expect(message).toContain("The structure of the workbook is protected");
    expect(names(host)).not.toContain("Findings");
  });
});

describe("the fit kept in the workbook", () => {
  it("is read back by the job, for every field", async () => {
    hostWith({ Data: [line("x")] });
    const fields = layouts.flatMap((layout) => layout.fields.map(({ key }) => key));
    const choices = [...new Set(fields)].map((field) => ({
      sheet: "Data",
      heading: `Heading of ${field}`,
      field,
    }));
    await saveFit([...choices, { sheet: "Data", heading: "=Odd", field: "" }]);
    const { file } = await readWorkbook();
    expect(readJob(file).fit.choices).toEqual([
      ...choices,
      { sheet: "Data", heading: "=Odd", field: "" },
    ]);
  });

  it("takes the place of all that was kept, with words and sheets as a whole", async () => {
    hostWith({ Data: [line("x")] });
    await saveFit([
      { sheet: "Data", heading: "Pa", field: "pressure" },
      { sheet: "Other", heading: "Pa", field: "reading1" },
      { sheet: "Other", heading: "", field: "" },
    ]);
    const answers = [
      { sheet: "Data", heading: "By", field: "tester" },
      { sheet: "", heading: "", field: "duty", word: "switch", means: "on demand" },
    ];
    await saveFit(answers);
    const { file } = await readWorkbook();
    expect(readJob(file).fit.choices).toEqual(answers);
    await saveFit([{ sheet: "Data", heading: "", field: "fans" }]);
    expect(readJob((await readWorkbook()).file).fit.choices).toEqual([
      { sheet: "Data", heading: "", field: "fans" },
    ]);
  });

  it("changes what the demo job is read as", async () => {
    demoHost();
    await saveFit([{ sheet: "Fans", heading: "Note", field: "tester" }]);
    const { file } = await readWorkbook();
    expect(readJob(file).fit.sheets.fans?.[0]?.columns.get("tester")?.heading).toBe("Note");
  });

  it("leaves a user's own sheet of that name alone", async () => {
    const host = hostWith({ Fit: [line("Fit of the doors")] });
    const { code, message } = await hostError(() =>
      saveFit([{ sheet: "Fans", heading: "Note", field: "note" }]),
    );
    expect(code).toBe("ItemAlreadyExists");
    expect(message).toBe(
      "The workbook has a sheet Fit of another kind. Rename it, then save the fit again.",
    );
    expect(host.value("Fit", 0, 0)).toBe("Fit of the doors");
  });

  it("is refused on a protected sheet", async () => {
    hostWith({ Data: [line("x")] });
    await saveFit([{ sheet: "Data", heading: "Pa", field: "pressure" }]);
    await protectSheet("Fit");
    const call = () => saveFit([{ sheet: "Data", heading: "Pa", field: "reading1" }]);
    expect((await hostError(call)).code).toBe("SheetProtected");
  });
});

describe("the sheets of a new job", () => {
  it.each(["ip", "si"] as const)("are read as a job of system %s", async (system) => {
    const host = hostWith({ Data: [line("x")] });
    expect(await addJobSheets({ system, edition: "62.2-2019", name: "A job" })).toEqual([
      "Job",
      "Dwellings",
      "Boxes",
      "Fans",
    ]);
    expect(names(host)).toEqual(["Data", "Job", "Dwellings", "Boxes", "Fans"]);
    const { file } = await readWorkbook();
    const { fit, settings } = readJob(file);
    expect(Object.keys(fit.sheets).sort()).toEqual(["boxes", "dwellings", "fans"]);
    for (const layout of Object.values(plainPlan))
      expect(fit.sheets[layout.kind]?.[0]?.columns.size).toBe(layout.fields.length);
    expect([settings.system, settings.problems]).toEqual([system, []]);
    expect(settings.constant).toBe(usualConstant[system]);
    expect([settings.edition?.id, settings.name]).toEqual(["62.2-2019", "A job"]);
  });

  it("stand whole where their pages are refused, which is told once", async () => {
    const started = async (nth: number) => {
      const host = hostWith({ Data: [line("x")] });
      const calls = refuseFrom(host, nth, 1);
      const told: string[] = [];
      const added = await addJobSheets({ system: "ip" }, (note) => told.push(note));
      return { count: calls.count, told, added };
    };
    const { count, told, added } = await started(Number.POSITIVE_INFINITY);
    expect(told).toEqual([]);
    // The pages are asked for near the end, after all that the sheets need.
    let refused = { told, added };
    for (let nth = count; nth > count / 2 && refused.told.length === 0; nth -= 50)
      refused = await started(nth);
    expect(refused.added).toEqual(added);
    expect(refused.told).toEqual([expect.stringMatching(/^How it prints could not be set up .+:/)]);
  });

  it("work out what is typed in", async () => {
    const host = hostWith({ Data: [line("x")] });
    await addJobSheets({ system: "ip" });
    host.userEntersBlock("Boxes", 1, 0, [["Box 1", "A", "round", "4", "", "1"]]);
    host.userEntersBlock("Fans", 1, 0, [["Lot 1", "B1", "Bath", "bathroom", "on demand"]]);
    host.userEntersBlock("Fans", 1, 7, [["Box 1", "A"]]);
    host.userEntersBlock("Fans", 1, 10, [["4", "4.2", "4.4"]]);
    const area = (Math.PI / 4) * 16;
    expect(host.value("Boxes", 1, 6)).toBeCloseTo(area, 12);
    expect(host.value("Fans", 1, 9)).toBeCloseTo(area, 12);
    expect(host.value("Fans", 1, 13)).toBeCloseTo(4.2, 12);
    expect(typedAt(host, "Fans", "P2")).toBe("=FANROW.FLOW(J2,N2,O2,Job!$B$5)");
    expect(typedAt(host, "Fans", "P61")).toBe("=FANROW.FLOW(J61,N61,O61,Job!$B$5)");
    expect(typedAt(host, "Fans", "P62")).toBe("");
    const { file } = await readWorkbook();
    expect(readJob(file).fans?.length).toBe(1);
  });

  it("have as many rows as are asked for, and lookups that reach rows added below", async () => {
    const host = hostWith({ Data: [line("x")] });
    await addJobSheets({ system: "ip", dwellings: 3, fans: 7 });
    expect(typedAt(host, "Fans", "P8")).toContain("FANROW.FLOW(");
    expect(typedAt(host, "Fans", "P9")).toBe("");
    expect(typedAt(host, "Dwellings", "E4")).not.toBe("");
    expect(typedAt(host, "Dwellings", "E5")).toBe("");
    host.userEntersBlock("Boxes", 40, 0, [["Box 1", "A", "round", "4", "", "1"]]);
    host.userEntersBlock("Boxes", 40, 6, [["12.5"]]);
    host.userEntersBlock("Fans", 1, 7, [["Box 1", "A"]]);
    expect(host.value("Fans", 1, 9)).toBe(12.5);
  });

  it("take the place of the blank sheets of an empty workbook, and begin at the first dwelling", async () => {
    const host = hostWith({ Sheet1: [], Sheet2: [] });
    expect(await isEmptyWorkbook()).toBe(true);
    await addJobSheets({ system: "ip" });
    expect(await isEmptyWorkbook()).toBe(false);
    expect(names(host)).toEqual(["Job", "Dwellings", "Boxes", "Fans"]);
    expect(host.selection).toMatchObject({ sheet: "Dwellings", top: 1, left: 0 });
  });

  it("leave nothing in error while openings have no tolerance of their own", async () => {
    const host = hostWith({ Data: [line("x")] });
    await addJobSheets({ system: "ip", edition: "IRC-2021", features: ["spread"] });
    host.userEntersBlock("Boxes", 1, 0, [["Box 1", "A", "round", "6"]]);
    host.userEntersBlock("Fans", 1, 0, [["Lot 1", "B1", "Bath", "bathroom", "on demand"]]);
    host.userEntersBlock("Fans", 1, 7, [["Box 1", "A"]]);
    host.userEntersBlock("Fans", 1, 11, [["4", "4.2", "4.4"]]);
    const cells = cellsOf(host, "Fans", "A2:Z2")[0] ?? [];
    expect(cells.filter((value) => typeof value === "object" && value !== null)).toEqual([]);
    // Of a 6 in hole ± 1/32 in: π/4 · d² changes by π/2 · d · 1/32 (by definition).
    expect(host.value("Fans", 1, 10)).toBeCloseTo(((Math.PI / 2) * 6) / 32, 2);
  });

  it("are laid out to be printed, with headings and names on each page", async () => {
    const host = hostWith({ Data: [line("x")] });
    await addJobSheets({ system: "ip" });
    const parts = unzipSync(host.bytes());
    const xml = strFromU8(parts["xl/worksheets/sheet5.xml"] as Uint8Array);
    const setup = /<pageSetup[^>]*>/.exec(xml)?.[0];
    expect(setup).toContain('orientation="landscape"');
    expect(setup).toContain('fitToWidth="1"');
    expect(strFromU8(parts["xl/workbook.xml"] as Uint8Array)).toContain(
      "'Fans'!$A:$B,'Fans'!$1:$1",
    );
  });

  it("leave nothing in error with every feature, before anything is typed", async () => {
    const host = hostWith({ Data: [line("x")] });
    const all = Object.keys(features) as FeatureKey[];
    await addJobSheets({
      system: "ip",
      edition: "62.2-2019",
      features: all,
      dwellings: 2,
      fans: 2,
    });
    host.userEntersBlock("Dwellings", 1, 0, [["Lot 1"]]);
    for (const name of names(host).filter((each) => each !== "Data"))
      for (const row of cellsOf(host, name, "A1:BZ4"))
        expect([name, ...row.filter((each) => typeof each === "object" && each)]).toEqual([name]);
  });

  it("offer lists of entries", async () => {
    const host = hostWith({ Data: [line("x")] });
    await addJobSheets({ system: "ip" });
    expect(host.validationAt("Fans", 5, 4)?.list.source).toBe("on demand,continuous");
    expect(host.validationAt("Boxes", 1, 2)?.list.source).toBe("round,rectangular");
    expect(host.validationAt("Fans", 5, 0)).toBeNull();
  });

  it("leave a sheet that is there as it is, and look into none that is laid out otherwise", async () => {
    const host = hostWith({ boxes: [line("Crates"), line(12)] });
    expect(await addJobSheets({ system: "ip" })).toEqual(["Job", "Dwellings", "Fans"]);
    expect(names(host)).toEqual(["boxes", "Job", "Dwellings", "Fans"]);
    expect(cellsOf(host, "boxes", "A1:B2")).toEqual([
      ["Crates", null],
      [12, null],
    ]);
    expect(typedAt(host, "Fans", "J2")).toBe("");
    expect(typedAt(host, "Fans", "N2")).toBe('=IF(COUNT(K2:M2)=0,"",AVERAGE(K2:M2))');
  });

  it("look into those of ours that are there", async () => {
    const host = hostWith({ Data: [line("x")] });
    await addJobSheets({ system: "ip" });
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Dwellings").delete();
      await context.sync();
    });
    expect(await addJobSheets({ system: "ip" })).toEqual(["Dwellings"]);
    expect(typedAt(host, "Dwellings", "F2")).toContain("SUMIFS(Fans!");
  });

  it("are refused where every name is taken, or the workbook takes no new sheet", async () => {
    demoHost();
    const { message } = await hostError(() => addJobSheets({ system: "ip" }));
    expect(message).toBe(
      "The workbook has sheets named Job, Dwellings, Boxes, Fans already: nothing was added.",
    );
    const host = hostWith({ Data: [line("x")] });
    await protectStructure();
    expect((await hostError(() => addJobSheets({ system: "ip" }))).code).toBe("WorkbookProtected");
    expect(names(host)).toEqual(["Data"]);
  });
});

describe("planned openings", () => {
  const plan: readonly OpeningPlan[] = planOpenings(20, 150, usualConstant.ip).openings;

  it("are appended below the last opening, with the sheet's own formulas", async () => {
    const host = demoHost();
    await writeOpenings({ box: "Box 9", openings: plan, constant: 1.09 });
    const { file } = await readWorkbook();
    const { boxes } = readJob(file);
    expect(boxes?.openings("Box 9")?.map(({ label }) => label)).toEqual(
      plan.map(({ label }) => label),
    );
    boxes?.openings("Box 9")?.forEach(({ area }, i) => {
      expect(area).toBeCloseTo(plan[i]?.area as number, 10);
    });
    expect(boxes?.constant("Box 9")).toBe(1.09);
    expect(typedAt(host, "Boxes", "G19")).toBe(
      typedAt(host, "Boxes", "G18").replaceAll("18", "19"),
    );
    expect(host.value("Boxes", 18, 11)).toBeCloseTo(
      (plan[0]?.reach.highest as number) * (1.09 / 1.07),
      6,
    );
  });

  it("fill the rows that a new job has ready", async () => {
    const host = hostWith({ Data: [line("x")] });
    await addJobSheets({ system: "ip" });
    await writeOpenings({ box: "Box 1", openings: plan });
    expect(cellsOf(host, "Boxes", "A2:C2")).toEqual([["Box 1", "A", "round"]]);
    expect(typedAt(host, "Boxes", "G2")).toContain("FANROW.ROUND_AREA");
    expect(host.value("Boxes", 1, 6)).toBeCloseTo(plan[0]?.area as number, 10);
  });

  it("carry formulas on where more rows are needed than are ready", async () => {
    const host = hostWith({ Data: [line("x")] });
    await addJobSheets({ system: "ip" });
    const [first] = plan;
    const many = Array.from({ length: 14 }, (_, i) => ({
      ...(first as OpeningPlan),
      label: String.fromCharCode(65 + i),
    }));
    await writeOpenings({ box: "Box 1", openings: many.slice(0, 11) });
    await writeOpenings({ box: "Box 2", openings: many.slice(11) });
    expect(typedAt(host, "Boxes", "G14")).toContain("FANROW.ROUND_AREA(D14)");
    expect(typedAt(host, "Boxes", "G15")).toContain("FANROW.ROUND_AREA(D15)");
    for (const row of [1, 11, 12, 14])
      expect(host.value("Boxes", row, 6)).toBeCloseTo(first?.area as number, 10);
  });

  it("get values in the sheet's own units where it has no formulas", async () => {
    const host = hostWith({
      Openings: [
        line("Box", "Label", "Dia (mm)", "Area (cm²)"),
        line("Old", "A", 100, 78.5),
        line(null, null, null, null, "kept in the van"),
      ],
    });
    await writeOpenings({ box: "New", openings: plan.slice(0, 1) });
    const [first] = plan;
    expect(cellsOf(host, "Openings", "A3:B4")).toEqual([
      [null, null],
      ["New", "A"],
    ]);
    expect(host.value("Openings", 3, 2)).toBeCloseTo((first?.size as number) * 25.4, 9);
    expect(host.value("Openings", 3, 3)).toBeCloseTo((first?.area as number) * 2.54 ** 2, 9);
    expect(host.value("Openings", 2, 4)).toBe("kept in the van");
  });

  it("go to a new sheet where there is none for boxes", async () => {
    const host = hostWith({ Boxes: [line("Crates")] });
    await writeOpenings({ box: "Box 1", openings: plan });
    expect(names(host)).toEqual(["Boxes", "Boxes 2"]);
    expect(host.value("Boxes", 0, 0)).toBe("Crates");
    const { file } = await readWorkbook();
    const { boxes } = readJob(file);
    expect(boxes?.openings("Box 1")?.length).toBe(plan.length);
    // Without a Job sheet the reach has no window to look up: its values are written.
    expect(host.value("Boxes 2", 1, 10)).toBeCloseTo(plan[0]?.reach.lowest as number, 10);
  });

  it("are refused where the box has an opening of that name", async () => {
    demoHost();
    const { code, message } = await hostError(() =>
      writeOpenings({ box: "Box 1", openings: plan }),
    );
    expect(code).toBe("ItemAlreadyExists");
    expect(message).toMatch(/^Box 1 has an opening A, .* on Boxes already\./);
  });

  it("are refused on a protected sheet", async () => {
    const host = demoHost();
    await protectSheet("Boxes");
    expect((await hostError(() => writeOpenings({ box: "Box 9", openings: plan }))).code).toBe(
      "SheetProtected",
    );
    expect(host.value("Boxes", 18, 0)).toBeNull();
  });
});

async function protectSheet(name: string): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem(name).protection.protect();
    await context.sync();
  });
}

async function protectStructure(): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.protection.protect();
    await context.sync();
  });
}
