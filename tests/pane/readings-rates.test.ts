import { describe, expect, it } from "vitest";
import { readJob } from "../../src/job";
import { accountView } from "../../src/pane/model/account-view";
import { roomView } from "../../src/pane/model/rates-view";
import {
  countReadings,
  fanReadings,
  filterReadings,
  spreadWords,
} from "../../src/pane/model/readings-view";
import { rowsAt } from "../../src/pane/model/rows-at";
import { existing, fanAt } from "./demo-jobs";
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
      "out of range",
      "not measured",
      "out of range",
      "rate unknown",
      "short",
    ]);
  });

  it("counts what each filter shows", () => {
    const counts = countReadings(readings);
    expect(counts).toMatchObject({ all: 6, meets: 1, "out of range": 2, short: 1 });
    expect(filterReadings(readings, "out of range").map(({ row }) => row)).toEqual([2, 4]);
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

describe("the readings of a job that judges with a guard", () => {
  it("are judged by the spread of each flow, and filtered by what that came to", () => {
    const readings = fanReadings(existing);
    const at = (tag: string, dwelling = "Flat 3") => readings[fanAt(existing, dwelling, tag)];
    expect(at("B2")?.verdict).toBe("meets");
    expect(at("B1")?.verdict).toBe("short");
    // 92.3 cfm by a timed bag of ±10 % against 100 cfm: neither can be said.
    expect(at("K1")?.verdict).toBe("too close to call");
    const close = filterReadings(readings, "too close to call");
    expect(close).toContain(at("K1"));
    expect(countReadings(readings)["too close to call"]).toBe(close.length);
  });
});

describe("the required rates", () => {
  it("shows a fan's rate with its clause and how far it was traced, then its dwelling's", () => {
    expect(rowsAt(job, "Fans", 1)).toEqual({ fan: 0, dwelling: 0 });
    const room = roomView(job, 0);
    expect(room.outcome).toMatchObject({
      rate: "50 cfm",
      clause: { work: "IRC 2021", mark: "read in the named text" },
    });
    expect(room.measured).toMatch(/^Measured 72.6 cfm: meets, by a capacity rate$/);
    // IRC 2021 table M1505.4.3(1): 1501 to 3000 ft², 2 to 3 bedrooms.
    const home = accountView(job, 0);
    expect(home.required.outcome).toMatchObject({ rate: "60 cfm" });
    expect(home.title).toBe("Dwelling Lot 1");
  });

  it("says why there is no rate where the room kind is unknown", () => {
    const { outcome } = roomView(job, 4);
    expect(outcome).toHaveProperty("problem");
    expect(JSON.stringify(outcome)).toMatch(/boudoir.*bathroom/);
  });

  it("is about nothing at a heading, on another sheet or in a row without a fan", () => {
    const nothing = { fan: undefined, dwelling: undefined };
    expect(rowsAt(job, "Fans", 0)).toEqual(nothing);
    expect(rowsAt(job, "Job", 1)).toEqual(nothing);
    expect(rowsAt(job, "Fans", 40)).toEqual(nothing);
    expect(rowsAt(job, "Dwellings", 1)).toEqual({ fan: undefined, dwelling: 0 });
  });

  it("names a room without a fan by its room", () => {
    const none = fanAt(existing, "Flat 2", "none");
    expect(roomView(existing, none)).toMatchObject({
      title: "Flat 2, Kitchen: no fan",
      measured: "",
    });
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
    expect(roomView(remembered, 0).outcome).toMatchObject({
      clause: { mark: "from memory, verify against your copy" },
    });
  });
});
