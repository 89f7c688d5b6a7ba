import { describe, expect, it } from "vitest";
import { readJob } from "../../src/job";
import { fieldsFor, fittedSheets, withChoice } from "../../src/pane/model/fit-view";
import { fanSheet, fileOf, goodFan, gridOf, jobSheet } from "./job-file";

const job = readJob(fileOf(jobSheet, fanSheet(goodFan)));
const fans = () => {
  const [view] = fittedSheets(job);
  if (!view) throw new Error("the Fans sheet was not fitted");
  return view;
};
const row = (heading: string, view = fans()) =>
  view.rows.find((entry) => entry.heading === heading);

describe("the fit of headings", () => {
  it("lists headings in the order of the sheet with their field and unit", () => {
    expect(fans().rows[0]).toMatchObject({ cell: "A1", heading: "Dwelling", field: "dwelling" });
    expect(row("Reading 1 (Pa)")).toMatchObject({
      field: "reading1",
      unit: "Pa",
      unitAssumed: false,
    });
  });

  it("shows a heading that stands for nothing as not used", () => {
    const job = readJob(fileOf(fanSheet([...goodFan, 3])));
    const sheet = gridOf("Fans", [
      ["Dwelling", "Fan", "Colour"],
      ["Lot 1", "B1", "white"],
    ]);
    const [view] = fittedSheets(readJob(fileOf(sheet)));
    expect(row("Colour", view)?.field).toBe("");
    expect(fittedSheets(job)[0]?.absent).toContain("Date");
  });

  it("says when the unit is the job's own because the heading names none", () => {
    const sheet = gridOf("Fans", [
      ["Dwelling", "Fan", "Box pressure"],
      ["Lot 1", "B1", 4],
    ]);
    const [view] = fittedSheets(readJob(fileOf(sheet)));
    expect(row("Box pressure", view)).toMatchObject({ unit: "Pa", unitAssumed: true });
  });

  it("keeps one choice a heading and one heading a field, but any number of unused headings", () => {
    let choices = withChoice([], "Fans", "A", "tester");
    choices = withChoice(choices, "Fans", "a", "room");
    expect(choices).toEqual([{ sheet: "Fans", heading: "a", field: "room" }]);
    choices = withChoice(choices, "Fans", "B", "room");
    expect(choices).toEqual([
      { sheet: "Fans", heading: "a", field: "" },
      { sheet: "Fans", heading: "B", field: "room" },
    ]);
    choices = withChoice(withChoice(choices, "Fans", "C", ""), "Fans", "D", "");
    expect(choices).toHaveLength(4);
  });

  it("offers no field that measures something else than the unit in the heading", () => {
    const keys = fieldsFor(fans().layout, "Reading 1 (Pa)").map((field) => field.key);
    expect(keys).toContain("pressure");
    expect(keys).not.toContain("flow");
    expect(keys).not.toContain("area");
    expect(keys).toContain("note");
  });
});
