import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { auditFormulas } from "../../src/audit";
import type { CellValue } from "../../src/cells";
import { toJobFile } from "../../src/command";
import { checkJob, codeKinds, provenanceOf } from "../../src/job";
import { addPlan, jobRecord } from "../../src/records";
import { type CellSpec, type Sheet, Workbook } from "../../src/workbook";
import { demo, today } from "../excel/demo";
import { compareJobs } from "./compare";

const check = (workbook: Workbook) => checkJob(toJobFile(workbook), today, auditFormulas);

/** What is told of a workbook. */
function told(workbook: Workbook, kind: string) {
  return check(workbook).findings.filter((finding) => finding.kind === kind);
}

/** All that is told of an altered workbook and was not told before. */
function more(workbook: Workbook, before: Workbook) {
  const key = (one: { kind: string; sheet: string; cell: string }) =>
    `${one.kind} ${one.sheet}!${one.cell}`;
  const known = new Set(check(before).findings.map(key));
  return check(workbook).findings.filter((finding) => !known.has(key(finding)));
}

/** Seconds that never repeat, so that no two readings are alike by chance. */
const spread = (i: number) => 3 + ((i * 37) % 29) / 10;

/** A firm's own sheet: a row a fan, constant × area × √pressure in cells. Invented. */
function firm(flowOf?: (i: number) => number): Workbook {
  const workbook = Workbook.create();
  const head = ["Unit", "Where", "Hole (sq in)", "dP (Pa)", "CFM", "Needs", "OK?", "By"];
  const rows = Array.from({ length: 24 }, (_, i): CellSpec[] => {
    const pressure = flowOf ? (flowOf(i) / (1.07 * 24)) ** 2 : spread(i);
    const flow = 1.07 * 24 * Math.sqrt(pressure);
    const row = i + 2;
    return [
      { value: `U${1 + Math.floor(i / 4)}` },
      { value: ["Bath 1", "Bath 2", "Laundry", "WC"][i % 4] as string },
      { value: 24 },
      { value: pressure },
      { formula: `1.07*C${row}*SQRT(D${row})`, value: flow },
      { value: 50 },
      { formula: `IF(E${row}>=F${row},"pass","fail")`, value: flow >= 50 ? "pass" : "fail" },
      { value: i % 2 ? "RT" : "MV" },
    ];
  });
  workbook.addSheet("Tests", { rows: [head.map((value) => ({ value })), ...rows] });
  return workbook;
}

/** A workbook's only sheet of readings, and the cell of a computed flow and of a typed reading on it. */
const subjects: readonly [
  name: string,
  make: () => Workbook,
  place: { sheet: string; row: number; flow: number; reading: number },
][] = [
  ["of the demo job", demo, { sheet: "Fans", row: 1, flow: 15, reading: 10 }],
  ["of a firm's own sheet", firm, { sheet: "Tests", row: 3, flow: 4, reading: 3 }],
];

function sheetOf(workbook: Workbook, name: string): Sheet {
  const sheet = workbook.sheet(name);
  if (!sheet) throw new Error(`no sheet ${name}`);
  return sheet;
}

/** The rows of a sheet as a new one takes them. */
function copied(sheet: Sheet, change: (value: CellValue, col: number) => CellValue): CellSpec[][] {
  return Array.from({ length: sheet.rowCount }, (_, row) =>
    Array.from({ length: sheet.colCount }, (_, col): CellSpec => {
      const { value = null, formula = null } = sheet.cell(row, col) ?? {};
      return formula === null ? { value: change(value, col) } : { value, formula };
    }),
  );
}

/** The workbook with one cell shown otherwise. */
function dressed(workbook: Workbook, name: string, row: number, col: number, style: object) {
  const cell = sheetOf(workbook, name).cell(row, col);
  const index = workbook.restyle(cell?.style ?? 0, style);
  sheetOf(workbook, name).setStyle(row, col, index);
  return Workbook.open(workbook.save());
}

