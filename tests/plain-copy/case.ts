import type { CellError } from "../../src/cells";

/** What stands in a cell; null for a blank one. */
export type CellContent = number | string | boolean | CellError | null;

/**
 * An argument: what a cell of its own holds, several cells side by side, a range of the sheet of
 * boxes, or (undefined) nothing between the commas.
 */
export type Argument =
  | CellContent
  | { readonly beside: readonly CellContent[] }
  | { readonly range: BoxRange }
  | undefined;

export interface Case {
  readonly id: string;
  readonly arguments: readonly Argument[];
  /** More than one thing is wrong: which of the errors comes out is left to the program. */
  readonly isTwiceWrong: boolean;
}

/** Invented openings: two boxes, a row not filled in, and areas that will not do. */
export const boxCells: readonly (readonly CellContent[])[] = [
  ["Label", "Area", "Box", "Areas with flaws"],
  ["A", 4, "one", 4],
  ["B", 12, "one", "twelve"],
  ["C", 24, "one", 24],
  [null, null, null, null],
  ["A", 16, "two", { error: "#DIV/0!" }],
  ["D 2", 16.0000000001, "Two", 16],
  ["E", 48, "two", -3],
];

export const boxRanges = {
  labels: "Boxes!$A$2:$A$8",
  areas: "Boxes!$B$2:$B$8",
  boxes: "Boxes!$C$2:$C$8",
  flawed: "Boxes!$D$2:$D$8",
  fewLabels: "Boxes!$A$2:$A$4",
  fewAreas: "Boxes!$B$2:$B$4",
} as const;
export type BoxRange = keyof typeof boxRanges;

/** The cells of a range of the sheet of boxes. */
export function inRange(range: BoxRange): CellContent[] {
  const [, column = "", top, bottom] = /\$(.)\$(\d):\$.\$(\d)/.exec(boxRanges[range]) ?? [];
  const at = "ABCD".indexOf(column);
  return boxCells.slice(Number(top) - 1, Number(bottom)).map((cells) => cells[at] ?? null);
}

export const error: CellError = { error: "#DIV/0!" };
export const list = (range: BoxRange): Argument => ({ range });
export const beside = (...cells: readonly CellContent[]): Argument => ({ beside: cells });

/** Which cases of a function are tried. */
export interface Subject {
  readonly id: string;
  /** Sound arguments that reach every rule. */
  readonly base: readonly Argument[];
  /** What is tried in place of each argument of the base, beside what may stand in any cell. */
  readonly tried: readonly (readonly Argument[])[];
  /** Further rows of arguments. */
  readonly further?: readonly (readonly Argument[])[];
}

/** Every combination of these. */
export function combined(...values: readonly (readonly Argument[])[]): Argument[][] {
  return values.reduce<Argument[][]>(
    (rows, each) => rows.flatMap((row) => each.map((value) => [...row, value])),
    [[]],
  );
}

/** What may stand in the cell of any argument. */
const awkward: readonly Argument[] = [null, " ", "soon", "5", -1, 0, error, undefined];
/** Two arguments that are wrong together. */
const twoFaults = [
  ...combined([null, "soon"], [null, "soon"]),
  [null, error],
  [error, null],
] as const;

/** Whether an argument stands in one cell. */
export function isSingle(argument: Argument): argument is CellContent | undefined {
  return typeof argument !== "object" || argument === null || "error" in argument;
}

export function casesOf({ id, base, tried, further = [] }: Subject): Case[] {
  const once: (readonly Argument[])[] = [base, ...further];
  const twice: (readonly Argument[])[] = [];
  base.forEach((own, i) => {
    const anywhere = isSingle(own) ? awkward : [];
    for (const value of [...(tried[i] ?? []), ...anywhere]) {
      // An error for the units also spoils the limits that go by them.
      const isTwice = own === "ip" && value === error;
      (isTwice ? twice : once).push(base.with(i, value));
    }
    for (let j = i + 1; j < base.length; j++)
      if (isSingle(own) && isSingle(base[j]))
        for (const [first, second] of twoFaults) twice.push(base.with(i, first).with(j, second));
  });
  const seen = new Set<string>();
  return [once, twice].flatMap((rows, at) =>
    rows.flatMap((row) => {
      const key = JSON.stringify(row.map((each) => (each === undefined ? 0 : [each])));
      if (seen.has(key)) return [];
      seen.add(key);
      return [{ id, arguments: row, isTwiceWrong: at === 1 }];
    }),
  );
}
