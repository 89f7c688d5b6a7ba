import { describe, expect, it } from "vitest";
import { checkJob } from "../../src/job";
import { boxes, grid, jobFile, settings, soundFan, type TestCell, today } from "./grids";

type Cells = Readonly<Record<string, TestCell>>;

function found(house: Cells, ...fans: Cells[]): string[] {
  const lot: Cells = { Dwelling: "Lot 1", "Floor area (ft²)": 1400, Bedrooms: 2, ...house };
  const rows = fans.length > 0 ? fans : [{}];
  const headings = [...new Set([soundFan, ...rows].flatMap(Object.keys))];
  const file = jobFile(
    settings,
    grid("Dwellings", [Object.keys(lot), Object.values(lot)]),
    boxes,
    grid("Fans", [
      headings,
      ...rows.map((cells) => {
        const row: Cells = { ...soundFan, ...cells };
        return headings.map((key) => row[key] ?? null);
      }),
    ]),
  );
  return checkJob(file, today).findings.map(({ kind, what }) => `${kind}: ${what}`);
}

describe("the state of the house during the test", () => {
  it.each<[Cells, string]>([
    [{ "Windows and outer doors": "open" }, "windows or outer doors were open"],
    [{ "Other exhaust": "on" }, "other exhaust was on"],
    [{ Wind: "gusty" }, "it was gusty"],
    [{ "Baseline pressure (Pa)": -6 }, "the house stood at −6 Pa at rest"],
    [{ "Other exhaust": "on", Wind: "gusty" }, "other exhaust was on and it was gusty"],
  ])("%o is told once for the dwelling", (house, what) => {
    expect(found(house)).toEqual([`house-state: during the test ${what}`]);
  });

  it("says nothing of a calm house with all shut and off, or where nobody wrote it down", () => {
    const calm = {
      "Windows and outer doors": "shut",
      "Other exhaust": "off",
      Wind: "calm",
      "Baseline pressure (Pa)": 0.6,
    };
    expect(found(calm)).toEqual([]);
    expect(found({ Wind: null, "Other exhaust": null })).toEqual([]);
  });
});

describe("the seat of the box", () => {
  it("is doubted where the seal leaked", () => {
    expect(found({}, { Seal: "leaky" })).toEqual(['box-seat: the seal of the box was "leaky"']);
    expect(found({}, { Seal: "tight" })).toEqual([]);
  });
});

describe("fans on one duct", () => {
  const b2 = { Fan: "B2", "Shared duct with": "B1" };

  it("are read together, on one day", () => {
    expect(found({}, { "Shared duct with": "B2" }, b2)).toEqual([]);
    expect(found({}, {}, { ...b2, Date: 46301 })).toEqual([
      "duct-shared: shares a duct with B1, of which no reading of that day is here",
    ]);
  });
});
