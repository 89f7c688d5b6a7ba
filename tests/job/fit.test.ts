import { describe, expect, it } from "vitest";
import { checkJob, readHeading, readJob } from "../../src/job";
import { grid, jobFile, today } from "./grids";

describe("a heading", () => {
  it.each([
    ["Pressure (Pa)", "pressure", "Pa"],
    ["Rated flow [L/s]", "rated flow", "L/s"],
    ["Nameplate CFM", "nameplate", "cfm"],
    ["Area, sq in", "area", "in²"],
    ["Box dP (in. w.c.)", "box dp", "in w.c."],
    ["Fan #", "fan #", undefined],
    ["Room\n kind", "room kind", undefined],
    ["Pa", "", "Pa"],
    ["Notes (field)", "notes field", undefined],
  ])("%j is taken apart", (text, name, unit) => {
    const heading = readHeading(text);
    expect([heading.name, heading.unit?.name]).toEqual([name, unit]);
  });
});

/** A firm's own sheet: other words, another order, a title above, columns of its own. */
const firm = grid("October readings", [
  ["Harrow Lane", null, null],
  [],
  [
    "Tech",
    "Unit",
    "Location",
    "Rm type",
    "Mode",
    "Weather",
    "Holes open",
    "Hole area, sq cm",
    "dP (hPa)",
    "Measured L/s",
    "Nameplate L/s",
    "Test date",
  ],
  ["AB", "1", "Hall", "bath", "intermittent", "calm", "Ring 2", 154.84, 0.045, 25.7, 30, 46300],
  ["AB", "2", "Hall", "bath", "intermittent", "calm", "Ring 2", 154.84, 0.12, 42, 30, 46300],
  ["Total", null, null, null, null, null, null, null, null, 67.7, null, null],
]);

describe("a firm's own sheet", () => {
  const job = readJob(jobFile(firm));

  it("is fitted by its headings, wherever they stand", () => {
    const [block] = job.firm?.reading.blocks ?? [];
    expect(block?.headings).toEqual([2]);
    expect(
      Object.fromEntries([...(block?.roles ?? [])].map(([role, { heading }]) => [role, heading])),
    ).toMatchObject({
      tester: "Tech",
      dwelling: "Unit",
      room: "Location",
      duty: "Mode",
      area: "Hole area, sq cm",
      pressure: "dP (hPa)",
      flow: "Measured L/s",
      rated: "Nameplate L/s",
      date: "Test date",
    });
  });

  it("is read in the units of its own headings", () => {
    expect(job.settings.system).toBe("si");
    expect(job.fans?.table.number("area", 0)).toBeCloseTo(154.84, 9);
    expect(job.fans?.table.number("pressure", 0)).toBeCloseTo(4.5, 9);
  });

  it("leaves out a row of totals", () => {
    expect(job.fans?.length).toBe(2);
  });

  it("is checked as one of our own is", () => {
    const { findings } = checkJob(jobFile(firm), today);
    expect(findings.map(({ kind, cell }) => `${kind} ${cell}`)).toEqual(["pressure-above I5"]);
  });
});

describe("a user's own fit", () => {
  const sheet = grid("Fans", [
    ["Unit", "Draw", "Speed", "Flow (cfm)"],
    ["Lot 1", 4.5, "high", 50],
  ]);
  const choices = grid("Fit", [
    ["Sheet", "Heading", "Field"],
    ["Fans", "Draw", "Box pressure"],
    ["Fans", "Flow (cfm)", ""],
  ]);

  it("goes before what the headings say", () => {
    const { table } = readJob(jobFile(sheet, choices)).fans ?? {};
    expect(table?.heading("pressure")).toBe("Draw");
    expect(table?.number("pressure", 0)).toBe(4.5);
    expect(table?.has("flow")).toBe(false);
  });
});
