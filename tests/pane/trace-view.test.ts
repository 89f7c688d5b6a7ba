import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { toJobFile } from "../../src/command";
import { type Job, readJob } from "../../src/job";
import { type NoTrace, type TraceView, traceView } from "../../src/pane/model/trace-view";
import { spotAt } from "../../src/pane/model/trace-walk";
import { Workbook } from "../../src/workbook";
import { fileOf, gridOf } from "./job-file";

/** A job as the pane reads it: values and formulas, and nothing is evaluated by the host. */
function jobIn(name: string): Job {
  const path = join(import.meta.dirname, "../../workbooks", name);
  const { sheets, dateOffset = 0 } = toJobFile(Workbook.open(readFileSync(path)));
  return readJob({ sheets, dateOffset });
}

const alder = jobIn("alder-terrace.xlsx");
const mill = jobIn("mill-lane.xlsx");

const spot = (place: string) => {
  const [sheet = "", cell = ""] = place.split("!");
  const found = spotAt(sheet, cell);
  if (!found) throw new Error(`${place} names no cell`);
  return found;
};

function viewed(job: Job, place: string, now?: Parameters<typeof traceView>[2]): TraceView {
  const view = traceView(job, spot(place), now);
  if ("nothing" in view) throw new Error(view.nothing);
  return view;
}

const nothing = (job: Job, place: string) => (traceView(job, spot(place)) as NoTrace).nothing;

/** The one call of a cell that counts. */
function callOf(job: Job, place: string) {
  const [call, ...more] = viewed(job, place).calls.filter(({ unused }) => unused === "");
  if (!call || more.length > 0) throw new Error(`${place} has not one call`);
  return call;
}

/** The place behind an argument of the call of a cell. */
function behind(job: Job, place: string, argument: string): string {
  const found = callOf(job, place).arguments.find(({ name }) => name === argument);
  if (!found?.from) throw new Error(`${argument} of ${place} came from no cell`);
  return found.from.name;
}

