import { describe, expect, it } from "vitest";
import { call, cellOf, column } from "./call";

const close = (expected: number) => expect.closeTo(expected, 9);
const labels = column("A", "B", "C");
const areas = column(4, 12, 24);

// Worked by hand with the formulas of the comments beside each function.
describe("what the worksheet functions give", () => {
  it("ROUND_AREA: π/4 of the diameter squared", () => {
    expect(call("ROUND_AREA", column(2, 4))).toEqual([[close(Math.PI)], [close(4 * Math.PI)]]);
  });

  it("RECT_AREA: width times height", () => {
    expect(cellOf("RECT_AREA", 3, 8)).toBe(24);
  });

  it("OPEN_AREA: the sum of the openings named, by box where the list has boxes", () => {
    expect(call("OPEN_AREA", column("A", "a+c", "B & C"), labels, areas)).toEqual([
      [4],
      [28],
      [36],
    ]);
    const boxes = column("north", "north", "south");
    const twice = call(
      "OPEN_AREA",
      "A",
      column("A", "B", "A"),
      areas,
      column("North", "south "),
      boxes,
    );
    expect(twice).toEqual([[4], [24]]);
    expect(call("OPEN_AREA", column(1, 12), column(1, 2, 12), areas)).toEqual([[4], [24]]);
  });

  it("AREA_FOR and DIAMETER_FOR: the hole that makes the wanted pressure", () => {
    expect(cellOf("AREA_FOR", 50, 4, 1)).toBe(25);
    expect(cellOf("DIAMETER_FOR", 50, 4, 1) as number).toBeCloseTo(2 * Math.sqrt(25 / Math.PI), 12);
    expect(cellOf("FLOW", cellOf("AREA_FOR", 80, 5), 5) as number).toBeCloseTo(80, 10);
  });

  it("FLOW: constant × area × √pressure; a pressure of 0 may be a blank cell and gives no flow", () => {
    expect(cellOf("FLOW", 24, 4) as number).toBeCloseTo(51.36, 12);
    expect(cellOf("FLOW", 24, 4, 1.1) as number).toBeCloseTo(52.8, 12);
    expect(cellOf("FLOW", 24, 0)).toMatchObject({
      code: "#N/A",
      message: "pressure is 0 or blank: read it again",
    });
  });

  it("BOX_PRESSURE: (flow ÷ (constant × area))²", () => {
    expect(cellOf("BOX_PRESSURE", 24, 51.36) as number).toBeCloseTo(4, 12);
    expect(cellOf("BOX_PRESSURE", 25, 50, 1)).toBe(4);
  });

  it("REACH: the flows at the ends of the window, side by side", () => {
    expect(call("REACH", column(10, 20), 1, 1, 9)).toEqual([
      [10, 30],
      [20, 60],
    ]);
    expect(call("REACH", 24)[0]?.[1]).toBeCloseTo(1.07 * 24 * Math.sqrt(8), 10);
  });

  it("RANGE_STATUS: where a pressure stands", () => {
    expect(call("RANGE_STATUS", column(-1, 0.5, 1, 8, 9))).toEqual(
      column("reversed", "below", "in range", "in range", "above"),
    );
    expect(cellOf("RANGE_STATUS", 9, 1, 10)).toBe("in range");
  });

  it("NEXT_OPENING: keep in range, else the set nearest to 4 Pa", () => {
    expect(
      call("NEXT_OPENING", column(16, 4, 9, 0.5), column(12, 24, 24, 24), labels, areas),
    ).toEqual(column("C", "keep", "B+C", "B"));
    expect(cellOf("NEXT_OPENING", 200, 40, labels, areas)).toBe("none in range, nearest A+B+C");
    expect(cellOf("NEXT_OPENING", 16, 12, column(""), column(""))).toBe("no opening in the list");
    expect(cellOf("NEXT_OPENING", 9, 24, labels, areas, null, null, 1, 10)).toBe("keep");
  });

  it("ROOM_RATE: the rate of each row's own edition, room and duty", () => {
    const rates = call(
      "ROOM_RATE",
      column("62.2-2016", "IRC-2021", "62.2-2016"),
      column("bath", "kitchen", "kitchen"),
      column("intermittent", "continuous", "continuous"),
      column("", "", 960),
      "ip",
      column("", "", "yes"),
    );
    expect(rates).toEqual([[50], [25], [close(80)]]);
  });

  it("DWELLING_RATE: by equation or table", () => {
    const rates = call("DWELLING_RATE", "62.2-2016", 1800, 3, column("equation", "table", ""));
    expect(rates).toEqual([[close(84)], [90], [close(84)]]);
  });

  it("VERDICT: meets at the rate, short below it, out of range, not measured without a flow", () => {
    const verdicts = call(
      "VERDICT",
      column(50, 49.9, 60, "", "", 60),
      column(50, 50, 50, 50, "", 50),
      column("in range", "", "above", "", "", "reversed"),
    );
    expect(verdicts).toEqual(
      column("meets", "short", "out of range", "not measured", "", "out of range"),
    );
  });

  it("INFILTRATION and FAN_RATE: by each row's own edition", () => {
    const leaks = call(
      "INFILTRATION",
      column("62.2-2016", "62.2-2019", "62.2-2016"),
      column(1500, 1500, ""),
      1800,
      16,
      0.6,
    );
    expect(leaks).toEqual([[expect.closeTo(61.475, 3)], [expect.closeTo(61.146, 3)], [""]]);
    const fans = call(
      "FAN_RATE",
      column("62.2-2016", "62.2-2019"),
      84,
      61.146,
      null,
      null,
      column("Existing", "existing"),
    );
    expect(fans).toEqual([[close(22.854)], [close(84 - 61.146 ** 2 / 84)]]);
  });

  it("ON_RATE: a plain average or a factor", () => {
    expect(
      call("ON_RATE", column("62.2-2016", "62.2-2016", "IRC-2021"), 72, 0.5, column("", 1, "")),
    ).toEqual([[close(144)], [close(144)], [close(144)]]);
  });

  it("DEFICIT: none is no fan, a blank is not measured yet", () => {
    expect(
      call(
        "DEFICIT",
        "62.2-2016",
        "bath",
        column("none", " None ", 0, "", 60),
        column("yes", "no", "", "", ""),
      ),
    ).toEqual(column(30, 50, 50, "", 0));
  });

  it("DEFICIT_RATE: a quarter of the sum on top, and blank until a deficit is entered", () => {
    expect(call("DEFICIT_RATE", "62.2-2016", column(84, 60), column(80, "", 50))).toEqual([
      [close(116.5)],
      [close(92.5)],
    ]);
    expect(cellOf("DEFICIT_RATE", "62.2-2016", 84, column("", null))).toBe("");
    expect(cellOf("DEFICIT_RATE", "62.2-2016", 84, 0)).toBe(84);
    const bad = { code: "#DIV/0!" };
    expect(cellOf("DEFICIT_RATE", "62.2-2016", 84, column(30, bad))).toMatchObject(bad);
    expect(cellOf("DEFICIT_RATE", "62.2-2016", 84, column(30, -5))).toMatchObject({
      message: "deficits, cell 2: -5: give a number of 0 or more",
    });
  });

  it("BALANCED_RATE: less only where it is both", () => {
    expect(call("BALANCED_RATE", "IRC-2021", 60, column("yes", "no", true))).toEqual([
      [close(42)],
      [60],
      [close(42)],
    ]);
  });

  it("MIN_EFFICACY, MAX_SONE and DUCT_LIMIT: what the code's tables say", () => {
    expect(call("MIN_EFFICACY", "IECC-2021", column("bath", "in-line"), column(80, ""))).toEqual(
      column(2.8, 3.8),
    );
    expect(call("MAX_SONE", "62.2-2016", column("continuous", "intermittent"))).toEqual(
      column(1, 3),
    );
    expect(
      call("DUCT_LIMIT", "IRC-2021", column("flex", "smooth", "flex"), column(4, 6, 3), 50, 1),
    ).toEqual(column(41, "no limit", "not allowed"));
  });

  it("MAKEUP_AIR and DESIGN_MATCH: a word", () => {
    expect(call("MAKEUP_AIR", column("IRC-2015", "IRC-2021"), 600, column("", "no"))).toEqual(
      column("needed", "not needed"),
    );
    expect(call("DESIGN_MATCH", "ENERGY-STAR-3.1", 80, column(60, 70, 100, ""))).toEqual(
      column("low", "matches", "high", ""),
    );
  });
});
