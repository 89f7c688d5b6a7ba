import type { Matrix } from "./call";

/**
 * What each worksheet function does with each of its arguments, written down apart from the code.
 * The tests of shapes, blanks, bad cells and left-out arguments run over this list.
 */
export interface Argument {
  readonly name: string;
  /**
   * "number" and "name": one cell a row. "list": a column of the Boxes sheet. "pairs": a column of
   * the Pairs sheet, all of whose rows make one result. "units": one word. "word": one word that
   * is no unit.
   */
  readonly role: "number" | "name" | "list" | "pairs" | "units" | "word";
  /** Three sound cells, one a row; for a list its whole column. */
  readonly good: readonly unknown[];
  /** What a blank cell among sound ones makes of its row: "", an error code, a word, or nothing. */
  readonly blank: "" | "#N/A" | "#VALUE!" | "not measured" | "as if left out";
  /** Numbers that cannot be meant, and a word of the message that says so. */
  readonly wrong?: readonly (readonly [number, string])[];
  readonly optional?: true;
  /** Cells side by side are repeats of one row, not rows of their own. */
  readonly repeats?: true;
  /** May be left out between commas although others that are needed follow. */
  readonly leftOut?: true;
  /** Given when the units are tried: without it they change nothing. */
  readonly inUnits?: true;
}

export interface Contract {
  readonly id: string;
  /** How many cells it gives side by side for each row; one where left out. */
  readonly cells?: number;
  /** It gives a table of its own, whatever the rows of its arguments. */
  readonly table?: true;
  readonly arguments: readonly Argument[];
}

const aboveZero = [
  [0, "above 0"],
  [-3, "above 0"],
] as const;

const number = (
  name: string,
  good: readonly number[],
  blank: Argument["blank"],
  wrong: Argument["wrong"] = aboveZero,
): Argument => ({ name, role: "number", good, blank, wrong });
const name = (of: string, good: readonly unknown[], blank: Argument["blank"]): Argument => ({
  name: of,
  role: "name",
  good,
  blank,
});
const list = (of: string, good: readonly unknown[]): Argument => ({
  name: of,
  role: "list",
  good,
  blank: "as if left out",
});
const optional = (argument: Argument): Argument => ({ ...argument, optional: true });
const units = optional({
  name: "units",
  role: "units",
  good: ["ip"],
  blank: "as if left out",
});

const pairs = (of: string, good: readonly number[]): Argument => ({
  name: of,
  role: "pairs",
  good,
  blank: "",
});

const constant = optional(number("constant", [1.05, 1.07, 1.1], "#N/A"));
const low = optional(number("low", [1, 1.5, 2], "#N/A"));
const high = optional(number("high", [8, 7, 6], "#N/A"));
const labels = list("labels", ["A", "B", "C", "A"]);
const areas = list("areas", [4, 12, 24, 100]);
const box = optional(name("box", ["one", "one", "two"], "#VALUE!"));
const boxes = optional(list("boxes", ["one", "one", "one", "two"]));

const zeroOrMore = [[-1, "0 or more"]] as const;
const readable = [
  [-3, "swap the hoses"],
  [0, "above 0"],
] as const;
const guardChance = (blank: Argument["blank"]) =>
  optional(
    number("chance", [0.95, 0.9, 0.5], blank, [
      [1, "from 0.5 to below 1"],
      [0.4, "from 0.5 to below 1"],
    ]),
  );
const twoReadings = [
  number("area", [32, 24, 48], "#N/A"),
  number("pressure", [4, 4, 2], "", readable),
  number("area2", [16, 12, 24], "#N/A"),
  number("pressure2", [14, 15, 7], "", readable),
];

