import { describe, expect, it } from "vitest";
import { findEdition } from "../../src/editions";
import { readJob, underEdition } from "../../src/job";
import { jobWith } from "./grids";

// 24 in² at 4.5 Pa is 54.5 cfm; IRC 2021 asks 50 of a bathroom, Oregon 80 (read), 62.2 no toilet.
const job = readJob(
  jobWith({}, { Fan: "B2" }, { Fan: "W1", "Room kind": "toilet" }, { Fan: "K1", "Room kind": "" }),
);
const under = (id: string) => underEdition(job, findEdition(id));

describe("a job under another edition", () => {
  it("groups what is alike, and names the fans whose verdict turns", () => {
    const [bath] = under("OR-2023");
    expect(bath).toMatchObject({
      what: "bathroom on demand",
      before: 50,
      after: 80,
      change: "up",
      count: 2,
      turnsShort: ["Lot 1, B1", "Lot 1, B2"],
      turnsMet: [],
      is: "listed",
    });
    expect(bath?.source).toContain("Oregon Residential Specialty Code 2023");
  });

  it("says why there is no rate, and leaves fans without a room kind out", () => {
    const rows = under("62.2-2016");
    expect(rows.find(({ what }) => what.startsWith("toilet"))).toMatchObject({
      change: "unlike",
      after: expect.stringContaining("asks no exhaust rate of a toilet"),
      turnsShort: [],
    });
    expect(rows.filter(({ what }) => what.startsWith("kitchen"))).toEqual([]);
  });

  it("compares whole dwellings: 1,400 ft² and 2 bedrooms are 45 cfm by table, 64.5 by 62.2-2016", () => {
    expect(under("62.2-2016").at(-1)).toMatchObject({
      what: "whole dwelling, Lot 1",
      before: 45,
      after: 64.5,
      change: "up",
      count: 1,
    });
  });

  it("changes nothing under its own edition", () => {
    expect(under("IRC-2021").every(({ change }) => change === "same")).toBe(true);
  });

  it("does not convert between units: an edition in L/s has no rate for a job in cfm", () => {
    expect(under("ADF-2021")[0]?.after).toContain("L/s only");
  });
});
