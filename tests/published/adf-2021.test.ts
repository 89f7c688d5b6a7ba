import { describe, expect, it } from "vitest";
import { cellOf } from "../functions/call";

// Approved Document F, volume 1, 2021 (England): all from memory. Whole numbers: no tolerance.
describe("Approved Document F 2021, L/s (from memory)", () => {
  it.each([
    ["kitchen hood", 30, 13],
    ["kitchen", 60, 13],
    ["utility", 30, 8],
    ["bathroom", 15, 8],
    ["toilet", 6, 6],
  ])("tables 1.1 and 1.2: %s has %d on demand, %d continuous", (room, demand, continuous) => {
    const rate = (duty: string) => cellOf("ROOM_RATE", "ADF-2021", room, duty, null, "si");
    expect(rate("on demand")).toBe(demand);
    expect(rate("continuous")).toBe(continuous);
  });

  it.each([
    [0, 13],
    [1, 19],
    [2, 25],
    [3, 31],
    [4, 37],
    [5, 43],
    [6, 49],
    [8, 61],
  ])("table 1.3: a small dwelling of %d bedrooms has %d", (bedrooms, expected) => {
    expect(cellOf("DWELLING_RATE", "ADF-2021", 30, bedrooms, null, "si")).toBe(expected);
  });

  it("has 0.3 L/s for each m² where that is more", () => {
    expect(cellOf("DWELLING_RATE", "ADF-2021", 150, 3, null, "si") as number).toBeCloseTo(45, 10);
    expect(cellOf("DWELLING_RATE", "ADF-2021", 100, 3, null, "si")).toBe(31);
  });
});

// From memory: the 2010 table, and that room rates did not change between the two.
describe("Approved Document F 2010, L/s (from memory)", () => {
  it.each([
    [1, 13],
    [2, 17],
    [3, 21],
    [4, 25],
    [5, 29],
    [6, 33],
  ])("a small dwelling of %d bedrooms has %d", (bedrooms, expected) => {
    expect(cellOf("DWELLING_RATE", "ADF-2010", 30, bedrooms, null, "si")).toBe(expected);
  });

  it("takes the larger of the two rates, as 2021 does", () => {
    expect(cellOf("DWELLING_RATE", "ADF-2010", 100, 3, null, "si") as number).toBeCloseTo(30, 10);
    expect(cellOf("DWELLING_RATE", "ADF-2010", 60, 3, null, "si")).toBe(21);
  });

  it("rose by about 45 % to 2021, with the same room rates", () => {
    for (const bedrooms of [1, 2, 3, 4, 5]) {
      const rate = (year: number) =>
        cellOf("DWELLING_RATE", `ADF-${year}`, 30, bedrooms, null, "si") as number;
      expect(rate(2021) / rate(2010)).toBeCloseTo(1.47, 1);
    }
    for (const room of ["kitchen hood", "kitchen", "utility", "bathroom", "toilet"])
      for (const duty of ["on demand", "continuous"])
        expect(cellOf("ROOM_RATE", "ADF-2010", room, duty, null, "si")).toBe(
          cellOf("ROOM_RATE", "ADF-2021", room, duty, null, "si"),
        );
  });
});