describe.each(subjects)("An alteration %s that no reader would see", (_, make, place) => {
  const { sheet, row, flow, reading } = place;
  const alone = (workbook: Workbook, kind: string) => {
    const found = more(workbook, make());
    expect(found.map((each) => each.kind)).toEqual([kind]);
    return found[0];
  };

  it.each([
    ['"52"', "52"],
    ['[>1]"52.0";0', "52.0"],
    ['"1"0.0', /^1\d/],
    ["0,", "0"],
  ])("is told where the number format %s paints another number", (numberFormat, shows) => {
    const found = alone(dressed(make(), sheet, row, flow, { numberFormat }), "number-shown-other");
    expect(found?.what.split("shows ")[1]).toMatch(shows);
  });

  it("is told where a number format hides the number", () => {
    const altered = dressed(make(), sheet, row, reading, { numberFormat: ";;;" });
    expect(alone(altered, "number-shown-other")?.what).toContain("shows nothing");
  });

  it.each(['0.0 "cfm at 4 Pa"', "#,##0.00", "0.0;-0.0;;@", '_-* 0.0_-;-* 0.0_-;_-* "-"??_-'])(
    "is none where the number format %s shows the number itself",
    (numberFormat) => {
      expect(more(dressed(make(), sheet, row, flow, { numberFormat }), make())).toEqual([]);
    },
  );

  it("is told where text has the colour of its ground", () => {
    const white = dressed(make(), sheet, row, reading, { color: "FFFFFF", fill: undefined });
    alone(white, "number-unseen");
    const filled = dressed(make(), sheet, row, reading, { color: "DDEEFF", fill: "DDEEFF" });
    alone(filled, "number-unseen");
    const seen = dressed(make(), sheet, row, reading, { color: "FFFFFF", fill: "203040" });
    expect(more(seen, make())).toEqual([]);
  });

  it("is told where readings stand on a sheet that no menu shows", () => {
    const workbook = make();
    workbook.addSheet("Old", { rows: [[{ value: "Pa" }], [{ value: 4 }], [{ value: 5 }]] });
    expect(told(workbook, "sheet-hidden")).toEqual([]);
    const parts = unzipSync(workbook.save());
    const book = strFromU8(parts["xl/workbook.xml"] as Uint8Array);
    parts["xl/workbook.xml"] = strToU8(book.replace('name="Old"', 'name="Old" state="veryHidden"'));
    const found = alone(Workbook.open(zipSync(parts)), "sheet-hidden");
    expect(found?.what).toBe("the sheet Old, with 2 numbers, is hidden so that no menu shows it");
  });

  it("is told once where a second sheet lists the fans again with other readings", () => {
    const workbook = make();
    const own = sheetOf(workbook, sheet);
    workbook.addSheet(`${sheet} (2)`, {
      rows: copied(own, (value, col) =>
        col === reading && typeof value === "number" ? value + 0.5 : value,
      ),
    });
    // The flows of the copy were not worked out again.
    const found = more(workbook, make()).filter(({ kind }) => kind !== "value-stale");
    expect(found.map((each) => `${each.kind} ${each.sheet}`)).toEqual([`fans-again ${sheet} (2)`]);
    const parts = unzipSync(workbook.save());
    const book = strFromU8(parts["xl/workbook.xml"] as Uint8Array);
    const hidden = book.replace(`name="${sheet} (2)"`, `name="${sheet} (2)" state="veryHidden"`);
    parts["xl/workbook.xml"] = strToU8(hidden);
    const [again, ...others] = told(Workbook.open(zipSync(parts)), "fans-again");
    expect(others).toEqual([]);
    expect(again?.what).toMatch(/^\S+ \(2\), hidden so that no menu shows it, lists \d+ fans/);
  });
});

