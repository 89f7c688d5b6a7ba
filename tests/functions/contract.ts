import type { Matrix } from "./call";

/**
 * What each worksheet function does with each of its arguments, written down apart from the code.
 * The tests of shapes, blanks, bad cells and left-out arguments run over this list.
 */
export interface Argument {
  readonly name: string;
  /** "number" and "name": one cell a row. "list": a column of the Boxes sheet. "units": one word. */
  readonly role: "number" | "name" | "list" | "units";
  /** Three sound cells, one a row; for a list its whole column. */
  readonly good: readonly unknown[];
  /** What a blank cell among sound ones makes of its row: "", an error code, a word, or nothing. */
  readonly blank: "" | "#N/A" | "#VALUE!" | "not measured" | "as if left out";
  /** Numbers that cannot be meant, and a word of the message that says so. */
  readonly wrong?: readonly (readonly [number, string])[];
  readonly optional?: true;
}

export interface Contract {
  readonly id: string;
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

const constant = optional(number("constant", [1.05, 1.07, 1.1], "#N/A"));
const low = optional(number("low", [1, 1.5, 2], "#N/A"));
const high = optional(number("high", [8, 7, 6], "#N/A"));
const labels = list("labels", ["A", "B", "C", "A"]);
const areas = list("areas", [4, 12, 24, 100]);
const box = optional(name("box", ["one", "one", "two"], "#VALUE!"));
const boxes = optional(list("boxes", ["one", "one", "one", "two"]));

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
    ],
  },
  {
    id: "VERDICT",
    arguments: [
      number("flow", [55, 45, 100], "not measured", []),
      number("required", [50, 50, 100], "#N/A", []),
      optional(name("status", ["in range", "in range", "above"], "as if left out")),
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

/** Every function with every argument that holds one cell a row. */
export const rowArguments = contracts.flatMap((contract) =>
  contract.arguments
    .filter(({ role }) => role === "number" || role === "name")
    .map((argument) => [contract.id, argument.name, contract, argument] as const),
);

export const numberArguments = rowArguments.filter(([, , , { role }]) => role === "number");
