import { worksheetFunctions } from "../../functions";
import { type Argument as RuleArgument, rules } from "../../src/rules";
import { isMet } from "../../src/rules/contract/need";
import type { Matrix } from "./call";

/**
 * What each worksheet function does with each of its arguments, as the rules have it. What cells
 * are sound, and what is told of numbers that cannot be meant, is written down here, apart from
 * the rules. The tests of shapes, blanks, bad cells and left-out arguments run over this list.
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
  /** What a blank cell among sound ones makes of its row: "", an error code, or nothing. */
  readonly blank: "" | "#N/A" | "#VALUE!" | "as if left out";
  /** What 0 does: it is a number like any, it counts as blank, or it is told as 0 or blank. */
  readonly zero: "a number" | "as blank" | "told";
  /** Numbers that cannot be meant, and a word of the message that says so. */
  readonly wrong: readonly (readonly [number, string])[];
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

type Cells = Readonly<Record<string, readonly unknown[]>>;

/** Sound cells of arguments that are alike wherever they stand. */
const usual: Cells = {
  area: [12, 24, 36],
  pressure: [1.5, 4, 7.5],
  constant: [1.05, 1.07, 1.1],
  low: [1, 1.5, 2],
  high: [8, 7, 6],
  labels: ["A", "B", "C", "A"],
  areas: [4, 12, 24, 100],
  box: ["one", "one", "two"],
  boxes: ["one", "one", "one", "two"],
  units: ["ip"],
  areaLimit: [0.2, 0.2, 0],
  areaLimit2: [0.3, 0.2, 0.1],
  constantSpread: [2, 3, 0],
  meterPercent: [1, 1, 0.5],
  meterFloor: [0.25, 0.2, 0],
  resolution: [0.1, 0.1, 0],
  zeroLimit: [0.1, 0.2, 0],
  chance: [0.95, 0.9, 0.5],
  reference: [1.2, 1.204, 1.225],
  edition: ["62.2-2016", "62.2-2019", "62.2-2010"],
  duty: ["on demand", "continuous", "continuous"],
  boxFlows: [25, 52, 36],
  referenceFlows: [26, 51, 36],
};

const twoReadings: Cells = {
  area: [32, 24, 48],
  pressure: [4, 4, 2],
  area2: [16, 12, 24],
  pressure2: [14, 15, 7],
};
const mixed = ["62.2-2016", "IRC-2021", "62.2-2010"];

