import { describe, expect, it } from "vitest";
import { auditFormulas } from "../../src/audit";
import { checkJob, type FindingKind } from "../../src/job";
import { type FanCells, grid, jobFile, jobWith, settings, today } from "./grids";

const found = (...fans: FanCells[]) =>
  checkJob(jobWith(...fans), today).findings.map(
    ({ kind, sheet, cell }) => `${kind} ${sheet}!${cell}`,
  );

describe("a sound job", () => {
  it("has no findings", () => {
    expect(found({}, { Fan: "B2" })).toEqual([]);
  });

  it("stays sound when a flow is typed as a rounded number", () => {
    // 24 in² at 4.5 Pa gives 54.476 cfm.
    expect(found({ "Flow (cfm)": 55 })).toEqual(["value-differs Fans!J2"]);
    expect(found({ "Flow (cfm)": 54 })).toEqual([]);
    expect(found({ "Flow (cfm)": 54.5 })).toEqual([]);
    expect(found({ "Flow (cfm)": 54.48 })).toEqual([]);
  });
});

describe("one slip in a fan row", () => {
  const cases: [string, FanCells, FindingKind, string][] = [
    ["above the window", { "Box pressure (Pa)": 8.1, "Flow (cfm)": null }, "pressure-above", "I2"],
    ["below the window", { "Box pressure (Pa)": 0.9, "Flow (cfm)": null }, "pressure-below", "I2"],
    ["negative", { "Box pressure (Pa)": -4.5, "Flow (cfm)": null }, "pressure-negative", "I2"],
    ["blank", { "Box pressure (Pa)": null, "Flow (cfm)": null }, "pressure-blank", "I2"],
    ["text", { "Box pressure (Pa)": "4.5 Pa", "Flow (cfm)": null }, "number-as-text", "I2"],
    ["in. w.c.", { "Box pressure (Pa)": 0.018, "Flow (cfm)": null }, "pressure-unit", "I2"],
    ["hPa", { "Box pressure (Pa)": 0.062, "Flow (cfm)": null }, "pressure-unit", "I2"],
    ["box unknown", { Box: "Two" }, "box-unknown", "F2"],
    ["opening unknown", { "Openings in use": "D" }, "opening-unknown", "G2"],
    ["one of two counted", { "Openings in use": "A+B" }, "opening-uncounted", "H2"],
    ["another area", { "Open area (in²)": 26, "Flow (cfm)": 59 }, "area-not-of-openings", "H2"],
    ["cm²", { "Open area (in²)": 154.8, "Flow (cfm)": null }, "area-unit", "H2"],
    ["a size", { "Open area (in²)": 4, "Flow (cfm)": null }, "area-is-size", "H2"],
    ["flow is the rating", { "Flow (cfm)": 80 }, "flow-is-rating", "J2"],
    ["flow of another row", { "Flow (cfm)": 61.2 }, "value-differs", "J2"],
    ["rating mistyped", { "Rated flow (cfm)": 800 }, "flow-unlike-rating", "J2"],
    ["short", { "Box pressure (Pa)": 3.5, "Flow (cfm)": 48 }, "flow-short", "J2"],
    ["required mistyped", { "Required (cfm)": 20 }, "value-differs", "K2"],
    ["dwelling unknown", { Dwelling: "Lot 9" }, "dwelling-unknown", "A2"],
    ["dwelling blank", { Dwelling: null }, "dwelling-unknown", "A2"],
    ["room unknown", { "Room kind": "attic" }, "room-unknown", "C2"],
    ["room blank", { "Room kind": null }, "room-missing", "C2"],
    ["duty unknown", { Duty: "sometimes" }, "duty-unknown", "D2"],
    ["duty blank", { Duty: null }, "duty-missing", "D2"],
    ["no rate required", { "Room kind": "utility" }, "rate-none", "C2"],
    ["no tester", { Tester: null }, "tester-missing", "L2"],
    ["no date", { Date: null }, "date-missing", "M2"],
    ["date as text", { Date: "14 Oct" }, "date-wrong", "M2"],
    ["date ahead", { Date: today + 30 }, "date-wrong", "M2"],
    ["error", { "Flow (cfm)": { error: "#REF!" } }, "cell-error", "J2"],
  ];

  it.each(cases)("%s is found once, at its cell", (_, change, kind, cell) => {
    const own = found(change).filter((finding) => finding.includes("Fans!"));
    expect(own).toEqual([`${kind} Fans!${cell}`]);
  });

  it.each(cases)("%s does not disturb the rows beside it", (_, change) => {
    const rows = found({ Fan: "X" }, change, { Fan: "Y" }).filter((finding) =>
      /![A-Z]+[24]$/.test(finding),
    );
    expect(rows.filter((finding) => finding.startsWith("Fans"))).toEqual([]);
  });
});

