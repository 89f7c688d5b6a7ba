import { describe, expect, it } from "vitest";
import { boxProofs, checkJob, factsOf, type Grid, readJob } from "../../src/job";
import {
  boxes,
  dwellings,
  fanHeadings,
  grid,
  jobFile,
  soundFan,
  type TestCell,
  today,
} from "./grids";

type Cells = Record<string, TestCell>;

/** A job whose fan rows may have further columns, with further sheets. */
function job(fans: readonly Cells[], settings: Cells = {}, ...more: Grid[]) {
  const headings = [...new Set([...fanHeadings, ...fans.flatMap((row) => Object.keys(row))])];
  const rows = fans.map((change) => {
    const cells: Cells = { ...soundFan, ...change };
    return headings.map((heading) => cells[heading] ?? null);
  });
  const own = Object.entries({ Edition: "IRC-2021", Units: "ip", ...settings });
  return jobFile(
    grid("Job", [["Setting", "Value"], ...own]),
    dwellings,
    boxes,
    grid("Fans", [headings, ...rows]),
    ...more,
  );
}

const kinds = (file: ReturnType<typeof job>) =>
  checkJob(file, today).findings.map(({ kind, sheet, cell }) => `${kind} ${sheet}!${cell}`);

const instruments = grid("Instruments", [
  [
    "Instrument",
    "Kind",
    "Constant",
    "Exponent",
    "Lowest reading",
    "Highest reading",
    "Limit in percent",
    "Limit, least",
    "Calibrated on",
  ],
  ["Hood", "powered hood", 1, 1, 10, 300, 3, 2, 46200],
  ["Old hood", "powered hood", 1, 1, 10, 300, 3, 2, 45000],
  ["Loaned hood", "passive hood", 1, 1, 10, 300, null, null, 46200],
]);

/** Paired readings of box One: 24 in² through opening B, the reference off by `percent`. */
function pairs(percent: readonly number[], date: number | null = 46200, reference = "Hood") {
  const pressures = [1.2, 2.2, 3.6, 5.4, 7.4, 1.2, 7.8];
  return grid("Pairs", [
    [
      "Box",
      "Openings in use",
      "Open area (in²)",
      "Box pressure (Pa)",
      "Reference",
      "Reference flow (cfm)",
      "Date",
    ],
    ...percent.map((off, i) => {
      const pressure = pressures[i % pressures.length] as number;
      const flow = 1.07 * 24 * Math.sqrt(pressure) * (1 + off / 100);
      return ["One", "B", 24, pressure, reference, flow, date];
    }),
  ]);
}

