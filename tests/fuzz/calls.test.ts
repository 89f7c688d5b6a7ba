import { describe, expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import { whole } from "../setup/whole";
import { Random } from "./random";

const calls = whole ? 1_000_000 : 20_000;
const seeds = 20;

const numbers = [0, -0, 1, -1, 4, 24, 0.5, 1e-300, 5e-324, 1e15, 1e308, -1e308, 46_000];
const nonsense = ["abc", "4 Pa", "0x10", "1e5", "\u0000", "‮4", "24,5", "x".repeat(300), "=1+1"];
const words = [
  "ip",
  "si",
  "62.2-2016",
  "IRC-2021",
  "bathroom",
  "kitchen",
  "on demand",
  "yes",
  "A+B",
];
const others = [null, undefined, "", "  ", true, false, { code: "#DIV/0!", message: "" }];
const odd = [...others, {}, { type: "Double", basicValue: 3 }, [], new Date(0)];

type Draw = (random: Random) => unknown;
const anything: Draw = (random) =>
  random.of([numbers, numbers, nonsense, words, words, others, odd] as const)[random.below(7)] ??
  null;
const nothingOfUse: Draw = (random) => random.of(nonsense);

function argument(random: Random, isMatrix: boolean, draw: Draw): unknown {
  if (!isMatrix || random.next() < 0.05) return draw(random);
  const [rows, cols] = random.of([
    [1, 1],
    [1, 1],
    [3, 1],
    [1, 3],
    [2, 2],
    [4, 1],
  ] as const);
  return Array.from({ length: rows }, () => Array.from({ length: cols }, () => draw(random)));
}

/** Calls a function as a host does; all its cells, or the error that it throws. */
function called(random: Random, draw: Draw) {
  const own = random.of(worksheetFunctions);
  const args = own.parameters.map(({ dimensionality, optional, repeating }) => {
    const isMatrix = dimensionality === "matrix";
    if (repeating)
      return Array.from({ length: random.below(4) }, () => argument(random, isMatrix, draw));
    return optional && random.next() < 0.5 ? null : argument(random, isMatrix, draw);
  });
  const invocation = { functionName: own.id, isInValuePreview: false };
  try {
    const given = own.call(...args, invocation);
    return { own, args, cells: Array.isArray(given) ? given.flat() : [given] };
  } catch (error) {
    return { own, args, error };
  }
}

const isProblem = (value: unknown) =>
  typeof value === "object" &&
  value !== null &&
  /^#(VALUE!|N\/A|NUM!|DIV\/0!|REF!|NULL!|NAME\?)$/.test(
    String((value as { code?: unknown }).code),
  );

/** What is wrong with a cell that a function gave; "" where nothing is. */
function faultOf(cell: unknown, isFlow: boolean): string {
  if (typeof cell === "number") {
    if (!Number.isFinite(cell)) return `${cell}`;
    if (Object.is(cell, -0)) return "−0";
    return isFlow && cell < 0 ? "a negative flow" : "";
  }
  if (typeof cell === "string")
    return /\b(NaN|Infinity|undefined|null|\[object)/.test(cell) ? cell : "";
  return typeof cell === "boolean" || isProblem(cell) ? "" : `${JSON.stringify(cell)}`;
}

describe(`${calls.toLocaleString("en")} calls of the worksheet functions with whatever a cell may hold`, () => {
  it("give numbers, texts and errors with a code, and nothing else", () => {
    for (let seed = 1; seed <= seeds; seed++) {
      const random = new Random(seed);
      for (let i = 0; i < calls / seeds; i++) {
        const { own, args, cells = [], error } = called(random, anything);
        const told = () => `seed ${seed}, call ${i}: ${own.id}(${JSON.stringify(args)})`;
        if (error !== undefined && !isProblem(error))
          expect.fail(`${told()} threw ${String((error as Error).stack)}`);
        for (const cell of cells) {
          const fault = faultOf(cell, own.id === "FLOW" || own.id.endsWith("_FLOW"));
          if (fault !== "") expect.fail(`${told()} gave ${fault}`);
        }
      }
    }
  }, 900_000);

  it("give no number where every argument is nonsense", () => {
    const random = new Random(99);
    for (let i = 0; i < calls / 20; i++) {
      const { own, args, cells = [] } = called(random, nothingOfUse);
      const hasArguments = args.some((one) => (Array.isArray(one) ? one.length > 0 : one !== null));
      const number = cells.find((cell) => typeof cell === "number");
      if (hasArguments && number !== undefined)
        expect.fail(`${own.id}(${JSON.stringify(args)}) gave ${number}`);
    }
  }, 900_000);
});
