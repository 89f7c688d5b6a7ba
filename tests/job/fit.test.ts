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
  ["AB", "1", "Hall", "bath", "intermittent", "calm", "A", 154.84, 0.045, 25.7, 30, 46300],
  ["AB", "2", "Hall", "bath", "intermittent", "calm", "A", 154.84, 0.12, 42, 30, 46300],
  ["Total", null, null, null, null, null, null, null, null, 67.7, null, null],
]);

describe("a firm's own sheet", () => {
  const job = readJob(jobFile(firm));

  it("is fitted by its headings, wherever they stand", () => {
    const fit = job.fit.sheets.fans?.[0];
    expect(fit?.headerRow).toBe(2);
    expect(
      Object.fromEntries([...(fit?.columns ?? [])].map(([key, { heading }]) => [key, heading])),
    ).toEqual({
      tester: "Tech",
      dwelling: "Unit",
      room: "Location",
      roomKind: "Rm type",
      duty: "Mode",
      openings: "Holes open",
      area: "Hole area, sq cm",
      pressure: "dP (hPa)",
      flow: "Measured L/s",
      rated: "Nameplate L/s",
      date: "Test date",
    });
    expect(fit?.unused).toEqual(["Weather"]);
  });

  it("is read in the job's units, whatever its headings say", () => {
    expect(job.fans?.table.number("area", 0)).toBeCloseTo(24, 3);
    expect(job.fans?.table.number("pressure", 0)).toBeCloseTo(4.5, 9);
    expect(job.fans?.flow[0]).toBeCloseTo(54.47, 1);
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
    const fit = readJob(jobFile(sheet, choices)).fit.sheets.fans?.[0];
    expect(fit?.columns.get("pressure")?.heading).toBe("Draw");
    expect(fit?.columns.has("flow")).toBe(false);
    expect(readJob(jobFile(sheet)).fit.sheets.fans?.[0]?.columns.get("flow")?.heading).toBe(
      "Flow (cfm)",
    );
  });
});