describe("the proof of a box", () => {
  it("raises nothing where the box is proved, in time", () => {
    expect(kinds(job([{}], {}, instruments, pairs([1, -1, 0.5, -0.5, 1])))).toEqual([]);
  });

  it("is asked for once, with every cell that names a box of too few pairs", () => {
    const { findings } = checkJob(job([{}, { Fan: "B2" }], {}, instruments, pairs([1, -1])), today);
    expect(findings.map(({ kind, cells }) => [kind, cells.length])).toEqual([
      ["proof-incomplete", 2],
    ]);
  });

  it("is asked for where a box has no pairs at all", () => {
    expect(kinds(job([{}], {}, instruments, pairs([])))).toEqual(["proof-incomplete Fans!F2"]);
    const other = grid("Pairs", [
      ["Box", "Openings in use", "Open area (in²)", "Box pressure (Pa)", "Reference flow (cfm)"],
      ["Two", "A", 24, 4, 51],
    ]);
    expect(kinds(job([{}], {}, instruments, other))).toEqual(["proof-incomplete Fans!F2"]);
  });

  it("fails where the errors go beyond the requirement of the job", () => {
    const off = [25, 14, 25, 14, 25];
    expect(kinds(job([{}], {}, instruments, pairs(off)))).toEqual(["proof-failed Fans!F2"]);
    expect(kinds(job([{}], { "Proof requirement (%)": 40 }, instruments, pairs(off)))).toEqual([
      "setting-unusual Job!B4",
      "constant-proved Boxes!G2",
    ]);
  });

  // A box 13 % off in one direction is no bad box: its pairs give its constant, 1.07 · 1.13.
  it("offers the constant of the pairs where that proves the box, and sends nobody to look for leaks", () => {
    const { findings } = checkJob(
      job([{}], {}, instruments, pairs([13, 13.4, 12.6, 13.2, 12.8])),
      today,
    );
    expect(findings.map(({ kind, cell }) => [kind, cell])).toEqual([["constant-proved", "G2"]]);
    expect(findings[0]?.what).toContain("a constant of 1.209");
    expect(findings[0]?.apply?.writes.map(({ cell }) => cell)).toEqual(["G2", "G3", "G4"]);
  });

  it("with too weak a reference asks for a better one, and says nothing against the box", () => {
    const weak = { "Proof requirement (%)": 3 };
    const [found] = checkJob(
      job([{}], weak, instruments, pairs([1, -1, 0.5, -0.5, 1])),
      today,
    ).findings;
    expect(found?.kind).toBe("proof-incomplete");
    expect(found?.mend).toContain("better reference");
  });

  it("expires with the interval of the job", () => {
    const sound = [1, -1, 0.5, -0.5, 1];
    expect(kinds(job([{}], { "Days between box checks": 30 }, instruments, pairs(sound)))).toEqual(
      expect.arrayContaining(["proof-expired Fans!F2"]),
    );
  });

  it("counts for nothing without a date or without the reference's own limit", () => {
    const sound = [1, -1, 0.5, -0.5, 1];
    expect(kinds(job([{}], {}, instruments, pairs(sound, null)))).toEqual([
      "proof-incomplete Fans!F2",
    ]);
    expect(kinds(job([{}], {}, instruments, pairs(sound, 46200, "Loaned hood")))).toEqual([
      "proof-incomplete Fans!F2",
    ]);
  });

  it("takes the reference's spread as a rectangular limit", () => {
    const read = readJob(job([{}], {}, instruments, pairs([1, -1, 0.5, -0.5, 1])));
    const own = boxProofs(read).get("ONE");
    // The larger of 3 % and 2 cfm at the smallest flow, 28.1 cfm: 7.1 %, over √3.
    const smallest = 1.07 * 24 * Math.sqrt(1.2) * 1.01;
    expect(own?.referenceSpread).toBeCloseTo(200 / smallest / Math.sqrt(3), 9);
  });
});

describe("a fan measured with another instrument", () => {
  const byHood: Cells = {
    "Openings in use": null,
    Box: null,
    "Open area (in²)": null,
    "Box pressure (Pa)": null,
    Instrument: "Hood",
    "Instrument reading 1": 58,
    "Instrument reading 2": 60,
    "Flow (cfm)": 59,
  };

  it("has the mean of its readings as its flow", () => {
    const file = job([byHood], {}, instruments);
    expect(readJob(file).fans?.flow[0]).toBe(59);
    expect(kinds(file)).toEqual([]);
  });

  it("has a spread from the limit of its instrument", () => {
    const budget = factsOf(readJob(job([byHood], {}, instruments))).fans?.budget(0);
    // 3 % of 59 is 1.77, less than 2 cfm; scatter 1 over two readings.
    expect(budget?.u).toBeCloseTo(Math.hypot(2 / Math.sqrt(3), Math.SQRT2 / Math.SQRT2), 6);
  });

  it.each([
    ["an instrument that is not listed", { Instrument: "Hoood" }, "instrument-unknown"],
    ["a reading outside the instrument", { "Instrument reading 1": 4 }, "instrument-outside"],
    ["a calibration too old", { Instrument: "Old hood" }, "instrument-overdue"],
    ["an instrument without a limit", { Instrument: "Loaned hood" }, "instrument-limit"],
    [
      "no reading",
      { "Instrument reading 1": null, "Instrument reading 2": null, "Flow (cfm)": null },
      "pressure-blank",
    ],
  ])("with %s is flagged", (_, change, kind) => {
    const found = kinds(job([{ ...byHood, ...change }], {}, instruments));
    expect(found.some((each) => each.startsWith(kind))).toBe(true);
  });
});