describe("the trace of a flow in the demo job", () => {
  const view = viewed(alder, "Fans!P2");

  it("says what the cell is, what its row is about, and what it holds with its unit", () => {
    expect(view).toMatchObject({
      heading: "Flow (cfm)",
      about: "Lot 01, B1",
      kind: "ours",
      formula: "=FANROW.FLOW(J2,N2,O2,Job!$B$5)",
    });
    // 1.07 · 42 · √4.7, by hand.
    expect(view.value).toBe("97.4276 cfm");
    expect(view.agreement).toEqual({
      state: "agrees",
      words: "Agrees with a fresh computation.",
    });
  });

  it("shows the formula in symbols, with the numbers of the row, and its result", () => {
    const [sum] = callOf(alder, "Fans!P2").sums;
    expect(sum?.lines).toEqual(["Q = K · A · √ΔP", "= 1.07 · 42 · √4.7", "= 97.4276 cfm"]);
    expect(sum?.legend.map(({ symbol }) => symbol)).toEqual(["K", "A", "ΔP"]);
    expect(sum?.legend[2]?.meaning).toMatch(/pressure.*Pa$/);
  });

  it("leads from each argument to its cell and gives its value with the unit of its heading", () => {
    const told = callOf(alder, "Fans!P2").arguments.map(({ name, from, words, value }) => [
      name,
      from?.name,
      words,
      value,
    ]);
    expect(told).toEqual([
      ["area", "Fans!J2", "Open area (in²)", "42 in²"],
      ["pressure", "Fans!N2", "Box pressure (Pa)", "4.7 Pa"],
      ["constant", "Fans!O2", "Constant", "1.07"],
      ["units", "Job!B5", "Units", "ip"],
    ]);
  });

  it("names the clause and says how far it was traced", () => {
    expect(callOf(alder, "Fans!P2").clauses).toEqual([
      {
        work: expect.stringContaining("orifice equation"),
        clause: expect.stringContaining("ISO 5167-2:2003"),
        mark: "read in two independent texts",
      },
    ]);
    expect(callOf(alder, "Fans!S2").clauses[0]?.mark).toBe("from memory, verify against your copy");
  });

  it("is copied as the lines of the trace", () => {
    expect(view.text).toMatch(/^Fans!P2, Flow \(cfm\): 97\.4276\n {2}=FANROW\.FLOW\(/);
    expect(view.text).toContain("Q = K · A · √ΔP = 1.07 · 42 · √4.7 = 97.4276 cfm");
  });
});

describe("the way back", () => {
  it("leads from a verdict over flow and pressure to the readings as typed", () => {
    const flow = behind(alder, "Fans!S2", "flow");
    const pressure = behind(alder, flow, "pressure");
    const { reads, calls, kind } = viewed(alder, pressure);
    expect([pressure, kind, calls]).toEqual(["Fans!N2", "native", []]);
    const cells = reads.flatMap((read) => read.cells);
    expect(cells.map(({ target, value }) => [target.name, value])).toEqual([
      ["Fans!K2", "4.6 Pa"],
      ["Fans!L2", "4.9 Pa"],
      ["Fans!M2", "4.6 Pa"],
    ]);
    expect(viewed(alder, "Fans!K2")).toMatchObject({ kind: "typed", formula: "", calls: [] });
  });

  it("leads to the openings that were taken from the list, and from a look-up to its cell", () => {
    expect(callOf(alder, "Fans!J2").picked).toEqual([
      expect.objectContaining({ label: "Area (in²)", value: "42 in²" }),
    ]);
    const [pick] = viewed(alder, "Fans!O2").picks;
    expect(pick?.text).toMatch(/^INDEX\(/);
    expect(pick?.cells.map(({ target, value }) => [target.name, value])).toEqual([
      ["Boxes!H6", "1.07"],
    ]);
  });

  it("leads to a long range as a whole, and says how many cells it has", () => {
    const labels = callOf(alder, "Fans!J2").arguments.find(({ name }) => name === "labels");
    expect(labels?.from).toEqual({
      spot: { sheet: "Boxes", row: 1, col: 1 },
      cells: "B2:B18",
      name: "Boxes!B2:B18",
    });
    expect(labels).toMatchObject({ words: "17 cells", value: "", cells: [] });
  });
});

describe("what does not agree or cannot be worked out", () => {
  it("is told in words, with what a fresh computation gives", () => {
    // The planted fault value-stale of the demo job.
    const { agreement, value } = viewed(alder, "Fans!P104");
    expect(agreement?.state).toBe("differs");
    expect(agreement?.words).toMatch(
      /^Does not agree: a fresh computation gives \d+(\.\d+)? cfm\.$/,
    );
    expect(agreement?.words).not.toContain(value);
  });

  it("is told with the message where an argument is an error", () => {
    const view = traceView(readJob(fileOf(broken)), spot("Fans!C1"));
    expect(view).toMatchObject({
      value: "#REF!",
      calls: [{ problem: "pressure holds #REF!", result: "" }],
    });
  });

  const broken = gridOf("Fans", [
    [
      24,
      { formula: "#REF!", value: { error: "#REF!" } },
      { formula: "FANROW.FLOW(A1,B1)", value: { error: "#REF!" } },
    ],
  ]);

  it("is a cell where there is nothing, or a sheet that was not read", () => {
    expect(nothing(alder, "Fans!ZZ900")).toBe("Fans!ZZ900 is blank, and so is all around it.");
    expect(nothing(alder, "Letters!A1")).toBe(
      "The sheet Letters was not there when the workbook was read: check again.",
    );
  });
});

describe("the trace of a job that works out spreads", () => {
  it("gives the spread of a flow with its budget beside the flow", () => {
    const { spread } = viewed(mill, "Fans!AI2");
    expect(spread?.cell).toMatchObject({ label: "Spread (cfm)", target: { name: "Fans!AK2" } });
    expect(spread?.budget?.unit).toBe("cfm");
    const lines = spread?.budget?.lines ?? [];
    expect(lines.map(({ label }) => label)).toContain("manometer limit");
    // The squares add up to the square of the whole (JCGM 100:2008, 5.1.2).
    const sum = lines.reduce((all, { does }) => all + Number(does) ** 2, 0);
    expect(Math.sqrt(sum)).toBeCloseTo(Number.parseFloat(spread?.cell.value ?? ""), 3);
    expect(spread?.budget?.total).toMatch(/^0\.6458 cfm standard; ± 1\.266 cfm at 95 %, k 1\.96$/);
  });

  it("says the budget once, and keeps the words that are not a line of it", () => {
    const { budget, words } = callOf(mill, "Fans!AK2");
    expect(budget?.lines[0]?.off).toBe("K ± 0.0214 cfm/(in²·√Pa)");
    expect(words).toEqual(["the squares of these add up"]);
  });

  it("says of a call in the branch not taken why it does not count", () => {
    const other = viewed(mill, "Fans!AI2").calls.find(({ name }) => name.includes("DEVICE"));
    expect(other).toMatchObject({
      unused: 'the condition S2="" is true',
      inside: "inside IF in IF",
    });
  });

  it("sets the sum of a rule as a formula too", () => {
    const { sums, words, result } = callOf(mill, "Dwellings!N2");
    // 51.9366 − 35.2495 · 0.72, by hand.
    expect(sums.map(({ lines }) => lines)).toEqual([
      [
        "Q = Q_tot − φ · Q_inf · A_ext",
        "= 51.9366 − 1 · 35.2495 · 0.72",
        "= 26.5569 cfm",
        "Q_fan = Q if Q > 0, otherwise 0",
        "= 26.5569 if 26.5569 > 0, otherwise 0",
        "= 26.5569 cfm",
      ],
    ]);
    expect([words, result]).toEqual([[], "26.5569 cfm"]);
  });

  it("says what stands in for an argument left out", () => {
    const reference = callOf(mill, "Fans!AN2").arguments.find(({ name }) => name === "reference");
    expect(reference).toMatchObject({ given: "left out, by default", value: "1.2" });
  });

  it("lists the cells behind an argument that is worked out in place", () => {
    const spread = callOf(mill, "Fans!AU2").arguments.find(({ name }) => name === "spread");
    expect(spread?.words).toBe('IF(Job!$B$15="guarded",AK2,"")');
    expect(spread?.cells.map(({ target }) => target.name)).toEqual(["Job!B15", "Fans!AK2"]);
  });

  it("finds what a row is about on every sheet of the job", () => {
    const about = (place: string) => viewed(mill, place).about;
    expect(about("Boxes!H2")).toBe("Box 7, A");
    expect(about("Dwellings!N2")).toBe("Flat 1");
    expect(about("Registers!H2")).toBe("Flat 1, R1");
    expect(about("Fans!A1")).toBe("");
    expect(about("Job!B5")).toBe("Units");
  });
});

describe("a result that spills", () => {
  const flow = (pressure: number) => 1.07 * 24 * Math.sqrt(pressure);
  const job = readJob(
    fileOf(
      gridOf("Fans", [
        ["Area", "Pressure (Pa)", "Flow (cfm)", "Note"],
        [24, 1, { formula: "FANROW.FLOW(A2:A4,B2:B4)", value: flow(1) }, "a"],
        [24, 4, flow(4), "b"],
        [24, 7, flow(7), "c"],
      ]),
    ),
  );

  it("leads from each cell to the cell of its own row", () => {
    const view = viewed(job, "Fans!C4");
    expect(view.spilledFrom?.target.name).toBe("Fans!C2");
    const [, pressure] = view.calls[0]?.arguments ?? [];
    expect(pressure).toMatchObject({
      from: { name: "Fans!B4" },
      words: "of B2:B4",
      value: "7 Pa",
    });
  });
});

describe("what the cell holds at this moment", () => {
  const flow = (formula: string, value: number) => ({ formula, value, text: value.toFixed(1) });
  const own = "_xldudf_FANROW_FLOW(J2,N2,O2,Job!$B$5)";
  const value = alder.file.sheets.find(({ name }) => name === "Fans")?.value(1, 15) as number;

  it("says nothing where it is what was read, but tells how the sheet shows it", () => {
    const view = viewed(alder, "Fans!P2", flow(own, value));
    expect(view.isChanged).toBe(false);
    expect(view.stored).toBe(`Stored as ${value}, shown as 97.4.`);
  });

  it("stands in place of what was read where it has changed", () => {
    const view = viewed(alder, "Fans!P2", flow("_xldudf_FANROW_FLOW(J2,9,O2,Job!$B$5)", 134.82));
    expect(view).toMatchObject({
      isChanged: true,
      value: "134.82 cfm",
      formula: "=FANROW.FLOW(J2,9,O2,Job!$B$5)",
    });
    // The cells behind it are those of the check: to compare with them would prove nothing.
    expect(view.agreement).toBeUndefined();
    expect(view.text).not.toMatch(/stored value/);
    expect(view.text).toMatch(/changed since the workbook was checked/);
    expect(view.calls[0]?.arguments[1]).toMatchObject({
      given: "in the formula",
      value: "9",
    });
  });

  it("is traced even where the sheet was not in use when it was read", () => {
    const now = { formula: "1+1", value: 2, text: "2" };
    expect(viewed(alder, "Fans!ZZ900", now)).toMatchObject({ isChanged: true, value: "2" });
  });

  it("takes a blank and an empty text for the same", () => {
    const blank = { formula: null, value: "", text: "" };
    expect(traceView(alder, spot("Fans!ZZ900"), blank)).toHaveProperty("nothing");
  });
});
