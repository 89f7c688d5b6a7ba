import { describe, expect, it } from "vitest";
import { checkJob, factsOf, type Grid, type Job, readJob } from "../../src/job";
import { boxes, fanHeadings, grid, jobFile, soundFan, type TestCell, today } from "./grids";

const dwellingAccount = (job: Job, row: number) => factsOf(job).dwellings.at(row);

type Cells = Record<string, TestCell>;

function sheet(name: string, rows: readonly Cells[]): Grid {
  const headings = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  return grid(name, [headings, ...rows.map((row) => headings.map((key) => row[key] ?? null))]);
}

const home: Cells = { Dwelling: "Lot 1", "Floor area (ft²)": 1400, Bedrooms: 2 };

function job(settings: Cells, dwelling: Cells, fans: readonly Cells[], ...more: Grid[]) {
  const own = Object.entries({ Edition: "62.2-2016", Units: "ip", ...settings });
  const first = Object.fromEntries(fanHeadings.map((heading) => [heading, null]));
  return jobFile(
    grid("Job", [["Setting", "Value"], ...own]),
    sheet("Dwellings", [{ ...home, ...dwelling }]),
    boxes,
    sheet(
      "Fans",
      fans.map((fan) => ({ ...first, ...soundFan, ...fan })),
    ),
    ...more,
  );
}

const kinds = (file: ReturnType<typeof job>) =>
  checkJob(file, today).findings.map(({ kind, sheet: at, cell }) => `${kind} ${at}!${cell}`);

const rateOf = (maybe: unknown) => (maybe as { value: { rate: number } }).value.rate;

describe("the account of an existing dwelling", () => {
  // Deficits by ASHRAE 62.2 appendix A, from memory: kitchen 60 cfm without a window, two baths of
  // 25 cfm: 40 + 25 + 25 = 90, a quarter of which is added to the dwelling's rate.
  const weak: Cells = {
    "Box pressure (Pa)": null,
    "Open area (in²)": null,
    Box: null,
    "Openings in use": null,
  };
  const fan = (tag: string, room: string, flow: number): Cells => ({
    ...weak,
    Fan: tag,
    "Room kind": room,
    "Flow (cfm)": flow,
    Instrument: "Typed",
    "Instrument reading 1": flow,
    "Openable window": "no",
    "Deficit (cfm)": null,
  });
  const typed = sheet("Instruments", [
    { Instrument: "Typed", Kind: "direct entry", "Limit in percent": 10, "Calibrated on": 46200 },
  ]);
  const three = [
    fan("K1", "kitchen hood", 60),
    fan("B1", "bathroom", 25),
    fan("B2", "bathroom", 25),
  ];

  it("adds a quarter of the rooms' deficits", () => {
    const account = dwellingAccount(readJob(job({}, {}, three, typed)), 0);
    const required = 0.03 * 1400 + 7.5 * 3;
    expect(account.deficits).toEqual({ sum: 90, unsure: false });
    expect(rateOf(account.raised)).toBeCloseTo(required + 22.5, 9);
    expect(rateOf(account.needed)).toBeCloseTo(required + 22.5, 9);
  });

  it("lets an openable window make up for 20 cfm", () => {
    const windows = three.map((each) => ({ ...each, "Openable window": "yes" }));
    const account = dwellingAccount(readJob(job({}, {}, windows, typed)), 0);
    expect(account.deficits?.sum).toBe(20 + 5 + 5);
  });

  it("names what the rate is made up of where the dwelling is short of it", () => {
    const continuous = { ...fan("B3", "bathroom", 30), Duty: "continuous" };
    const { findings } = checkJob(job({}, {}, [...three, continuous], typed), today);
    // 0.03 × 1400 + 7.5 × 3 = 64.5, and a quarter of 90.
    expect(findings.find(({ kind }) => kind === "dwelling-short")?.what).toContain(
      "where 87 cfm are required (64.5 by the edition, 22.5 more for room deficits of 90)",
    );
  });

  it("takes a yes as the worksheet functions take it", () => {
    const sums = ["yes", "Y", "TRUE", "no", ""].map((word) => {
      const file = job({}, {}, [{ ...fan("B1", "bathroom", 25), "Openable window": word }], typed);
      return dwellingAccount(readJob(file), 0).deficits?.sum;
    });
    expect(sums).toEqual([5, 5, 5, 25, 25]);
  });

  it("counts a room without a fan as one that moves nothing", () => {
    const none = {
      ...fan("none", "bathroom", 0),
      Instrument: null,
      "Instrument reading 1": null,
      "Flow (cfm)": null,
    };
    const file = job({}, {}, [none], typed);
    expect(dwellingAccount(readJob(file), 0).deficits).toEqual({ sum: 50, unsure: false });
    expect(kinds(file).filter((kind) => kind.startsWith("pressure"))).toEqual([]);
  });

  it("is unsure where a fan was not measured", () => {
    const blank = {
      ...fan("B1", "bathroom", 25),
      "Instrument reading 1": null,
      "Flow (cfm)": null,
    };
    expect(dwellingAccount(readJob(job({}, {}, [blank], typed)), 0).deficits?.unsure).toBe(true);
  });

  it("takes the infiltration credit of the edition, with its weather factor", () => {
    // 1800 ft², 1500 cfm at 50 Pa, 16 ft, factor 0.60: 61.475 cfm by the leakage form of 62.2
    // (recomputed from the published formula).
    const leaky = {
      "Floor area (ft²)": 1800,
      Bedrooms: 3,
      "Leakage at 50 Pa (cfm)": 1500,
      "Envelope height (ft)": 16,
    };
    const settings = { "Weather and shielding factor": 0.6, Work: "existing" };
    const account = dwellingAccount(readJob(job(settings, leaky, [{}])), 0);
    expect(rateOf(account.infiltration)).toBeCloseTo(61.475, 2);
    expect(rateOf(account.needed)).toBeCloseTo(84 - 61.475, 2);
  });

  it("says what is missing for the credit", () => {
    const leaky = { "Leakage at 50 Pa (cfm)": 1500, "Envelope height (ft)": 16 };
    const account = dwellingAccount(readJob(job({}, leaky, [{}])), 0);
    expect(String((account.needed as { problem: Error }).problem.message)).toMatch(/weather/);
  });
});