describe("guarded judging", () => {
  it("says where neither verdict can be given", () => {
    const close = {
      "Box pressure (Pa)": 3.9,
      "Flow (cfm)": 50.7,
      "Spread (cfm)": 1.47,
      Verdict: "too close to call",
    };
    const own = kinds(job([close], { Judging: "guarded" })).filter((each) =>
      /flow|verdict/.test(each),
    );
    expect(own).toContain("flow-close Fans!J2");
  });

  it("leaves simple judging as it was", () => {
    const close = { "Box pressure (Pa)": 3.9, "Flow (cfm)": 50.7, "Spread (cfm)": 1.47 };
    expect(kinds(job([close])).filter((each) => each.startsWith("flow-"))).toEqual([]);
  });
});

describe("a second opening", () => {
  it("that reads more pressure through more area is flagged", () => {
    const odd = { "Second area (in²)": 48, "Second pressure (Pa)": 5 };
    expect(kinds(job([odd]))).toEqual(["second-reading-odd Fans!P2"]);
  });

  it("shows a fan that the box holds back", () => {
    // 54.5 cfm at 4.5 Pa, 64.5 cfm at 1.57 Pa: near 70 cfm without the box.
    const weak = {
      "Second area (in²)": 48,
      "Second pressure (Pa)": 1.577,
      "Flow without the box (cfm)": 69.8,
    };
    expect(kinds(job([weak]))).toContain("box-holds-back Fans!Q2");
  });
});

describe("registers read with a pressure pan", () => {
  const headings = [
    "Dwelling",
    "Register",
    "House pressure (Pa)",
    "Pan reading 1",
    "Pan reading 2",
  ];
  const registers = (...rows: TestCell[][]) => grid("Registers", [headings, ...rows]);
  const of = (...row: TestCell[]) => kinds(job([{}], {}, registers(["Lot 1", "R1", ...row])));

  it.each([
    [[50, 0.4, 0.5], []],
    [[-50, 0.4, 0.5], []],
    [[50, 2.4, 2.5], ["register-leaks Registers!D2"]],
    [[50, 0.4, 1.2], ["register-repeat Registers!D2"]],
    [[41, 0.4, 0.5], ["register-house Registers!C2"]],
    [[50, null, null], ["register-blank Registers!D2"]],
  ])("%j gives %j", (row, findings) => {
    expect(of(...row)).toEqual(findings);
  });
});

describe("the openings in use", () => {
  it("have their area limits summed however their labels are joined", () => {
    const limited = grid("Boxes", [
      ["Box", "Opening", "Area (in²)", "Area limit (in²)", "Constant", "Checked on"],
      ["One", "A", 12, 0.2, 1.07, 46085],
      ["One", "B", 24, 0.4, 1.07, 46085],
    ]);
    const both = { "Open area (in²)": 36, "Box pressure (Pa)": 2, "Flow (cfm)": 54.5 };
    const spreadOf = (label: string) => {
      const file = job([{ ...both, "Openings in use": label }]);
      const sheets = file.sheets.map((sheet) => (sheet.name === "Boxes" ? limited : sheet));
      const { fans } = factsOf(readJob({ ...file, sheets }));
      return fans?.budget(0)?.lines.find(({ symbol }) => symbol === "A")?.u;
    };
    expect(spreadOf("A+B")).toBeCloseTo(0.6 / Math.sqrt(3), 12);
    expect(spreadOf("A, B")).toBe(spreadOf("A+B"));
    expect(spreadOf("a & b")).toBe(spreadOf("A+B"));
    expect(spreadOf("A+Z")).toBeUndefined();
  });

  it("are found overdue however their labels are joined", () => {
    const late = { Date: 46300 + 365, "Openings in use": "A, B", "Open area (in²)": 36 };
    const overdue = (label: string) =>
      checkJob(job([{ ...late, "Openings in use": label }]), today + 500)
        .findings.filter(({ kind }) => kind === "box-overdue")
        .map(({ cell }) => cell);
    expect(overdue("A+B")).toHaveLength(2);
    expect(overdue("A, B")).toEqual(overdue("A+B"));
  });
});
