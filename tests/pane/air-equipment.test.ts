import { describe, expect, it } from "vitest";
import { readJob } from "../../src/job";
import { fanAirView, standardViews } from "../../src/pane/model/air-view";
import { type EquipmentView, equipmentViews } from "../../src/pane/model/equipment-view";
import { fanAir } from "../../src/pane/model/fan-air";
import { roomView } from "../../src/pane/model/rates-view";
import { existing, fanAt, proving, withSettings } from "./demo-jobs";
import { boxSheet, fanSheet, fileOf, goodFan, jobSheet } from "./job-file";

const hall = fanAt(existing, "Flat 1", "B2");
const measured = existing.fans?.flow[hall] ?? Number.NaN;

describe("the air at a fan", () => {
  it("is thin at 5,400 ft, so that the fan moves more than the box says at 1.2 kg/m³", () => {
    const air = fanAir(existing, hall);
    if ("problem" in air) throw new Error(air.problem);
    // About 0.82 of an atmosphere at 1646 m; 1.2 kg/m³ near 20 °C at sea level (ideal gas).
    expect(air.density).toBeGreaterThan(0.97);
    expect(air.density).toBeLessThan(1);
    // The orifice equation, and conservation of mass.
    expect(air.actual).toBeCloseTo(measured * Math.sqrt(1.2 / air.density), 9);
    expect(air.standard).toBeCloseTo((air.actual * air.density) / 1.2, 9);
  });

  it("shows the three flows side by side and which of them the job judges", () => {
    const view = fanAirView(existing, hall);
    expect(view.flows.map(({ title, judged }) => [title, judged])).toEqual([
      ["Measured", true],
      ["Actual", false],
      ["Standard", false],
    ]);
    expect(view.flows[0]?.flow).toBe(String(Number(measured.toFixed(1))));
    expect(view.density).toMatch(/^0\.98\d kg\/m³$/);
    expect(view.working.at(-1)).toMatch(/^Q₀ = /);
    expect(view.stoodIn).toEqual([]);
    expect(view.note).toBe("");
  });

  it("says by which flow a job judges that corrects, in the air section and beside the rate", () => {
    const job = withSettings(existing, { judgeBy: "actual" });
    const view = fanAirView(job, hall);
    const actual = view.flows.find(({ title }) => title === "Actual");
    expect(actual?.judged).toBe(true);
    expect(view.flows.filter(({ judged }) => judged)).toHaveLength(1);
    expect(roomView(job, hall).measured).toBe(
      `Judged, actual: ${actual?.flow} cfm: meets, by a delivered rate`,
    );
  });

  it("shows the flow without the box where the job judges by that and two openings were read", () => {
    const job = withSettings(existing, { judgeBy: "without box" });
    expect(fanAirView(job, hall).flows.at(-1)).toMatchObject({
      title: "Without box",
      judged: true,
    });
    const bath = fanAirView(job, fanAt(existing, "Flat 1", "B1"));
    expect(bath.flows.map(({ judged }) => judged)).toEqual([true, false, false]);
  });

  it("leaves what another instrument shows in other air to its maker", () => {
    expect(fanAirView(existing, fanAt(existing, "Flat 6", "B2")).note).toMatch(/Hood R2/);
  });

  it("names what stood in, and stays with the measured flow where no temperature is given", () => {
    const unsaid = { elevation: undefined, humidity: undefined };
    const granted = fanAirView(withSettings(existing, unsaid), hall).stoodIn.join("; ");
    expect(granted).toMatch(/50 % humidity/);
    expect(granted).toMatch(/sea level/);
    const none = fanAirView(proving, 0);
    expect(none.problem).toMatch(/temperature/);
    expect(none.flows.map(({ flow }) => flow === "–")).toEqual([false, true, true]);
  });

  it("refuses a temperature that no room has", () => {
    expect(fanAirView(withSettings(existing, { temperature: 680 }), hall).problem).toMatch(
      /from -40 to 140/,
    );
  });

  it("tells what standards say with where each stands, and marks what was recalled", () => {
    expect(new Set(standardViews.map(({ asks }) => asks)).size).toBe(3);
    for (const { clause } of standardViews) expect(clause.work).not.toBe("");
    expect(standardViews.map(({ clause }) => clause.mark)).toContain(
      "from memory, verify against your copy",
    );
  });
});