describe("An alteration that no reader would see", () => {
  it("of the window of pressures is told once, with the fans it lets pass", () => {
    const workbook = demo();
    const at = check(workbook).job.fit.settings.get("high");
    if (!at) throw new Error("no setting");
    sheetOf(workbook, at.sheet).setValue(at.row, at.col, 20);
    const [finding, ...others] = told(workbook, "setting-unusual");
    expect(others).toEqual([]);
    expect(finding?.what).toBe("the highest pressure is set to 20 Pa; 8 Pa is usual");
    expect(finding?.effect).toMatch(/^It lets \d+ fans? pass/);
    expect(told(demo(), "setting-unusual")).toEqual([]);
  });

  it.each([
    [
      "interval",
      3650,
      "the time between box checks is set to 3650 days; 365 days is usual",
      /^It lets 1?\d fans pass/,
    ],
    [
      "constant",
      1.2,
      "the flow constant is set to 1.2; 1.07 is usual",
      /^No fan is judged otherwise/,
    ],
    [
      "edition",
      "62.2-2010",
      "the edition is 62.2-2010, 16 years older than the readings; 62.2-2025 had been printed by then",
      /^Under 62\.2-2025 no verdict would turn/,
    ],
    [
      "edition",
      "IRC-2015",
      "the edition is IRC-2015, 11 years older than the readings; IRC-2024 had been printed by then",
      /^Under IRC-2024 no verdict/,
    ],
  ])("of the setting %s to %s is told once, with what it does", (key, value, what, effect) => {
    const workbook = demo();
    const at = check(workbook).job.fit.settings.get(key);
    if (!at) throw new Error("no setting");
    sheetOf(workbook, at.sheet).setValue(at.row, at.col, value);
    const found = told(workbook, "setting-unusual");
    expect(found.map((each) => each.what)).toEqual([what]);
    expect(found[0]?.effect).toMatch(effect);
    const codes = [demo(), workbook].map((each) => provenanceOf(check(each).job).codes);
    expect(codeKinds.filter((kind) => codes[0]?.[kind] !== codes[1]?.[kind])).toEqual(["settings"]);
  });

  it("of an edition is none where the sheet says from when it is in force", () => {
    const workbook = demo();
    const { settings } = check(workbook).job.fit;
    for (const [key, value] of [
      ["edition", "IRC-2015"],
      ["adopted", 43_000],
    ] as const) {
      const at = settings.get(key);
      if (at) sheetOf(workbook, at.sheet).setValue(at.row, at.col, value);
    }
    expect(told(workbook, "setting-unusual")).toEqual([]);
  });

  it.each([
    ["a number format", { numberFormat: '"52"' }],
    ["the colour of the ground", { color: "FFFFFF", fill: undefined }],
  ])("by %s of one cell changes the code of the formulas, whatever row it is in", (_, style) => {
    const altered = dressed(demo(), "Fans", 60, 15, style);
    const codes = [demo(), altered].map((each) => provenanceOf(check(each).job).codes);
    expect(codeKinds.filter((kind) => codes[0]?.[kind] !== codes[1]?.[kind])).toEqual(["formulas"]);
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
  });

  it("that copies them on a firm's own sheet is told too", () => {
    const workbook = firm();
    const tests = sheetOf(workbook, "Tests");
    for (let i = 0; i < 4; i++) {
      const value = tests.cell(1 + i, 3)?.value ?? null;
      tests.setValue(5 + i, 3, value);
      const flow = 1.07 * 24 * Math.sqrt(Number(value));
      tests.setFormula(5 + i, 4, `1.07*C${6 + i}*SQRT(D${6 + i})`, flow);
      tests.setFormula(
        5 + i,
        6,
        `IF(E${6 + i}>=F${6 + i},"pass","fail")`,
        flow >= 50 ? "pass" : "fail",
      );
    }
    expect(more(workbook, firm()).map(({ kind }) => kind)).toEqual(["readings-copied"]);
  });

  it("that gives one tester about 50 cfm everywhere is told once, and flows that differ are not", () => {
    const near = (i: number) => (i % 2 ? 50.2 + ((i * 7) % 11) / 10 : 40 + ((i * 13) % 40));
    const [found, ...others] = told(firm(near), "flows-alike");
    expect(others).toEqual([]);
    expect(found?.what).toMatch(
      /^the flows of all 12 fans that RT measured for 50 lie between 50\.\d and 51\.\d$/,
    );
    expect(told(firm(), "flows-alike")).toEqual([]);
    // One that nearly all have, and one that stands whatever is required.
    const most = (i: number) => (i === 3 || i === 7 ? 71 : near(i));
    expect(told(firm(most), "flows-alike")[0]?.what).toMatch(
      /^the flows of 10 of the 12 fans that RT/,
    );
    const workbook = demo();
    const fans = sheetOf(workbook, "Fans");
    const { job } = check(workbook);
    const own = job.fans;
    if (!own) throw new Error("no fans");
    const tester = own.table.text("tester", 0);
    for (let i = 0; i < own.length; i++) {
      if (own.requiredNumber(i) !== 50 || own.table.text("tester", i) !== tester) continue;
      const [flow, constant] = [50.3 + (i % 7) / 8, Number(own.constant[i])];
      const pressure = (flow / (constant * Number(own.area[i]))) ** 2;
      for (const key of ["reading1", "reading2", "reading3"]) {
        const at = own.table.place(key, i);
        if (at) fans.setValue(at.row, at.col, pressure);
      }
      for (const [key, value] of [
        ["pressure", pressure],
        ["flow", flow],
      ] as const) {
        const at = own.table.place(key, i);
        const formula = at && fans.cell(at.row, at.col)?.formula;
        if (at && formula) fans.setFormula(at.row, at.col, formula, value);
        else if (at) fans.setValue(at.row, at.col, value);
      }
    }
    expect(told(workbook, "flows-alike")).toHaveLength(1);
  });

  it("of the edition shows in the third code and in the comparison, and a record made before says so", () => {
    const workbook = demo();
    const before = check(workbook);
    addPlan(workbook, jobRecord(before));
    expect(told(workbook, "record-old")).toEqual([]);
    const at = before.job.fit.settings.get("edition");
    if (!at) throw new Error("no setting");
    sheetOf(workbook, at.sheet).setValue(at.row, at.col, "62.2-2016");
    const after = check(workbook);
    const [old, now] = [before, after].map(({ job }) => provenanceOf(job).codes);
    expect(codeKinds.filter((kind) => old?.[kind] !== now?.[kind])).toEqual(["settings"]);
    expect(compareJobs(toJobFile(demo()), toJobFile(workbook)).map(({ kind }) => kind)).toContain(
      "edition",
    );
    const [finding, ...others] = told(workbook, "record-old");
    expect(others).toEqual([]);
    expect(finding?.what).toMatch(/was made before the settings of the job were changed$/);
  });
});