/** Sound cells of each function; alike ones are above. */
const sound: Readonly<Record<string, Cells>> = {
  ROUND_AREA: { diameter: [3, 4.25, 6] },
  RECT_AREA: { width: [3, 4, 5], height: [8, 7, 6] },
  OPEN_AREA: { openings: ["A+C", "B", "A"] },
  AREA_FOR: { flow: [50, 80, 110], pressure: [4, 5, 6] },
  DIAMETER_FOR: { flow: [50, 80, 110], pressure: [4, 5, 6] },
  FLOW: {},
  BOX_PRESSURE: { flow: [20, 50, 90] },
  REACH: {},
  RANGE_STATUS: { pressure: [0.5, 4, 9] },
  NEXT_OPENING: { pressure: [16, 9, 0.5] },
  ROOM_RATE: {
    edition: mixed,
    room: ["bathroom", "toilet", "kitchen"],
    volume: [600, 300, 960],
    enclosed: ["no", "yes", "yes"],
    cooking: ["fuel", "electric", "gas"],
    window: ["no", "yes", "no"],
    floorArea: [1800, 900, 640],
    capture: [50, 65, 80],
  },
  DWELLING_RATE: {
    edition: mixed,
    floorArea: [1800, 2400, 900],
    bedrooms: [3, 4, 1],
    method: ["table", "equation", "equation"],
    occupants: [6, null, 3],
  },
  VERDICT: {
    flow: [55, 45, 100],
    required: [50, 50, 100],
    status: ["in range", "in range", "above"],
    spread: [1, 1, 1],
    freedom: [2, 12, "infinite"],
  },
  CHANCE_MET: {
    flow: [55, 45, 51],
    spread: [1.5, 2, 0],
    required: [50, 50, 50],
    freedom: [2, 4.7, "infinite"],
  },
  ACCEPT_FROM: { required: [50, 80, 100], spread: [1.5, 2, 0], freedom: [2, 4.7, "infinite"] },
  AREA_LIMIT: { tolerance: [0.0625, 0.125, 0], size1: [5.5, 3, 4], size2: [8, 7, 6] },
  FLOW_SPREAD: { readings: [1.5, 4, 7.5] },
  UNBOXED_FLOW: twoReadings,
  UNBOXED_SPREAD: twoReadings,
  UNBOXED_ESTIMATE: {
    flow: [65, 48, 70],
    pressure: [6, 4, 2],
    ratedFlow: [80, 60, 110],
    ratedPressure: [25, 25, 25],
    ratedFlow2: [60, 40, 90],
    ratedPressure2: [62, 62, 62],
  },
  PAIR_CONSTANT: {
    areas: [12, 24, 24, 48],
    pressures: [4, 4, 2, 3],
    references: [25, 52, 36, 90],
  },
  PAIR_BIAS: {},
  PAIR_LIMITS: {},
  WORKING: { name: ["FLOW"] },
  AIR_DENSITY: {
    temperature: [68, 0, -4],
    humidity: [30, 0, 100],
    barometer: [29.92, 24.9, 28],
    elevation: [0, -100, 5280],
  },
  AIR_FACTOR: { density: [1.2, 1, 1.3] },
  STANDARD_FLOW: { flow: [0, 50, 90], density: [1.2, 1, 1.3] },
  FLOW_CONSTANT: { coefficient: [0.6, 0.61, 1], density: [1.2, 1, 1.3] },
  DEVICE_FLOW: { reading: [4, 50, 6], constant: [25, 1, 240], exponent: [0.5, 1, -1] },
  BAG_FLOW: { volume: [4, 4.3, 6], seconds: [4.8, 6, 10] },
  DEVICE_SPREAD: {
    readings: [52, 48, 4],
    constant: [1, 1.03, 25],
    exponent: [1, 1, 0.5],
    percent: [5, 10, 3],
    floor: [5, 0, 2],
    resolution: [1, 1, 0.1],
  },
  PAN_STATUS: { readings: [0.4, 1.6, -2], limit: [1, 1, 3], span: [0.5, 0.5, 0.2] },
  FAN_SIZE: { required: [50, 80, 100], margin: [10, 0, 20], ratings: [110, 50, 80, 140] },
  EXPECTED_OPENING: { flow: [9, 50, 110] },
  SOURCE: { edition: mixed, room: ["bathroom", "toilet", "kitchen"] },
  EDITIONS: { edition: ["IRC-2021"] },
  INFILTRATION: {
    leak50: [1500, 1200, 2400],
    floorArea: [1800, 2400, 900],
    height: [16, 8.5, 24],
    weather: [0.6, 0.5, 0.7],
  },
  FAN_RATE: {
    edition: ["62.2-2010", "62.2-2019", "62.2-2016"],
    total: [84, 90, 105],
    infiltration: [61, 40, 30],
    exposedShare: [1, 0.8, 0.5],
    balanced: ["no", "yes", "no"],
    work: ["existing", "new", "new"],
    floorArea: [1800, 2400, 900],
  },
  ON_RATE: {
    edition: mixed,
    rate: [72, 60, 48],
    runShare: [0.5, 0.4, 0.3],
    cycleHours: [3, 2, 1],
  },
  DEFICIT: {
    room: ["bathroom", "kitchen", "bath"],
    measured: [25, 60, 0],
    window: ["no", "yes", "yes"],
  },
  DEFICIT_RATE: { total: [84, 90, 105], deficits: [80, 20, 30] },
  BALANCE: {
    edition: ["WA-2021", "IRC-2021", "62.2-2016"],
    supply: [100, 60, 80],
    exhaust: [85, 56, 70],
  },
  BALANCED_RATE: {
    edition: ["IRC-2021", "IMC-2021", "IRC-2021"],
    rate: [60, 75, 90],
    balancedDucted: ["yes", "no", "yes"],
  },
  MIN_EFFICACY: {
    edition: ["IECC-2021", "IECC-2015", "10-CFR-460"],
    fanKind: ["in-line", "range hood", "bath"],
    flow: [150, 100, 80],
  },
  MAX_SONE: {
    edition: ["62.2-2016", "ENERGY-STAR-3.1", "62.2-2010"],
    duty: ["continuous", "on demand", "on demand"],
    flow: [200, 110, 450],
    remote: ["no", "yes", "no"],
  },
  DUCT_LIMIT: {
    edition: ["IRC-2021", "IRC-2015", "IRC-2018"],
    ductKind: ["flex", "smooth", "rigid"],
    diameter: [4, 5, 6],
    ratedFlow: [50, 80, 150],
    elbows: [1, 2, 3],
  },
  MAKEUP_AIR: {
    edition: ["IRC-2015", "IRC-2018", "IRC-2021"],
    flow: [300, 390, 600],
    appliance: ["yes", "no", "yes"],
  },
  DESIGN_MATCH: {
    programme: ["ENERGY-STAR-3.1", "ENERGY STAR", "ENERGY STAR 3.1"],
    design: [55.3, 128.8, 80],
    measured: [50, 120, 100],
  },
};

