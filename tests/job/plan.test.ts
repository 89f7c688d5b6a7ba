import { describe, expect, it } from "vitest";
import {
  type FeatureKey,
  features,
  formulasOf,
  jobPlan,
  jobSettings,
  layouts,
  pageOf,
  plainPlan,
  pointsOf,
  settingChoices,
  usualSettings,
  widthOf,
} from "../../src/job";

const all = Object.keys(features) as FeatureKey[];
const total = (points: readonly number[]) => points.reduce((sum, each) => sum + each, 0);
const size = {
  fans: 9,
  boxes: 4,
  dwellings: 5,
  pairs: 6,
  instruments: 2,
  registers: 3,
  schedule: 7,
  catalogue: 4,
};

describe("the plan of a new job", () => {
  it("has only the three sheets and no extra field without a feature", () => {
    expect(Object.keys(plainPlan)).toEqual(["dwellings", "boxes", "fans"]);
    for (const layout of Object.values(plainPlan))
      expect(layout.fields.filter(({ feature }) => feature !== undefined)).toEqual([]);
  });

  it.each(all)("with %s holds every field and sheet that belongs to the feature", (key) => {
    const plan = jobPlan([key]);
    const sheets = layouts.filter(({ features }) => features?.includes(key));
    for (const { kind } of sheets) expect(plan).toHaveProperty(kind);
    const own = layouts.flatMap(({ kind, fields }) =>
      fields.filter(({ feature }) => feature === key).map((field) => [kind, field.key] as const),
    );
    expect(sheets.length + own.length).toBeGreaterThan(0);
    for (const [kind, field] of own) expect(plan[kind]?.fields.map((f) => f.key)).toContain(field);
  });

  it.each([1, 60, 2_000])("is printed with letters of 7 points at least, for %i rows", (rows) => {
    for (const features of [[], ["estimate"], all] as const)
      for (const layout of Object.values(jobPlan(features)))
        for (const [system, paper] of [
          ["ip", [612, 792]],
          ["si", [595, 842]],
        ] as const) {
          const { landscape, pagesWide, margins, titleCols, area } = pageOf(layout, system, rows);
          const room = 72 * (margins.left + margins.right);
          const points = layout.fields.map((field) =>
            field.isAside ? 0 : pointsOf(widthOf(field)),
          );
          const naming = total(points.slice(0, titleCols[1] + 1));
          // The strips side by side hold every column once, and what names a row in each.
          const least = naming + (total(points) - naming) / pagesWide;
          expect((11 * (paper[landscape ? 1 : 0] - room)) / least).toBeGreaterThanOrEqual(7);
          expect(area === undefined).toBe(layout.fields.every(({ isAside }) => !isAside));
        }
  });

  it("has every field of every sheet with all features", () => {
    const whole = jobPlan(all);
    for (const layout of layouts) expect(whole[layout.kind]?.fields).toEqual(layout.fields);
  });

  it("puts an extra field after the one it belongs to", () => {
    const keys = jobPlan(all).fans?.fields.map(({ key }) => key) ?? [];
    expect(keys.indexOf("areaLimit")).toBe(keys.indexOf("area") + 1);
    expect(keys.indexOf("watts")).toBe(keys.indexOf("fanKind") + 1);
    expect(keys.slice(-2)).toEqual(["note", "next"]);
  });

  it("keeps the usual fields in their order, whatever the features", () => {
    const usual = plainPlan.fans?.fields.map(({ key }) => key) ?? [];
    const whole = jobPlan(all).fans?.fields.map(({ key }) => key) ?? [];
    expect(whole.filter((key) => usual.includes(key))).toEqual(usual);
  });

  it.each([...all.map((key) => [key]), all])(
    "with %s has a formula for computed fields",
    (...keys) => {
      const plan = jobPlan(keys);
      for (const layout of Object.values(plan)) {
        const formulas = formulasOf(layout.kind, 1, size, plan);
        const computed = layout.fields.filter((field) => field.is).map(({ key }) => key);
        expect(Object.keys(formulas).sort()).toEqual(computed.sort());
        for (const formula of Object.values(formulas)) expect(formula).not.toMatch(/undefined|NaN/);
      }
    },
  );
});

describe("the fields of the sheets", () => {
  it("have titles that stand for one field each, so that a saved fit is read back", () => {
    const keys = new Map<string, string>();
    for (const { key, title } of layouts.flatMap(({ fields }) => fields)) {
      expect(keys.get(title) ?? key).toBe(key);
      keys.set(title, key);
    }
  });

  it("name a row by fields that the sheet has", () => {
    for (const { fields, names } of layouts)
      expect(fields.map(({ key }) => key)).toEqual(expect.arrayContaining([...names]));
  });
});

describe("the settings of a new job", () => {
  it("are usual for settings that exist, and within their choices", () => {
    const keys = jobSettings.map(({ key }) => key);
    for (const [key, value] of Object.entries(usualSettings("si"))) {
      expect(keys).toContain(key);
      const choices = settingChoices[key];
      if (choices) expect(choices).toContain(value);
    }
  });
});
