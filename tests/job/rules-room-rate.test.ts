import { describe, expect, it } from "vitest";
import { findEdition, UnknownNameError } from "../../src/editions";
import { roomRate } from "../../src/job";

const edition = findEdition("62.2-2016");

describe("the rate of a room", () => {
  it("comes with its source and how it came about", () => {
    const { rate, source, working } = roomRate(edition, "bathroom", "on demand", "ip");
    expect(rate).toBe(50);
    expect(source).toMatchObject({ work: "ASHRAE 62.2-2016", clause: "table 5.1" });
    expect(working).toBe("50 cfm, bathroom, on demand");
  });

  it("is air changes of the room's volume where the edition asks for those", () => {
    // 5 an hour of 960 ft³: 4800 ft³/h, 80 ft³/min. 5 an hour of 27 m³: 135 m³/h, 37.5 L/s.
    expect(roomRate(edition, "kitchen", "continuous", "ip", 960)).toMatchObject({
      rate: 80,
      working: "5 air changes an hour of 960 ft³",
    });
    expect(roomRate(edition, "kitchen", "continuous", "si", 27).rate).toBeCloseTo(37.5, 12);
  });

  it("asks for the volume where it needs one", () => {
    expect(() => roomRate(edition, "kitchen", "continuous", "ip")).toThrow(
      "give the room's volume",
    );
  });

  it("is the smaller where a fixed rate stands beside air changes", () => {
    expect(roomRate(edition, "kitchen", "on demand", "ip").rate).toBe(300);
    expect(roomRate(edition, "kitchen", "on demand", "ip", 960).rate).toBe(80);
    expect(roomRate(edition, "kitchen", "on demand", "ip", 3600).rate).toBe(300);
    expect(roomRate(edition, "kitchen", "on demand", "ip", 4000).rate).toBe(300);
  });

  it("refuses a room without a rate and lists those there are", () => {
    const find = () => roomRate(edition, "toilet", "on demand", "ip");
    expect(find).toThrow(UnknownNameError);
    expect(find).toThrow(
      "62.2-2016 sets no rate for a toilet on demand: it has bathroom on demand",
    );
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