describe("the words of a finding", () => {
  const only = (change: FanCells) => checkJob(jobWith(change), today).findings[0];

  it("names the opening to use next and the pressure to expect", () => {
    const finding = only({
      "Openings in use": "A",
      "Open area (in²)": 12,
      "Box pressure (Pa)": 16,
      "Flow (cfm)": null,
    });
    expect(finding?.mend).toBe("Open B (24 in²), expect about 4 Pa, and read again.");
  });

  it("names the unit that was probably read, by the rating", () => {
    expect(only({ "Box pressure (Pa)": 0.018, "Flow (cfm)": null })?.what).toContain(
      "0.018 in w.c., which is 4.5 Pa",
    );
    expect(only({ "Box pressure (Pa)": 0.062, "Flow (cfm)": null })?.what).toContain(
      "0.062 hPa, which is 6.2 Pa",
    );
  });

  it("asks for no other opening where the box shows nothing at all", () => {
    const finding = only({ "Box pressure (Pa)": 0, "Flow (cfm)": null });
    expect(finding?.kind).toBe("pressure-below");
    expect(finding?.mend).toMatch(/^Look first whether the fan runs, the hose is on/);
    expect(finding?.apply).toBeUndefined();
    const { job } = checkJob(jobWith({ "Box pressure (Pa)": 0, "Flow (cfm)": null }), today);
    expect(job.fans?.flow[0]).toBeNaN();
  });

  it("lists what is known where a name is not", () => {
    expect(only({ "Room kind": "attic" })?.mend).toContain(
      "bathroom, toilet, kitchen hood, kitchen and utility",
    );
    expect(only({ Box: "Two" })?.mend).toContain("One");
  });
});

describe("several rows", () => {
  it("with one reading copied down are found once, at the first copy", () => {
    const rows = ["1", "2", "3", "4"].map((Fan) => ({ Fan }));
    expect(found(...rows)).toEqual(["pressure-repeated Fans!I3"]);
    expect(found(...rows.slice(1))).toEqual([]);
  });

  it("with one tag in one dwelling are found at the second", () => {
    expect(found({}, { "Box pressure (Pa)": 4.6, "Flow (cfm)": 55.1 })).toEqual([
      "fan-repeated Fans!B3",
    ]);
  });

  it("with a typed value among formulas are found at that value", () => {
    const flow = { formula: "FANROW.FLOW(H2,I2)", value: 54.4761 };
    const exact = { formula: "x", value: 1.07 * 24 * Math.sqrt(4.5) };
    const rows = [flow, exact, exact, exact].map((cell, i) => ({
      Fan: String(i),
      "Flow (cfm)": i === 0 ? 54.5 : cell,
      "Box pressure (Pa)": 4.5,
      Note: i,
    }));
    const told = (flow: number) =>
      checkJob(jobWith({ ...rows[0], "Flow (cfm)": flow }, ...rows.slice(1)), today, auditFormulas)
        .findings.filter(({ cell }) => cell === "J2")
        .map(({ kind, effect }) => [kind, effect]);
    expect(told(54.5)).toEqual([
      ["formula-typed-over", "It does not follow when the cells beside it change."],
    ]);
    expect(told(61)).toEqual([["formula-typed-over", "Flow (cfm) is 61 but the row gives 54.5."]]);
  });
});

describe("mends that need no judgement", () => {
  const applied = (change: FanCells) => checkJob(jobWith(change), today).findings[0]?.apply;

  it("turn the sign of a reversed pressure", () => {
    expect(applied({ "Box pressure (Pa)": -4.5, "Flow (cfm)": null })?.writes).toEqual([
      { cell: "I2", value: 4.5 },
    ]);
  });

  it("set a row up for the next opening and keep the old reading in the note", () => {
    const mend = applied({
      "Openings in use": "A",
      "Open area (in²)": 12,
      "Box pressure (Pa)": 16,
      "Flow (cfm)": null,
      Note: "loud",
    });
    expect(mend?.writes).toEqual([
      { cell: "G2", value: "B" },
      { cell: "I2", value: null },
      { cell: "N2", value: "loud; read 16 with A" },
    ]);
  });

  it("take the unit off a number, unless it is another unit", () => {
    expect(applied({ "Box pressure (Pa)": "4.5 Pa", "Flow (cfm)": null })?.writes).toEqual([
      { cell: "I2", value: 4.5 },
    ]);
    expect(applied({ "Box pressure (Pa)": "4.5 hPa", "Flow (cfm)": null })).toBeUndefined();
  });
});

