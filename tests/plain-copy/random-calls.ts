import fc from "fast-check";
import { worksheetFunctions } from "../../functions";
import { type CellValue, columnLetters } from "../../src/cells";
import { codes, ductKinds, duties, editions, fanKinds, roomKinds } from "../../src/editions";
import { type CellSpec, Workbook } from "../../src/workbook";
import { type Argument, type Contract, contracts } from "../functions/contract";

/** Rows of random calls for each function. */
export const callsEach = 40;
/** Rows that one call takes on its sheet: as many pairs as a call of pairs reads. */
export const rowsEach = 5;

const listSheet = "Lists";
/** Columns of the list sheet; the labels of box one and two, of which one area is a text. */
const lists: Readonly<Record<string, readonly CellValue[]>> = {
  labels: ["A", "B", "C", "a", " b", "D 1", null, "E", "C", "F"],
  areas: [4, 12, 24, 100, 36.5, 7.25, 3, "none", 64, 0],
  boxes: ["one", "one", "one", "two", "Two ", "two", "two", "one", "two", "one"],
  ratings: [110, 50, null, 80, 140, 300, 20, 65, null, 90],
  deficits: [80, null, 20, 30.5, null, null, null, null, null, null],
};

const someEditions = [...editions, ...codes].flatMap(({ id, title, aliases }) => [
  id,
  title,
  `ASHRAE ${id}`,
  id.toLowerCase().replace("-", " "),
  ...aliases,
]);

/** Spellings to try, by the name of the argument. */
const words: Readonly<Record<string, readonly string[]>> = {
  edition: someEditions,
  programme: ["ENERGY-STAR-3.1", "energy star", "ENERGY STAR v3.1", "62.2-2016"],
  room: [...roomKinds, "WC", "Half bath", "range hood", "cellar"],
  duty: [...duties, "intermittent", "On-Demand", "cont", "never"],
  fanKind: [...fanKinds, "HRV", "bath fan", "inline", "tower"],
  ductKind: [...ductKinds, "rigid", "Flexible", "paper"],
  openings: ["A", "A+C", "b, a", "C & A", "A and B", "d 1; b", "A+A", "Z", "E", "+", "a+B+c"],
  box: ["one", "TWO", " two ", "three"],
  status: ["in range", "In Range", "above", "below", "reversed", "fine"],
  method: ["table", "Equation", "larger", "bounded", "guess"],
  work: ["new", "Existing", "old"],
};
const answers = ["yes", "No", "y", "n", "TRUE", "perhaps"];

const odd: readonly CellValue[] = [
  null,
  null,
  "",
  " ",
  "abc",
  -1.5,
  0,
  { error: "#N/A" },
  { error: "#DIV/0!" },
];

/** Any sound value of an argument, give or take. */
function sound(argument: Argument): fc.Arbitrary<CellValue> {
  if (argument.role === "units") return fc.constantFrom("ip", "IP", "ip", "si", "SI ", "");
  const good = fc.constantFrom(...(argument.good as CellValue[]));
  if (argument.role === "name") {
    const others = fc.constantFrom(...(words[argument.name] ?? answers));
    return fc.oneof({ weight: 2, arbitrary: good }, { weight: 1, arbitrary: others });
  }
  return fc.oneof(
    { weight: 2, arbitrary: good },
    fc
      .tuple(fc.constantFrom(...(argument.good as CellValue[])), fc.integer({ min: 50, max: 200 }))
      .map(([good, percent]) =>
        typeof good === "number" ? Math.round(good * percent) / 100 : good,
      ),
  );
}

/** What stands in one cell of an argument. */
function cellOf(argument: Argument, oddness: number): fc.Arbitrary<CellValue> {
  const wrong = (argument.wrong ?? []).map(([value]) => value);
  return fc.oneof(
    { weight: 100 - oddness, arbitrary: sound(argument) },
    { weight: oddness, arbitrary: fc.constantFrom(...odd, ...wrong) },
  );
}

interface RandomCall {
  readonly cells: readonly (readonly CellValue[])[];
  /** Arguments written as they are, and those left out. */
  readonly literal: readonly boolean[];
  readonly leftOut: readonly boolean[];
}