describe("the equipment of a fan", () => {
  const power = {
    "Fan kind": "bath or utility",
    Watts: 25,
    "Rated flow (cfm)": 50,
    "Flow (cfm)": 54.5,
  };

  it("is held against the efficacy of the code that the job names", () => {
    // 50 cfm at 25 W is 2 cfm/W: below 2.8 of IECC 2021, above 1.4 of IECC 2018 (10 CFR 460.204;
    // WAC 51-11R-40351).
    const found = (code: string, duty = "continuous") =>
      kinds(job({ "Equipment rules": code }, {}, [{ ...power, Duty: duty }])).filter((kind) =>
        /efficacy/.test(kind),
      );
    expect(found("IECC-2021")).toHaveLength(1);
    expect(found("IECC-2018")).toEqual([]);
    expect(found("")).toEqual([]);
    // Read in IRC 2021 N1103.6.2: it is asked of whole-house ventilation, not of a room's own fan.
    expect(found("IECC-2021", "on demand")).toEqual([]);
  });

  it("is held against the sound limit of the edition", () => {
    const found = (duty: string, sones: number) =>
      kinds(job({}, {}, [{ Duty: duty, Sones: sones }])).filter((kind) => /sound/.test(kind));
    expect(found("continuous", 1)).toEqual([]);
    expect(found("continuous", 1.1)).toHaveLength(1);
    expect(found("on demand", 3)).toEqual([]);
    expect(found("on demand", 3.2)).toHaveLength(1);
  });

  const duct = {
    "Duct kind": "flex",
    "Duct diameter (in)": 4,
    "Duct length (ft)": 60,
    Elbows: 0,
    "Rated flow (cfm)": 50,
  };
  const unread = { "Box pressure (Pa)": null, "Flow (cfm)": null };

  it("has its duct judged by the table only while no flow is measured", () => {
    const found = (change: Cells) =>
      kinds(job({ "Duct table": "IRC-2021" }, {}, [{ ...duct, ...change }])).filter((kind) =>
        /duct/.test(kind),
      );
    expect(found({})).toEqual([]);
    expect(found(unread)).toHaveLength(1);
    // 56 ft is the most of a 4 in flexible duct at 50 cfm (IRC table M1504.2).
    expect(found({ ...unread, "Duct length (ft)": 56 })).toEqual([]);
    expect(found({ ...unread, "Duct length (ft)": 45, Elbows: 1 })).toHaveLength(1);
  });

  it("is matched against its design both ways where a programme asks for it", () => {
    const found = (design: number, Duty = "continuous") =>
      kinds(
        job({ Programme: "ENERGY-STAR-3.1" }, {}, [{ Duty, "Design flow (cfm)": design }]),
      ).filter((kind) => /design/.test(kind));
    expect(found(54)).toEqual([]);
    expect(found(100)).toHaveLength(1);
    expect(found(30)).toHaveLength(1);
    // A fan on demand may move more than its design.
    expect([found(30, "on demand"), found(100, "on demand").length]).toEqual([[], 1]);
  });

  it("needs makeup air above the threshold, beside an open-flue appliance", () => {
    const hood = { "Room kind": "kitchen hood", "Rated flow (cfm)": 600 };
    const found = (appliance: string) =>
      kinds(job({ "Duct table": "IRC-2021" }, { "Open-flue appliance": appliance }, [hood])).filter(
        (kind) => /makeup/.test(kind),
      );
    expect(found("yes")).toHaveLength(1);
    expect(found("no")).toEqual([]);
  });
});

describe("a schedule of planned fans", () => {
  const plan: Cells = {
    Dwelling: "Lot 1",
    Fan: "B1",
    "For the whole dwelling": "no",
    "Required (cfm)": 50,
    "Rated flow to buy (cfm)": 80,
    "Duct check": "fits",
    "Opening to bring": "B",
    Box: "One",
  };
  const list = sheet("Catalogue", [{ Model: "Stock 80", "Rated flow (cfm)": 80 }]);
  const found = (change: Cells, settings: Cells = {}) =>
    kinds(job(settings, {}, [{}], sheet("Schedule", [{ ...plan, ...change }]), list)).filter(
      (kind) => kind.startsWith("schedule"),
    );

  it("raises nothing where fan, duct and opening will do", () => {
    expect(found({})).toEqual([]);
  });

  it.each([
    [{ "Required (cfm)": 90 }, "schedule-fan"],
    [{ "Duct check": "too long" }, "schedule-duct"],
    [{ "Duct check": "too narrow" }, "schedule-duct"],
    [{ "Opening to bring": "none: 12 Pa with C" }, "schedule-opening"],
  ])("%j gives %s", (change, kind) => {
    expect(found(change)).toEqual([expect.stringContaining(kind)]);
  });

  it("counts the margin when buying", () => {
    expect(found({ "Required (cfm)": 75 })).toEqual([]);
    expect(found({ "Required (cfm)": 75 }, { "Margin when buying (%)": 10 })).toHaveLength(1);
  });
});
