import { describe, expect, it } from "vitest";
import { call, cellOf, column, failureOf } from "./call";

const labels = column("A", "B", "C");
const areas = column(4, 12, 24);

describe("what the functions for instruments, pans and estimates give", () => {
  it("DEVICE_FLOW: a reading is a flow where constant is 1 and the exponent is left out", () => {
    expect(call("DEVICE_FLOW", column(51, 0), 1)).toEqual([[51], [0]]);
    expect(cellOf("DEVICE_FLOW", 9, 10, 0.5)).toBe(30);
    expect(cellOf("DEVICE_FLOW", 0, 240, -1)).toMatchObject({ code: "#VALUE!" });
  });

  it("DEVICE_SPREAD: the larger limit over √3, with display and scatter beside it", () => {
    // By hand: 5 cfm outweighs 5 % of 51 (2.55); 5/√3 = 2.88675; 1/√12 = 0.288675;
    // 52, 50, 51 scatter by 1, their mean by 1/√3 = 0.57735 with 2 degrees of freedom.
    const [u, dof, expanded] = call("DEVICE_SPREAD", [[52, 50, 51]], 1, 1, 5, 5, 1)[0] as number[];
    const byHand = Math.sqrt(25 / 3 + 1 / 12 + 1 / 3);
    expect(u).toBeCloseTo(byHand, 12);
    // Welch and Satterthwaite: u⁴ ÷ (0.57735⁴/2).
    expect(dof).toBeCloseTo(byHand ** 4 / (1 / 9 / 2), 6);
    // Student's t at 1378 degrees of freedom is 1.9617 (tables print 1.962 at 1000).
    expect((expanded as number) / (u as number)).toBeCloseTo(1.9617, 4);
  });

  it("DEVICE_SPREAD: a share of a large flow outweighs the floor, and limits go through √reading not at all", () => {
    const wide = call("DEVICE_SPREAD", 300, 1, 1, 5, 5)[0] as unknown[];
    expect(wide[0]).toBeCloseTo(15 / Math.sqrt(3), 12);
    expect(wide[1]).toBe("infinite");
    // The limit is on the flow: the exponent does not halve it; the display it does.
    const byRoot = call("DEVICE_SPREAD", 4, 150, 0.5, 5, 5)[0] as unknown[];
    expect(byRoot[0]).toBeCloseTo(15 / Math.sqrt(3), 12);
    const display = call("DEVICE_SPREAD", 4, 150, 0.5, 0, "", 0.1)[0] as unknown[];
    expect(display[0]).toBeCloseTo(((0.1 / Math.sqrt(12)) * 150) / (2 * 2), 10);
  });

  it("DEVICE_SPREAD: one limit may be blank, not both", () => {
    expect(call("DEVICE_SPREAD", 51, 1, 1, "", 5)).toEqual(call("DEVICE_SPREAD", 51, 1, 1, 0, 5));
    for (const cell of call("DEVICE_SPREAD", 51, 1, 1, "", "").flat())
      expect(cell).toMatchObject({
        code: "#N/A",
        message: "percent and floor are blank: give at least one limit of the device",
      });
  });

  it("PAN_STATUS: by the mean of a row, both limits inside, sign or none", () => {
    const rows = [
      [0.9, 1.1, ""],
      [1, "", ""],
      [1.1, 1, 1],
      [-1.4, -1.5, -1.6],
      [0.5, 1, 0.8],
      [0.4, 1, 0.8],
      ["", "", ""],
    ];
    expect(call("PAN_STATUS", rows).flat()).toEqual([
      "tight",
      "tight",
      "leaks",
      "leaks",
      "tight",
      "repeat",
      "",
    ]);
    expect(call("PAN_STATUS", rows, 2, 1).flat()).toEqual([
      "tight",
      "tight",
      "tight",
      "tight",
      "tight",
      "tight",
      "",
    ]);
    expect(call("PAN_STATUS", rows, "", "")).toEqual(call("PAN_STATUS", rows));
    expect(cellOf("PAN_STATUS", [[0.4, "n/a"]])).toMatchObject({ code: "#VALUE!" });
  });

  it("FAN_SIZE: a rating equal to the rate with its margin will do, despite rounding", () => {
    expect(cellOf("FAN_SIZE", 50, 10, [[110, 55, 80]])).toBe(55);
    expect(cellOf("FAN_SIZE", 50, "", [[50, "", 80]])).toBe(50);
    expect(cellOf("FAN_SIZE", 50.1, null, [[50, 80]])).toBe(80);
    expect(cellOf("FAN_SIZE", 100, 20, [[50, 110]])).toBe("none in the list, largest 110");
    expect(cellOf("FAN_SIZE", 100, 20, [["", null]])).toBe("no rating in the list");
    expect(cellOf("FAN_SIZE", 50, 0, [[110, "80 cfm"]])).toMatchObject({
      message: 'ratings, cell 2: "80 cfm" is text: type it as a number',
    });
  });

  it("EXPECTED_OPENING: the set nearest to 4 Pa, and words where none will do", () => {
    // 51.36 cfm: C at 4 Pa. 77 cfm: B+C at 4.0. 9 cfm: A at 4.4. 500 cfm: none.
    expect(call("EXPECTED_OPENING", column(51.36, 77, 9, 500, ""), labels, areas).flat()).toEqual([
      "C",
      "B+C",
      "A",
      "none in range, nearest A+B+C",
      "",
    ]);
    const litres = (cfm: number) => cfm * 0.4719474432;
    const metric = column(4 * 6.4516, 12 * 6.4516, 24 * 6.4516);
    expect(
      cellOf("EXPECTED_OPENING", litres(77), labels, metric, null, null, null, null, null, "si"),
    ).toBe("B+C");
    expect(cellOf("EXPECTED_OPENING", 50, column(""), column(""))).toBe("no opening in the list");
  });

  it("EXPECTED_OPENING: what it names is in range when it is then read", () => {
    for (const flow of [9, 20, 30, 50, 80, 110]) {
      const label = cellOf("EXPECTED_OPENING", flow, labels, areas);
      const area = cellOf("OPEN_AREA", label, labels, areas);
      expect(cellOf("RANGE_STATUS", cellOf("BOX_PRESSURE", area, flow))).toBe("in range");
    }
  });

  it("SOURCE: work, clause and mark of a room's rate, and of the dwelling's without a room", () => {
    expect(cellOf("SOURCE", "62.2-2016", "bath", "on demand")).toBe(
      "ASHRAE 62.2-2016, table 5.1 (two sources)",
    );
    expect(cellOf("SOURCE", "62.2-2016", "kitchen", "on demand")).toBe(
      "ASHRAE 62.2-2016, table 5.1 (from memory, verify against your copy)",
    );
    expect(cellOf("SOURCE", "62.2-2016", "kitchen hood", "continuous")).toBe(
      "ASHRAE 62.2-2016, table 5.2 (two sources)",
    );
    expect(cellOf("SOURCE", "IRC-2021")).toBe("IRC 2021, M1505.4.3, table M1505.4.3(1) (read)");
    // A row of the Fans sheet that is not filled in yet has no source; the dwelling's is not meant.
    expect(cellOf("SOURCE", "IRC-2021", "", "")).toBe("");
  });

  it("EDITIONS: headings, and a row for each number of the edition asked for", () => {
    const [headings, ...rows] = call("EDITIONS", "adf 2021");
    expect(headings).toEqual([
      "edition",
      "what",
      "value",
      "unit",
      "work",
      "clause",
      "mark",
      "read in",
      "on",
      "note",
    ]);
    expect(rows.every((row) => row.length === 10 && row[0] === "ADF-2021")).toBe(true);
    expect(rows).toContainEqual([
      "ADF-2021",
      "rooms, bathroom, on demand, rate",
      15,
      "L/s",
      "Approved Document F, volume 1, 2021 (England)",
      "table 1.1",
      "from memory",
      "examination questions on Approved Document F",
      "2026-11-27",
      "verify against your copy",
    ]);
  });

  it("EDITIONS: the open end of a table is a word, since a cell holds no endless number", () => {
    const values = call("EDITIONS", "IRC-2021").map((row) => row[2]);
    expect(values).toContain("no end");
    expect(values).not.toContain(Number.POSITIVE_INFINITY);
  });

  it("EDITIONS: all of them, a blank cell, and the constants of every edition", () => {
    const all = call("EDITIONS");
    expect(call("EDITIONS", "")).toEqual(all);
    const fixed = call("EDITIONS", "every edition").slice(1);
    expect(fixed).toContainEqual(
      expect.arrayContaining(["flow constant", 1.07, "cfm/(in²·√Pa)", "read"]),
    );
    for (const row of fixed) expect(all).toContainEqual(row);
    expect(failureOf("EDITIONS", "62.2-1999")).toMatchObject({
      code: "#VALUE!",
      message: expect.stringMatching(/^unknown edition "62.2-1999": use one of 62.2-2010, /),
    });
  });
});