function callOf(contract: Contract): fc.Arbitrary<RandomCall> {
  const { arguments: args } = contract;
  return fc.constantFrom(0, 0, 25).chain((oddness) =>
    fc.record({
      cells: fc.tuple(
        ...args.map((argument) => {
          const count = argument.role === "pairs" ? rowsEach : argument.repeats ? 3 : 1;
          return fc.array(cellOf(argument, oddness), { minLength: count, maxLength: count });
        }),
      ),
      literal: fc.tuple(...args.map(() => fc.integer({ min: 0, max: 9 }).map((n) => n === 0))),
      leftOut: fc.tuple(
        ...args.map(({ optional }) =>
          fc.integer({ min: 0, max: 2 }).map((n) => n === 0 && optional === true),
        ),
      ),
    }),
  );
}

function literalText(value: CellValue): string | undefined {
  if (typeof value === "number") return String(value);
  return typeof value === "string" ? `"${value}"` : undefined;
}

/** The functions to try: those that give more than a text to read. */
export const tried: readonly Contract[] = contracts.filter(
  ({ id, arguments: args }) => !["WORKING", "SOURCE", "EDITIONS"].includes(id) && args.length > 0,
);

/** A workbook with a sheet of random calls for each function; the same one for the same seed. */
export function randomCalls(from = 4200): Workbook {
  const workbook = Workbook.create();
  tried.forEach((contract, seed) => {
    const calls = fc.sample(callOf(contract), { seed: from + seed, numRuns: callsEach });
    const rows = calls.flatMap((call, i) => rowsOf(contract, call, 1 + i * rowsEach));
    workbook.addSheet(contract.id, { rows: [headings(contract), ...rows] });
  });
  const columns = Object.values(lists);
  workbook.addSheet(listSheet, {
    rows: [
      Object.keys(lists).map((value) => ({ value })),
      ...Array.from({ length: 10 }, (_, i) =>
        columns.map((column): CellSpec => ({ value: column[i] ?? null })),
      ),
    ],
  });
  return workbook;
}

/** Cells that a call fills side by side. */
export const widthOf = (contract: Contract) => contract.cells ?? 1;

function headings(contract: Contract): CellSpec[] {
  const names = contract.arguments.map(({ name }) => name);
  return [...Array<string>(widthOf(contract)).fill(contract.id), ...names].map((value) => ({
    value,
  }));
}

function rowsOf(contract: Contract, call: RandomCall, top: number): (CellSpec | null)[][] {
  const width = widthOf(contract);
  const rows: (CellSpec | null)[][] = Array.from({ length: rowsEach }, () =>
    Array<CellSpec | null>(width).fill(null),
  );
  const given = contract.arguments.map((argument, i) => {
    const cells = call.cells[i] ?? [];
    if (argument.role === "list") {
      const column = columnLetters(Object.keys(lists).indexOf(argument.name));
      return call.leftOut[i] ? "" : `${listSheet}!$${column}$2:$${column}$11`;
    }
    const left = rows[0]!.length;
    cells.forEach((value, k) => {
      const row = argument.role === "pairs" ? rows[k]! : rows[0]!;
      row[argument.role === "pairs" ? left : left + k] = { value };
    });
    for (const row of rows) while (row.length < rows[0]!.length) row.push(null);
    if (call.leftOut[i]) return "";
    const literal = call.literal[i] ? literalText(cells[0] ?? null) : undefined;
    if (cells.length === 1 && literal !== undefined) return literal;
    const right = argument.role === "pairs" ? left : left + cells.length - 1;
    const bottom = top + (argument.role === "pairs" ? cells.length - 1 : 0);
    const first = `${columnLetters(left)}${top + 1}`;
    const last = `${columnLetters(right)}${bottom + 1}`;
    return first === last ? first : `${first}:${last}`;
  });
  while (given.at(-1) === "") given.pop();
  const needed = worksheetFunctions
    .find(({ id }) => id === contract.id)!
    .parameters.filter(({ optional }) => !optional).length;
  while (given.length < needed) given.push("");
  const text = `_xldudf_FANROW_${contract.id}(${given.join(",")})`;
  for (let side = 0; side < width; side++)
    rows[0]![side] = {
      formula: width === 1 ? text : `INDEX(${text},1,${side + 1})`,
      value: null,
    };
  return rows;
}