describe("the equipment of a fan", () => {
  const named = (views: readonly EquipmentView[], title: string) => {
    const view = views.find((each) => each.title === title);
    if (!view) throw new Error(`nothing on ${title}`);
    return view;
  };
  const bath = equipmentViews(existing, fanAt(existing, "Flat 1", "B1"));

  it("holds the fan's own efficacy and sound against what is asked, with clause and mark", () => {
    // 80 cfm over 11 W; IECC 2021 table R403.6.2: 2.8 cfm/W below 90 cfm.
    const whole = equipmentViews(existing, fanAt(existing, "Flat 1", "B2"));
    expect(named(whole, "Efficacy")).toMatchObject({
      own: "7.3 cfm/W",
      outcome: { asked: "2.8 cfm/W or more", verdict: "met", isMet: true },
    });
    // ASHRAE 62.2-2016, 7.2: 3 sones where not continuous.
    expect(named(bath, "Sound")).toMatchObject({
      own: "2.5 sones",
      outcome: {
        asked: "3 sones at most",
        isMet: true,
        clauses: [{ work: "ASHRAE 62.2-2016", mark: "read in two independent texts" }],
      },
    });
    // 80 cfm over 38 W is 2.1.
    const weak = equipmentViews(existing, fanAt(existing, "Flat 4", "B2"));
    expect(named(weak, "Efficacy").outcome).toMatchObject({ verdict: "not met", isMet: false });
  });

  it("lets a measured flow waive the duct table, and shows the table's limit all the same", () => {
    // IRC 2021 table M1504.2, flex, 4 in, 50 cfm: 56 ft, less 15 ft for each of two elbows.
    expect(named(bath, "Duct")).toMatchObject({
      own: "8 ft",
      outcome: { asked: "26 ft at most by the table", verdict: "a measured flow waives it" },
    });
  });

  it("holds the duct of a fan that was not measured against the table", () => {
    const { fans } = existing;
    if (!fans) throw new Error("no fans");
    const i = fanAt(existing, "Flat 1", "B1");
    const flow = Float64Array.from(fans.flow, (each, row) => (row === i ? Number.NaN : each));
    const unmeasured = Object.assign(Object.create(fans) as typeof fans, { flow });
    const duct = named(equipmentViews({ ...existing, fans: unmeasured }, i), "Duct");
    expect(duct.outcome).toMatchObject({ asked: "26 ft at most", verdict: "met" });
  });

  it("asks for makeup air of kitchens alone", () => {
    const kitchen = equipmentViews(existing, fanAt(existing, "Flat 4", "K1"));
    expect(named(kitchen, "Makeup air")).toMatchObject({
      own: "150 cfm",
      outcome: { asked: "not needed", isMet: true },
    });
    expect(bath.map(({ title }) => title)).not.toContain("Makeup air");
  });

  it("says what is missing where a rule does not apply or is not named", () => {
    const housing = withSettings(existing, { equipment: "10-CFR-460" });
    const hood = equipmentViews(housing, fanAt(existing, "Flat 1", "K1"));
    const { outcome } = named(hood, "Efficacy");
    expect("problem" in outcome && outcome.problem).toMatch(/ventilate the whole dwelling/);
    const bare = withSettings(existing, { equipment: "", ducts: "" });
    const views = equipmentViews(bare, fanAt(existing, "Flat 1", "K1"));
    for (const title of ["Efficacy", "Duct", "Makeup air"])
      expect(named(views, title).outcome).toMatchObject({
        problem: expect.stringMatching(/^The Job sheet names no/),
      });
  });

  it("gives both limits of a design match", () => {
    const heading = fanSheet(goodFan);
    const design = 75;
    const grid = {
      ...heading,
      colCount: heading.colCount + 1,
      value: (row: number, col: number) =>
        col === heading.colCount
          ? row === 0
            ? "Design flow (cfm)"
            : design
          : heading.value(row, col),
    };
    const job = withSettings(readJob(fileOf(jobSheet, boxSheet, grid)), {
      programme: "ENERGY-STAR-3.1",
    });
    const view = named(equipmentViews(job, 0), "Design match");
    expect(view.own).toBe("72.6 cfm");
    expect(view.outcome).toMatchObject({ verdict: "matches", isMet: true });
    expect("asked" in view.outcome && view.outcome.asked).toMatch(
      /^[\d.]+ to [\d.]+ cfm, for a design of 75$/,
    );
  });

  it("says nothing of a room without a fan or a sheet without such fields", () => {
    expect(equipmentViews(existing, fanAt(existing, "Flat 2", "none"))).toEqual([]);
    expect(equipmentViews(proving, 0)).toEqual([]);
  });
});