/** Numbers that cannot be meant, and a word of the message about them, by argument. */
const wrong: Readonly<Record<string, Argument["wrong"]>> = {
  "*.pressure": [[-3, "swap the hoses"]],
  "*.pressure2": [[-3, "swap the hoses"]],
  "FLOW_SPREAD.readings": [[-3, "swap the hoses"]],
  "RANGE_STATUS.pressure": [],
  "AREA_FOR.pressure": [[-3, "above 0"]],
  "DIAMETER_FOR.pressure": [[-3, "above 0"]],
  "*.chance": [
    [1, "from 0.5 to below 1"],
    [0.4, "from 0.5 to below 1"],
  ],
  "*.spread": [[-1, "0 or more"]],
  "*.bedrooms": [
    [-1, "whole number"],
    [2.5, "whole number"],
  ],
  "*.occupants": [[2.5, "whole number"]],
  "*.elbows": [
    [-1, "whole number"],
    [1.5, "whole number"],
  ],
  "AIR_DENSITY.temperature": [[141, "from -40 to 140 (°C"]],
  "AIR_DENSITY.humidity": [[101, "from 0 to 100"]],
  "AIR_DENSITY.barometer": [[1013, "inHg"]],
  "AIR_DENSITY.elevation": [[20000, "from -1640"]],
  "*.density": [[0.075, "1.2 kg/m³"]],
  "*.reference": [[0.075, "1.2 kg/m³"]],
  "*.coefficient": [
    [-3, "above 0"],
    [1.07, "flow constant"],
  ],
  "*.exponent": [[25, "0.5 for a pressure"]],
  "*.margin": [[-5, "0 or more, in per cent"]],
  "*.exposedShare": [[1.5, "from 0 to 1"]],
  "*.capture": [[0.65, "a percentage above 1"]],
  "*.runShare": [
    [-1, "above 0"],
    [50, "up to 1"],
  ],
  "*.freedom": [[0.5, "1 or more"]],
  "VERDICT.flow": [],
  "*.required": [],
  "CHANCE_MET.flow": [],
  "PAN_STATUS.readings": [],
};
const belowZero = [
  "BOX_PRESSURE.flow",
  "STANDARD_FLOW.flow",
  "DEVICE_FLOW.reading",
  "DEFICIT.measured",
  "BALANCE.supply",
  "BALANCE.exhaust",
  "DESIGN_MATCH.measured",
  "FAN_RATE.infiltration",
  "AREA_LIMIT.tolerance",
  "DEVICE_SPREAD.percent",
  "DEVICE_SPREAD.floor",
];
const limits = /Limit2?$|Spread$|^meter|^rated(Flow|Pressure)2?$|^resolution$/;

/** For all other numbers: a size has to be above 0, a limit 0 or more. */
function wrongOf(id: string, name: string): Argument["wrong"] {
  const own =
    wrong[`${id}.${name}`] ??
    (id === "FAN_SIZE" && name === "required" ? undefined : wrong[`*.${name}`]);
  if (own) return own;
  const isDuct = id === "DUCT_LIMIT";
  const isLimit = !isDuct && (limits.test(name) || belowZero.includes(`${id}.${name}`));
  return [[-3, isLimit ? "0 or more" : "above 0"]];
}

const withUnits = ["MAX_SONE.flow", "FAN_RATE.work", "FAN_RATE.floorArea"];
const roles = {
  number: "number",
  repeats: "number",
  name: "name",
  list: "list",
  numbers: "list",
  pairs: "pairs",
  units: "units",
  word: "word",
  rest: "number",
} as const;

function argumentOf(id: string, name: string, own: RuleArgument): Argument {
  const role = roles[own.kind];
  const isNumber = own.kind === "number";
  const needs = (own.kind === "number" || own.kind === "repeats") && own.need;
  const takesZero = [needs]
    .flat()
    .every((need) => !need || ("ip" in need ? isMet(need.ip, 0) : isMet(need, 0)));
  const blank = {
    "nothing yet": "",
    needed: "#N/A",
    "left out": name === "box" ? "#VALUE!" : "as if left out",
  } as const;
  return {
    name,
    role,
    good: sound[id]?.[name] ?? usual[name] ?? [],
    blank:
      own.kind === "number" || own.kind === "name"
        ? blank[own.blank]
        : role === "list" || role === "units"
          ? "as if left out"
          : "",
    zero:
      isNumber && own.zeroIsTold
        ? "told"
        : own.kind === "repeats" && !takesZero
          ? "told"
          : takesZero && role === "number"
            ? "a number"
            : "as blank",
    wrong: role === "number" ? wrongOf(id, name) : [],
    ...(own.optional ? { optional: true } : {}),
    ...(own.kind === "repeats" ? { repeats: true } : {}),
    ...(isNumber && !own.optional && (own.otherwise !== undefined || own.blank === "left out")
      ? { leftOut: true }
      : {}),
    ...(withUnits.includes(`${id}.${name}`) ? { inUnits: true } : {}),
  };
}

/** WORKING is tried with the arguments of FLOW after the name. */
const flowAgain = ["area", "pressure"].map((name) => ({
  ...argumentOf("FLOW", name, rules.FLOW?.arguments[name] as RuleArgument),
  blank: "" as const,
}));

export const contracts: readonly Contract[] = worksheetFunctions.map(({ id }) => {
  const rule = rules[id];
  if (!rule) throw new Error(`no rule for ${id}`);
  const own = Object.entries(rule.arguments).map(([name, each]) => argumentOf(id, name, each));
  return {
    id,
    ...((rule.width ?? 1) > 1 ? { cells: rule.width as number } : {}),
    ...(rule.table && id !== "WORKING" ? { table: true } : {}),
    arguments: id === "WORKING" ? [own[0] as Argument, ...flowAgain] : own,
  };
});

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
