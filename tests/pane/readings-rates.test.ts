import { describe, expect, it } from "vitest";
import { readJob } from "../../src/job";
import { ratesAt } from "../../src/pane/model/rates-view";
import {
  countReadings,
  fanReadings,
  filterReadings,
  spreadWords,
} from "../../src/pane/model/readings-view";
import { boxSheet, dwellingSheet, fanSheet, fileOf, goodFan, jobSheet } from "./job-file";

const fan = (changes: Record<number, string | number | null>) =>
  goodFan.map((cell, col) => (col in changes ? (changes[col] ?? null) : cell));

const job = readJob(
  fileOf(
    jobSheet,
    dwellingSheet,
    boxSheet,
    fanSheet(
      goodFan,
      fan({ 1: "B2", 7: 0.4, 8: 0.4 }),
      fan({ 1: "B3", 7: null, 8: null }),
      fan({ 1: "B4", 7: -4, 8: -4 }),
      fan({ 1: "B5", 2: "boudoir" }),
      fan({ 1: "B6", 2: "kitchen hood", 6: 12, 7: 3, 8: 5 }),
    ),
  ),
);

describe("the readings", () => {
  const readings = fanReadings(job);

  it("judges each fan, and one without a rate to judge by as that", () => {
    expect(readings.map(({ verdict }) => verdict)).toEqual([
      "meets",
      "retest",
      "not measured",
      "retest",
      "rate unknown",
      "short",
    ]);
  });

  it("counts what each filter shows", () => {
    const counts = countReadings(readings);
    expect(counts).toMatchObject({ all: 6, meets: 1, retest: 2, short: 1 });
    expect(filterReadings(readings, "retest").map(({ row }) => row)).toEqual([2, 4]);
  });

  it("gives the spread as the flows that the lowest and the highest reading would give", () => {
    const last = readings[5];
    // 1.07 · 12 · √3 and √5, by hand.
    expect(last?.spread?.[0]).toBeCloseTo(22.2395, 3);
    expect(last?.spread?.[1]).toBeCloseTo(28.7111, 3);
    expect(last && spreadWords(last)).toBe("±13 %");
  });

  it("points at the cell into which the pressure is typed", () => {
    expect(readings[1]).toMatchObject({ sheet: "Fans", cell: "H3", label: "Lot 1, B2" });
  });
});

describe("the required rates", () => {
  it("shows a fan's rate with its clause and how far it was traced, then its dwelling's", () => {
    const [room, home] = ratesAt(job, "Fans", 1);
    expect(room?.outcome).toMatchObject({
      rate: "50 cfm",
      work: "IRC 2021",
      mark: "read in two independent texts",
    });
    expect(room?.measured).toMatch(/^Measured 72.6 cfm: meets$/);
    // IRC 2021 table M1505.4.3(1): 1501 to 3000 ft², 2 to 3 bedrooms.
    expect(home?.outcome).toMatchObject({ rate: "60 cfm" });
    expect(home?.title).toBe("Dwelling Lot 1");
  });

  it("says why there is no rate where the room kind is unknown", () => {
    const [room] = ratesAt(job, "Fans", 5);
    expect(room?.outcome).toHaveProperty("problem");
    expect(JSON.stringify(room?.outcome)).toMatch(/boudoir.*bathroom/);
  });

  it("shows nothing for a heading, another sheet or a row without a fan", () => {
    expect(ratesAt(job, "Fans", 0)).toEqual([]);
    expect(ratesAt(job, "Job", 1)).toEqual([]);
    expect(ratesAt(job, "Fans", 40)).toEqual([]);
  });

  it("marks a number that was recalled", () => {
    const remembered = readJob(
      fileOf(
        {
          ...jobSheet,
          value: (row, col) =>
            row === 1 && col === 1
              ? "ADF-2021"
              : row === 2 && col === 1
                ? "si"
                : jobSheet.value(row, col),
        },
        fanSheet(goodFan),
      ),
    );
    const [room] = ratesAt(remembered, "Fans", 1);
    expect(room?.outcome).toMatchObject({ mark: "from memory, verify against your copy" });
  });
});