describe("the Job sheet", () => {
  const job = (...rows: [string, string | number | null][]) =>
    checkJob(
      jobFile(grid("Job", [["Setting", "Value"], ...rows]), ...jobWith({}).sheets.slice(1)),
      today,
    );

  it.each([
    ["Edition", "62.2-1999", /unknown edition "62.2-1999": use one of 62.2-2010, .*62.2-2025;/],
    ["Edition", null, /no edition/],
    ["Units", "metric", /unknown units "metric"/],
    ["Lowest pressure (Pa)", "one", /"one" is not a number above 0/],
    ["Highest pressure (Pa)", 0.5, /0.5 Pa is not above 1 Pa/],
  ])("%s %s is a finding at its cell", (label, value, what) => {
    const asked = value === null ? "setting-blank" : "setting-wrong";
    const finding = job([label, value]).findings.find(({ kind }) => kind === asked);
    expect(finding).toMatchObject({ sheet: "Job", cell: "B2" });
    expect(finding?.what).toMatch(what);
  });

  it("tells a barometer brought down to sea level at its own cell", () => {
    const found = job(["Barometer", 29.92], ["Elevation", 5400]).findings;
    expect(found.filter(({ kind }) => kind === "setting-wrong")).toMatchObject([
      {
        ...{ sheet: "Job", cell: "B2" },
        what: "barometer 29.92 inHg at 5400 ft is a pressure brought down to sea level",
        mend: "Type the pressure at the place, about 24.5, or leave the barometer blank.",
      },
    ]);
  });

  it("sets the window", () => {
    const kinds = job(["Edition", "IRC-2021"], ["Highest pressure (Pa)", 4]).findings;
    expect(kinds.map(({ kind }) => kind)).toEqual(["pressure-above"]);
  });
});

describe("the Boxes sheet", () => {
  const heading = [
    "Box",
    "Opening",
    "Shape",
    "Diameter or width (in)",
    "Height (in)",
    "Area (in²)",
    "Constant",
    "Checked on",
  ];
  const withBox = (...rows: (string | number | null)[][]) => {
    const file = jobWith({});
    return checkJob(
      {
        sheets: file.sheets.map((sheet) =>
          sheet.name === "Boxes" ? grid("Boxes", [heading, ...rows]) : sheet,
        ),
      },
      today,
    ).findings.map(({ kind, cell }) => `${kind} ${cell}`);
  };
  const b = ["One", "B", "rectangular", 4, 6, 24, 1.07, 46085];

  it.each<[string, (string | number | null)[], string]>([
    ["an area in cm²", ["One", "C", "round", 5, null, 126.7, 1.07, 46085], "area-unit F3"],
    ["a diameter as the area", ["One", "C", "round", 5, null, 5, 1.07, 46085], "area-is-size F3"],
    ["another area", ["One", "C", "round", 5, null, 21, 1.07, 46085], "area-not-of-sizes F3"],
    ["a label twice", ["One", "b", "rectangular", 4, 6, 24, 1.07, 46085], "opening-repeated B3"],
  ])("%s is found", (_, row, finding) => {
    expect(withBox(b, row)).toEqual([finding]);
  });

  it("a check older than the interval, or none, is found where the opening was used", () => {
    expect(withBox([...b.slice(0, 7), 45900])).toEqual(["box-overdue H2"]);
    expect(withBox([...b.slice(0, 7), null])).toEqual(["box-unchecked H2"]);
    expect(withBox(b, ["One", "C", "rectangular", 4, 6, 24, 1.07, null])).toEqual([]);
  });
});

describe("dwellings", () => {
  const withDwellings = (...rows: (string | number | null)[][]) => {
    const file = jobWith({ Duty: "continuous", "Required (cfm)": 20 });
    const sheet = grid("Dwellings", [["Dwelling", "Floor area (ft²)", "Bedrooms"], ...rows]);
    return checkJob(
      { sheets: file.sheets.map((own) => (own.name === "Dwellings" ? sheet : own)) },
      today,
    ).findings.map(({ kind, cell }) => `${kind} ${cell}`);
  };

  it("are short where their continuous fans move less than the edition asks", () => {
    expect(withDwellings(["Lot 1", 1400, 2])).toEqual([]);
    expect(withDwellings(["Lot 1", 2000, 3])).toEqual(["dwelling-short A2"]);
  });

  it("need a fan, a floor area and bedrooms, and are listed once", () => {
    expect(withDwellings(["Lot 1", 1400, 2], ["Lot 2", 1400, 2])).toEqual(["dwelling-empty A3"]);
    expect(withDwellings(["Lot 1", null, 2])).toEqual(["dwelling-size B2"]);
    expect(withDwellings(["Lot 1", 1400, 2.5])).toEqual(["dwelling-size C2"]);
    expect(withDwellings(["Lot 1", 1400, 2], ["lot 1", 1400, 2])).toEqual(["dwelling-repeated A3"]);
  });
});

describe("a workbook without a job", () => {
  it("is told of in one line, and nothing is judged", () => {
    const { findings, job } = checkJob(
      jobFile(
        settings,
        grid("Sheet1", [
          ["Name", "Phone"],
          ["x", 1],
        ]),
      ),
      today,
    );
    expect(findings).toEqual([]);
    expect(job.noFans).toMatch(/^no readings of exhaust fans/);
  });
});