export const contracts: readonly Contract[] = [
  { id: "ROUND_AREA", arguments: [number("diameter", [3, 4.25, 6], "")] },
  {
    id: "RECT_AREA",
    arguments: [number("width", [3, 4, 5], ""), number("height", [8, 7, 6], "")],
  },
  {
    id: "OPEN_AREA",
    arguments: [name("openings", ["A+C", "B", "A"], ""), labels, areas, box, boxes],
  },
  {
    id: "AREA_FOR",
    arguments: [
      number("flow", [50, 80, 110], ""),
      optional(number("pressure", [4, 5, 6], "#N/A")),
      constant,
      units,
    ],
  },
  {
    id: "DIAMETER_FOR",
    arguments: [
      number("flow", [50, 80, 110], ""),
      optional(number("pressure", [4, 5, 6], "#N/A")),
      constant,
      units,
    ],
  },
  {
    id: "FLOW",
    arguments: [
      number("area", [12, 24, 36], "#N/A"),
      number("pressure", [1.5, 4, 7.5], "", [[-3, "swap the hoses"]]),
      constant,
      units,
    ],
  },
  {
    id: "BOX_PRESSURE",
    arguments: [
      number("area", [12, 24, 36], "#N/A"),
      number("flow", [20, 50, 90], "", [[-3, "0 or more"]]),
      constant,
      units,
    ],
  },
  {
    id: "REACH",
    cells: 2,
    arguments: [number("area", [12, 24, 36], ""), constant, low, high, units],
  },
  {
    id: "RANGE_STATUS",
    arguments: [number("pressure", [0.5, 4, 9], "", []), low, high],
  },
  {
    id: "NEXT_OPENING",
    arguments: [
      number("pressure", [16, 9, 0.5], ""),
      number("area", [12, 24, 36], "#N/A"),
      labels,
      areas,
      box,
      boxes,
      low,
      high,
    ],
  },
  {
    id: "ROOM_RATE",
    arguments: [
      name("edition", ["62.2-2016", "IRC-2021", "62.2-2010"], "#N/A"),
      name("room", ["bathroom", "toilet", "kitchen"], "#N/A"),
      name("duty", ["on demand", "continuous", "continuous"], "#N/A"),
      optional(number("volume", [600, 300, 960], "as if left out")),
      units,
    ],
  },
  {
    id: "DWELLING_RATE",
    arguments: [
      name("edition", ["62.2-2016", "IRC-2021", "62.2-2010"], "#N/A"),
      number("floorArea", [1800, 2400, 900], ""),
      number("bedrooms", [3, 4, 1], "#N/A", [
        [-1, "whole number"],
        [2.5, "whole number"],
      ]),
      optional(name("method", ["table", "equation", "equation"], "as if left out")),
      units,
      {
        ...optional(number("occupants", [], "as if left out", [[2.5, "whole number"]])),
        good: [6, null, 3],
      },
    ],
  },
  {
    id: "VERDICT",
    arguments: [
      number("flow", [55, 45, 100], "not measured", []),
      number("required", [50, 50, 100], "#N/A", []),
      optional(name("status", ["in range", "in range", "above"], "as if left out")),
      optional(number("spread", [1, 1, 1], "as if left out", zeroOrMore)),
      guardChance("as if left out"),
    ],
  },
  {
    id: "CHANCE_MET",
    arguments: [
      number("flow", [55, 45, 51], "", []),
      number("spread", [1.5, 2, 0], "#N/A", zeroOrMore),
      number("required", [50, 50, 50], "#N/A", []),
    ],
  },
  {
    id: "ACCEPT_FROM",
    arguments: [
      number("required", [50, 80, 100], "", []),
      number("spread", [1.5, 2, 0], "#N/A", zeroOrMore),
      guardChance("#N/A"),
    ],
  },
  {
    id: "AREA_LIMIT",
    arguments: [
      number("tolerance", [0.0625, 0.125, 0], "#N/A", zeroOrMore),
      number("size1", [5.5, 3, 4], ""),
      optional(number("size2", [8, 7, 6], "as if left out")),
    ],
  },
  {
    id: "FLOW_SPREAD",
    cells: 3,
    arguments: [
      { ...number("readings", [1.5, 4, 7.5], "", readable), repeats: true },
      number("area", [12, 24, 36], "#N/A"),
      number("areaLimit", [0.2, 0.2, 0], "#N/A", zeroOrMore),
      { ...number("constant", [1.05, 1.07, 1.1], "#N/A"), leftOut: true },
      number("constantSpread", [2, 3, 0], "#N/A", zeroOrMore),
      number("meterPercent", [1, 1, 0.5], "#N/A", zeroOrMore),
      number("meterFloor", [0.25, 0.2, 0], "#N/A", zeroOrMore),
      optional(number("resolution", [0.1, 0.1, 0], "#N/A", zeroOrMore)),
      optional(number("zeroLimit", [0.1, 0.2, 0], "#N/A", zeroOrMore)),
      units,
    ],
  },
  {
    id: "UNBOXED_FLOW",
    arguments: [...twoReadings, constant, units],
  },
  {
    id: "UNBOXED_SPREAD",
    arguments: [
      ...twoReadings,
      { ...number("constant", [1.05, 1.07, 1.1], "#N/A"), leftOut: true },
      number("meterPercent", [1, 1, 0.5], "#N/A", zeroOrMore),
      number("meterFloor", [0.25, 0.2, 0], "#N/A", zeroOrMore),
      number("areaLimit", [0.2, 0.2, 0], "#N/A", zeroOrMore),
      number("areaLimit2", [0.3, 0.2, 0.1], "#N/A", zeroOrMore),
      number("constantSpread", [2, 3, 0], "#N/A", zeroOrMore),
      optional(number("resolution", [0.1, 0.1, 0], "#N/A", zeroOrMore)),
      optional(number("zeroLimit", [0.1, 0.2, 0], "#N/A", zeroOrMore)),
      units,
    ],
  },
  {
    id: "UNBOXED_ESTIMATE",
    arguments: [
      number("flow", [65, 48, 70], ""),
      number("pressure", [6, 4, 2], "", readable),
      number("ratedFlow", [80, 60, 110], "#N/A", zeroOrMore),
      number("ratedPressure", [25, 25, 25], "#N/A", zeroOrMore),
      number("ratedFlow2", [60, 40, 90], "#N/A", zeroOrMore),
      number("ratedPressure2", [62, 62, 62], "#N/A", zeroOrMore),
    ],
  },
  {
    id: "PAIR_CONSTANT",
    cells: 3,
    arguments: [
      pairs("areas", [12, 24, 24, 48]),
      pairs("pressures", [4, 4, 2, 3]),
      pairs("references", [25, 52, 36, 90]),
    ],
  },
  {
    id: "PAIR_BIAS",
    cells: 3,
    arguments: [pairs("boxFlows", [25, 52, 36]), pairs("referenceFlows", [26, 51, 36])],
  },
  {
    id: "PAIR_LIMITS",
    cells: 3,
    arguments: [pairs("boxFlows", [25, 52, 36]), pairs("referenceFlows", [26, 51, 36])],
  },
  {
    id: "WORKING",
    arguments: [
      { name: "name", role: "word", good: ["FLOW"], blank: "" },
      number("area", [12, 24, 36], ""),
      number("pressure", [1.5, 4, 7.5], "", [[-3, "swap the hoses"]]),
    ],
  },
  {
    id: "AIR_DENSITY",
    arguments: [
      number("temperature", [68, 0, -4], "", [[141, "from -40 to 140 (°C"]]),
      optional(number("humidity", [30, 0, 100], "as if left out", [[101, "from 0 to 100"]])),
      optional(number("barometer", [29.92, 24.9, 28], "as if left out", [[1013, "inHg"]])),
      optional(number("elevation", [0, -100, 5280], "as if left out", [[20000, "from -1640"]])),
      units,
    ],
  },
  {
    id: "AIR_FACTOR",
    arguments: [
      number("density", [1.2, 1, 1.3], "", [[0.075, "1.2 kg/m³"]]),
      optional(number("reference", [1.2, 1.204, 1.225], "#N/A", [[0.075, "1.2 kg/m³"]])),
    ],
  },
  {
    id: "STANDARD_FLOW",
    arguments: [
      number("flow", [0, 50, 90], "", [[-3, "0 or more"]]),
      number("density", [1.2, 1, 1.3], "#N/A", [[0.075, "1.2 kg/m³"]]),
      optional(number("reference", [1.2, 1.204, 1.225], "#N/A", [[0, "1.2 kg/m³"]])),
    ],
  },
  {
    id: "FLOW_CONSTANT",
    arguments: [
      number("coefficient", [0.6, 0.61, 1], "", [...aboveZero, [1.07, "flow constant"]]),
      number("density", [1.2, 1, 1.3], "#N/A", [[0, "1.2 kg/m³"]]),
      units,
    ],
  },
  {
    id: "DEVICE_FLOW",
    arguments: [
      number("reading", [4, 50, 6], "", zeroOrMore),
      number("constant", [25, 1, 240], "#N/A"),
      optional(
        number("exponent", [0.5, 1, -1], "#N/A", [
          [0, "0.5 for a pressure"],
          [25, "0.5 for a pressure"],
        ]),
      ),
    ],
  },
  {
    id: "BAG_FLOW",
    arguments: [number("volume", [4, 4.3, 6], "#N/A"), number("seconds", [4.8, 6, 10], ""), units],
  },
  {
    id: "DEVICE_SPREAD",
    cells: 3,
    arguments: [
      { ...number("readings", [52, 48, 4], ""), repeats: true },
      number("constant", [1, 1.03, 25], "#N/A"),
      number("exponent", [1, 1, 0.5], "#N/A", [[0, "0.5 for a pressure"]]),
      number("percent", [5, 10, 3], "as if left out", zeroOrMore),
      number("floor", [5, 0, 2], "as if left out", zeroOrMore),
      optional(number("resolution", [1, 1, 0.1], "as if left out", zeroOrMore)),
    ],
  },
  {
    id: "PAN_STATUS",
    arguments: [
      { ...number("readings", [0.4, 1.6, -2], "", []), repeats: true },
      optional(number("limit", [1, 1, 3], "as if left out")),
      optional(number("span", [0.5, 0.5, 0.2], "as if left out")),
    ],
  },
  {
    id: "FAN_SIZE",
    arguments: [
      number("required", [50, 80, 100], ""),
      {
        ...number("margin", [10, 0, 20], "as if left out", [[-5, "0 or more, in per cent"]]),
        leftOut: true,
      },
      list("ratings", [110, 50, 80, 140]),
    ],
  },
  {
    id: "EXPECTED_OPENING",
    arguments: [
      number("flow", [9, 50, 110], ""),
      labels,
      areas,
      box,
      boxes,
      constant,
      low,
      high,
      units,
    ],
  },
  {
    id: "SOURCE",
    arguments: [
      name("edition", ["62.2-2016", "IRC-2021", "62.2-2010"], "#N/A"),
      optional(name("room", ["bathroom", "toilet", "kitchen"], "#N/A")),
      optional(name("duty", ["on demand", "continuous", "continuous"], "#N/A")),
    ],
  },
  {
    id: "EDITIONS",
    table: true,
    arguments: [optional({ name: "edition", role: "word", good: ["IRC-2021"], blank: "" })],
  },
  {
    id: "INFILTRATION",
    arguments: [
      name("edition", ["62.2-2016", "62.2-2019", "62.2-2010"], "#N/A"),
      number("leak50", [1500, 1200, 2400], ""),
      number("floorArea", [1800, 2400, 900], "#N/A"),
      number("height", [16, 8.5, 24], "#N/A"),
      number("weather", [0.6, 0.5, 0.7], "#N/A"),
      units,
    ],
  },
  {
    id: "FAN_RATE",
    arguments: [
      name("edition", ["62.2-2010", "62.2-2019", "62.2-2016"], "#N/A"),
      number("total", [84, 90, 105], ""),
      number("infiltration", [61, 40, 30], "#N/A", zeroOrMore),
      optional(number("exposedShare", [1, 0.8, 0.5], "as if left out", [[1.5, "from 0 to 1"]])),
      optional(name("balanced", ["no", "yes", "no"], "as if left out")),
      optional({ ...name("work", ["existing", "new", "new"], "as if left out"), inUnits: true }),
      units,
      optional({ ...number("floorArea", [1800, 2400, 900], "as if left out"), inUnits: true }),
    ],
  },
  {
    id: "ON_RATE",
    arguments: [
      name("edition", ["62.2-2016", "IRC-2021", "62.2-2010"], "#N/A"),
      number("rate", [72, 60, 48], ""),
      number("runShare", [0.5, 0.4, 0.3], "#N/A", [
        [0, "above 0"],
        [50, "up to 1"],
      ]),
      optional(number("cycleHours", [3, 2, 1], "as if left out")),
    ],
  },
  {
    id: "DEFICIT",
    arguments: [
      name("edition", ["62.2-2016", "62.2-2019", "62.2-2010"], "#N/A"),
      name("room", ["bathroom", "kitchen", "bath"], "#N/A"),
      number("measured", [25, 60, 0], "", zeroOrMore),
      optional(name("window", ["no", "yes", "yes"], "as if left out")),
      units,
    ],
  },
  {
    id: "DEFICIT_RATE",
    arguments: [
      name("edition", ["62.2-2016", "62.2-2019", "62.2-2010"], "#N/A"),
      number("total", [84, 90, 105], ""),
      list("deficits", [80, 20, 30]),
    ],
  },
  {
    id: "BALANCED_RATE",
    arguments: [
      name("edition", ["IRC-2021", "IMC-2021", "IRC-2021"], "#N/A"),
      number("rate", [60, 75, 90], ""),
      name("balancedDucted", ["yes", "no", "yes"], "#N/A"),
    ],
  },
  {
    id: "MIN_EFFICACY",
    arguments: [
      name("edition", ["IECC-2021", "IECC-2015", "10-CFR-460"], "#N/A"),
      name("fanKind", ["in-line", "range hood", "bath"], ""),
      optional(number("flow", [150, 100, 80], "as if left out")),
      units,
    ],
  },
  {
    id: "MAX_SONE",
    arguments: [
      name("edition", ["62.2-2016", "ENERGY-STAR-3.1", "62.2-2010"], "#N/A"),
      name("duty", ["continuous", "on demand", "on demand"], ""),
      optional({ ...number("flow", [200, 110, 450], "as if left out"), inUnits: true }),
      optional(name("remote", ["no", "yes", "no"], "as if left out")),
      units,
    ],
  },
  {
    id: "DUCT_LIMIT",
    arguments: [
      name("edition", ["IRC-2021", "IRC-2015", "IRC-2018"], "#N/A"),
      name("ductKind", ["flex", "smooth", "rigid"], "#N/A"),
      number("diameter", [4, 5, 6], "#N/A"),
      number("ratedFlow", [50, 80, 150], ""),
      optional(
        number("elbows", [1, 2, 3], "as if left out", [
          [-1, "whole number"],
          [1.5, "whole number"],
        ]),
      ),
      units,
    ],
  },
  {
    id: "MAKEUP_AIR",
    arguments: [
      name("edition", ["IRC-2015", "IRC-2018", "IRC-2021"], "#N/A"),
      number("flow", [300, 390, 600], ""),
      optional(name("appliance", ["yes", "no", "yes"], "as if left out")),
      units,
    ],
  },
  {
    id: "DESIGN_MATCH",
    arguments: [
      name("programme", ["ENERGY-STAR-3.1", "ENERGY STAR", "ENERGY STAR 3.1"], "#N/A"),
      number("design", [55.3, 128.8, 80], "#N/A"),
      number("measured", [50, 120, 100], "", zeroOrMore),
      units,
    ],
  },
];

