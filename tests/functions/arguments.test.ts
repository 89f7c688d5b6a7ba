import { describe, expect, it } from "vitest";
import * as made from "../../functions/made";
import { call, cellOf, failureOf, type Matrix } from "./call";
import { contracts, soundArguments } from "./contract";

const codes = made as unknown as Readonly<Record<string, (...args: unknown[]) => Matrix>>;
const withOptional = contracts.filter(
  ({ table, arguments: args }) => !table && args.some(({ optional }) => optional),
);

describe.each(withOptional.map((contract) => [contract.id, contract] as const))(
  "%s without its optional arguments",
  (id, contract) => {
    const required = soundArguments(contract, (argument, cells) =>
      argument.optional ? null : cells.map((cell) => [cell]),
    );

    it("gives the same for null, for undefined and for arguments not passed at all", () => {
      const code = codes[id] as (...args: unknown[]) => Matrix;
      const byNull = code(...required);
      expect(code(...required.map((argument) => argument ?? undefined))).toEqual(byNull);
      expect(code(...required.filter((argument) => argument !== null))).toEqual(byNull);
      expect(byNull).toHaveLength(3);
    });
  },
);

describe("what stands in for an argument left out", () => {
  it("is 1.07 for the constant, and its twin in SI", () => {
    expect(cellOf("FLOW", 24, 4)).toBe(cellOf("FLOW", 24, 4, 1.07));
    const twin = 1.07 * (0.3048 ** 3 / 60 / 0.0254 ** 2) * 0.1;
    expect(cellOf("FLOW", 100, 4, null, "si") as number).toBeCloseTo(twin * 100 * 2, 10);
  });

  it("is 4 Pa for the wanted pressure", () => {
    expect(cellOf("AREA_FOR", 50)).toBe(cellOf("AREA_FOR", 50, 4));
    expect(cellOf("DIAMETER_FOR", 50)).toBe(cellOf("DIAMETER_FOR", 50, 4));
  });

  it("is 1 and 8 Pa for the window", () => {
    expect(call("REACH", 24)).toEqual(call("REACH", 24, null, 1, 8));
    expect(cellOf("RANGE_STATUS", 0.99)).toBe("below");
    expect(cellOf("RANGE_STATUS", 8.01)).toBe("above");
  });

  it("is the edition's usual method for a dwelling", () => {
    expect(cellOf("DWELLING_RATE", "62.2-2016", 1800, 3)).toBe(
      cellOf("DWELLING_RATE", "62.2-2016", 1800, 3, "equation"),
    );
    expect(cellOf("DWELLING_RATE", "IRC-2021", 1800, 3)).toBe(
      cellOf("DWELLING_RATE", "IRC-2021", 1800, 3, "table"),
    );
  });
});

const withUnits = contracts.filter(({ arguments: args }) =>
  args.some(({ role }) => role === "units"),
);

describe.each(withUnits.map((contract) => [contract.id, contract] as const))(
  "the units of %s",
  (id, contract) => {
    const by = (units: unknown) =>
      contract.arguments.map((argument) =>
        argument.role === "units"
          ? units
          : (argument.optional && !argument.inUnits) || argument.leftOut
            ? null
            : argument.good[0],
      );

    it("are ip where left out or blank, and read in any case", () => {
      const ip = call(id, ...by("ip"));
      for (const units of [null, undefined, "", "  ", "IP", " ip ", [["ip"]], [[""]]])
        expect(call(id, ...by(units))).toEqual(ip);
    });

    it("make another result in si", () => {
      expect(call(id, ...by("si"))).toEqual(call(id, ...by([["SI"]])));
      expect(call(id, ...by("si"))).not.toEqual(call(id, ...by("ip")));
    });

    it("are refused where unknown, with the two there are", () => {
      for (const units of ["metric", 5, [["us"]]])
        expect(failureOf(id, ...by(units))).toMatchObject({
          code: "#VALUE!",
          message: expect.stringMatching(/^units ".*": use "ip" \(.*\) or "si" \(.*\)$/),
        });
    });
  },
);

