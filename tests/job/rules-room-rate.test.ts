import { describe, expect, it } from "vitest";
import { findEdition } from "../../src/editions";
import { type RoomFacts, roomRate } from "../../src/job";
import { NoneAsked } from "../../src/rules";

const edition = findEdition("62.2-2016");

describe("the rate of a room", () => {
  it("comes with its source and how it came about", () => {
    const { rate, source, working } = roomRate(edition, "bathroom", "on demand", "ip");
    expect(rate).toBe(50);
    expect(source).toMatchObject({ work: "ASHRAE 62.2-2016", clause: "table 5.1" });
    expect(working).toBe(
      "50 cfm, bathroom, on demand; a delivered flow: what is measured at the grille",
    );
  });

  it("is air changes of the room's volume where the edition asks for those", () => {
    const closed = (volume: number): RoomFacts => ({ volume, enclosed: true });
    // 5 an hour of 960 ft³: 4800 ft³/h, 80 ft³/min. 5 an hour of 27 m³: 135 m³/h, 37.5 L/s.
    expect(roomRate(edition, "kitchen", "continuous", "ip", closed(960))).toMatchObject({
      rate: 80,
      working: expect.stringMatching(/^5 air changes an hour of 960 ft³; a delivered flow/),
    });
    expect(roomRate(edition, "kitchen", "continuous", "si", closed(27)).rate).toBeCloseTo(37.5, 12);
  });

  it("asks for the volume where it needs one", () => {
    const kitchen = { enclosed: true };
    expect(() => roomRate(edition, "kitchen", "continuous", "ip", kitchen)).toThrow(
      "give the room's volume",
    );
  });

  it("is the smaller of a fixed rate and air changes, in an enclosed kitchen only", () => {
    const kitchen = (volume?: number, enclosed?: boolean) =>
      roomRate(edition, "kitchen", "on demand", "ip", { volume, enclosed });
    expect(kitchen().rate).toBe(300);
    expect(kitchen(960, true).rate).toBe(80);
    expect(kitchen(960, false).rate).toBe(300);
    expect(kitchen(960).rate).toBe(300);
    expect(kitchen(960).working).toContain("may stand instead in an enclosed kitchen");
    expect(kitchen(3600, true).rate).toBe(300);
    expect(kitchen(4000, true).rate).toBe(300);
  });

  it("has none for a continuous fan in an open kitchen", () => {
    const open = { volume: 960, enclosed: false };
    expect(() => roomRate(edition, "kitchen", "continuous", "ip", { volume: 960 })).toThrow(
      'in an enclosed kitchen only: say whether it is enclosed, "yes" or "no"',
    );
    expect(() => roomRate(edition, "kitchen", "continuous", "ip", open)).toThrow(
      "62.2-2016 allows no continuous exhaust in an open kitchen",
    );
  });

  it("asks for the larger of both where a programme wants both", () => {
    const programme = findEdition("ENERGY-STAR-3.1");
    const kitchen = (volume?: number) =>
      roomRate(programme, "kitchen", "on demand", "ip", { volume }).rate;
    expect(kitchen(960)).toBe(100);
    expect(kitchen(1800)).toBe(150);
    expect(() => kitchen()).toThrow("give the room's volume");
  });

  it("asks for most while a condition is not known, and for less once it is", () => {
    const hood = (facts: RoomFacts) =>
      roomRate(findEdition("CA-2022"), "kitchen hood", "on demand", "ip", facts).rate;
    expect(hood({})).toBe(280);
    expect(hood({ cooking: "electric" })).toBe(160);
    expect(hood({ cooking: "electric", floorArea: 900 })).toBe(130);
    expect(hood({ cooking: "fuel", floorArea: 1200 })).toBe(250);
    expect(hood({ floorArea: 2000 })).toBe(180);
  });

  it("says that an edition asks nothing of a room", () => {
    const find = () => roomRate(edition, "toilet", "on demand", "ip");
    expect(find).toThrow(NoneAsked);
    expect(find).toThrow("62.2-2016 asks no exhaust rate of a toilet");
  });

  it("refuses units the edition does not state, and names its own", () => {
    expect(() => roomRate(findEdition("IRC-2021"), "bathroom", "on demand", "si")).toThrow(
      'IRC-2021 states its numbers in cfm only: set units to "ip"',
    );
    expect(() => roomRate(findEdition("ADF-2021"), "bathroom", "on demand", "ip")).toThrow(
      'ADF-2021 states its numbers in L/s only: set units to "si"',
    );
  });
});