/** Argument columns of sound cells, with `change` applied to those of one argument. */
export function soundArguments(
  contract: Contract,
  change: (argument: Argument, cells: unknown[]) => unknown = (_, cells) =>
    cells.map((cell) => [cell]),
): unknown[] {
  return contract.arguments.map((argument) => {
    const cells = [...argument.good];
    if (argument.role === "units")
      return change(argument, cells) === null ? null : argument.good[0];
    return change(argument, cells);
  });
}

/** The cells as a column, with another in row `row` where this is the argument meant. */
export function withCell(meant: Argument, row: number, cell: unknown) {
  return (argument: Argument, cells: unknown[]): Matrix => {
    if (argument === meant) cells[row] = cell;
    return cells.map((each) => [each]);
  };
}

/** The functions that give a row for each row; the others make one row of whole ranges. */
export const byRow = contracts.filter(
  ({ table, arguments: args }) => !table && args.every(({ role }) => role !== "pairs"),
);

/** Every function with every argument that holds one cell a row. */
export const rowArguments = contracts.flatMap((contract) =>
  contract.arguments
    .filter(({ role }) => role === "number" || role === "name")
    .map((argument) => [contract.id, argument.name, contract, argument] as const),
);

export const numberArguments = rowArguments.filter(([, , , { role }]) => role === "number");