describe("names that are not known", () => {
  it.each([
    [
      "ROOM_RATE",
      ["62.2-1999", "bathroom", "on demand"],
      'unknown edition "62.2-1999": use one of 62.2-2010',
    ],
    [
      "ROOM_RATE",
      ["62.2-2016", "attic", "on demand"],
      'unknown room kind "attic": use one of bathroom, toilet',
    ],
    [
      "ROOM_RATE",
      ["62.2-2016", "bathroom", "often"],
      'unknown duty "often": use one of on demand, continuous',
    ],
    [
      "ROOM_RATE",
      ["CA-2022", "kitchen hood", "continuous"],
      "CA-2022 sets no rate for a kitchen hood, continuous: it has ",
    ],
    ["ROOM_RATE", ["62.2-2016", "kitchen", "continuous"], "and give its volume"],
    ["ROOM_RATE", ["ADF-2021", "bathroom", "on demand"], 'set units to "si"'],
    ["DWELLING_RATE", ["62.2-1999", 1800, 3], 'unknown edition "62.2-1999": use one of 62.2-2010'],
    [
      "DWELLING_RATE",
      ["62.2-2016", 1800, 3, "guess"],
      'unknown method "guess" in 62.2-2016: use one of equation, table',
    ],
    ["DWELLING_RATE", ["ADF-2021", 1800, 3], 'set units to "si"'],
    ["INFILTRATION", ["IRC-2021", 1500, 1800, 16, 0.6], "use one of 62.2-2010, 62.2-2013"],
    ["FAN_RATE", ["62.2-2016", 84, 61, 1, "half"], 'balanced "half": say "yes" or "no"'],
    ["FAN_RATE", ["62.2-2016", 84, 61, 1, "no", "old"], "use one of new, existing"],
    [
      "ON_RATE",
      ["ADF-2021", 72, 0.5],
      "ADF-2021 has no rule for fans that do not run all the time",
    ],
    ["DEFICIT", ["62.2-2016", "utility", 0], "it has bathroom, kitchen hood, kitchen"],
    ["DEFICIT_RATE", ["IRC-2021", 60, 30], "IRC-2021 has no alternative"],
    [
      "BALANCED_RATE",
      ["62.2-2016", 60, "yes"],
      "use one of IRC-2021, IRC-2024, IMC-2021, IMC-2024, WA-2021",
    ],
    ["MIN_EFFICACY", ["IECC-2021", "jet"], 'unknown fan kind "jet": use one of heat recovery'],
    [
      "MIN_EFFICACY",
      ["IRC-2021", "in-line"],
      "IRC-2021 sets no fan efficacy: use one of IECC-2015",
    ],
    ["MAX_SONE", ["IRC-2021", "continuous"], "use one of 62.2-2010"],
    ["DUCT_LIMIT", ["IRC-2021", "oval", 4, 50], "use one of flex, smooth"],
    ["MAKEUP_AIR", ["62.2-2016", 600], "use one of IRC-2015, IRC-2018, IRC-2021, IRC-2024"],
    ["DESIGN_MATCH", ["house", 80, 90], 'unknown programme "house": use one of ENERGY-STAR-3.1'],
    [
      "VERDICT",
      [55, 50, "fine"],
      'unknown range status "fine": use one of reversed, below, in range, above',
    ],
    ["OPEN_AREA", ["D", [["A"], ["B"]], [[4], [5]]], 'unknown opening "D": this box has A, B'],
    ["OPEN_AREA", ["A+A", [["A"], ["B"]], [[4], [5]]], "opening A is named twice"],
    ["OPEN_AREA", ["A", [["A"]], [[4]], "two", [["one"]]], 'unknown box "two": the list has ONE'],
    [
      "NEXT_OPENING",
      [16, 12, [["A"]], [[4]], "two", [["one"]]],
      'unknown box "two": the list has ONE',
    ],
  ] as const)("%s %j: the message lists what may stand there", (id, args, message) => {
    expect(cellOf(id, ...args)).toMatchObject({
      code: "#VALUE!",
      message: expect.stringContaining(message),
    });
  });
});
