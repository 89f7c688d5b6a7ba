import { numberText } from "../cells";
import { type Formula, type Unit, unitIn } from "../formulas";
import type { Expression, Operator } from "./expression";
import { oneValue } from "./one-value";
import { strength } from "./parse";
import { programOf } from "./program";

/** A formula as a reviewer reads it. */
interface Typeset {
  /** In symbols: `Q = K · A · √ΔP`. Steps stand before the result, one a line. */
  readonly symbols: readonly string[];
  /** With one row's numbers: `Q = 1.07 · 24 · √4`. Empty when no numbers were given. */
  readonly numbers: readonly string[];
  /** What each symbol means, with its unit: `ΔP  pressure across the opening, Pa`. */
  readonly legend: readonly string[];
}

/** The typeset reader: a formula in symbols, then with the numbers of one row in it. */
export function typeset(
  formula: Formula,
  system: "ip" | "si" = "ip",
  given?: Readonly<Record<string, number>>,
): Typeset {
  const program = programOf(formula);
  const steps = formula.steps ?? [];
  const shown = new Map(
    [...formula.symbols, ...steps].map((quantity) => [quantity.name, quantity.shown]),
  );
  const lines = (names: ReadonlyMap<string, string>) => [
    ...program.steps.map((step, i) => `${steps[i]?.shown} = ${print(step.tree, names, 0)}`),
    `${formula.result.shown} = ${print(program.result, names, 0)}`,
  ];
  return {
    symbols: lines(shown),
    numbers: given ? lines(numbersOf(formula, given)) : [],
    legend: [...formula.symbols, ...steps].map(
      ({ shown: symbol, meaning, unit }) => `${symbol}  ${meaning}${unitText(unit, system)}`,
    ),
  };
}

/** Every symbol's and step's number as text; steps are computed as the columns reader does. */
function numbersOf(formula: Formula, given: Readonly<Record<string, number>>): Map<string, string> {
  const texts = new Map(Object.entries(given).map(([name, value]) => [name, round(value)]));
  const steps = formula.steps ?? [];
  steps.forEach((step, i) => {
    const upToHere = { ...formula, steps: steps.slice(0, i), text: step.text };
    texts.set(step.name, round(oneValue(upToHere, given)));
  });
  return texts;
}

function unitText(unit: Unit, system: "ip" | "si"): string {
  const text = unitIn(unit, system);
  return text === "1" ? "" : `, ${text}`;
}

/** Six significant digits: enough to follow the sum, short enough to read. */
function round(value: number): string {
  return written(Number(value.toPrecision(6)));
}

/** All digits, for the constants of a formula. */
function written(value: number): string {
  if (value !== 0 && (Math.abs(value) < 1e-4 || Math.abs(value) >= 1e9)) {
    const [digits, power] = value.toExponential().split("e") as [string, string];
    return `${digits}·10${superscript(Number(power))}`.replace("-", "−");
  }
  return numberText(value);
}

const raised: Record<string, string> = {
  "-": "⁻",
  "0": "⁰",
  "1": "¹",
  "2": "²",
  "3": "³",
  "4": "⁴",
  "5": "⁵",
  "6": "⁶",
  "7": "⁷",
  "8": "⁸",
  "9": "⁹",
  ".": "·",
};

function superscript(power: number): string {
  return [...String(power)].map((character) => raised[character] ?? character).join("");
}

const signs: Record<Operator, string> = {
  "+": " + ",
  "-": " − ",
  "*": " · ",
  "/": " / ",
  "^": "^",
  "<": " < ",
  "<=": " ≤ ",
  ">": " > ",
  ">=": " ≥ ",
};

function print(tree: Expression, names: ReadonlyMap<string, string>, outer: number): string {
  switch (tree.kind) {
    case "number":
      return tree.value === Math.PI ? "π" : token(written(tree.value), outer);
    case "symbol":
      return token(names.get(tree.name) ?? tree.name, outer);
    case "negate":
      return closed(`−${print(tree.of, names, 4)}`, 2, outer);
    case "call":
      return printCall(tree, names, outer);
    case "choice":
      return closed(
        `${print(tree.yes, names, 1)} if ${print(tree.when, names, 0)}, otherwise ${print(tree.no, names, 0)}`,
        0,
        outer,
      );
    case "binary":
      return printBinary(tree, names, outer);
  }
}

function printCall(
  tree: Expression & { kind: "call" },
  names: ReadonlyMap<string, string>,
  outer: number,
): string {
  const inside = print(tree.of, names, 0);
  const simple = tree.of.kind === "symbol" || tree.of.kind === "number";
  switch (tree.name) {
    case "sqrt":
      // As the base of a power it is closed: √x² would be read as the root of x².
      return closed(`√${simple ? token(inside, strength["^"] + 1) : `(${inside})`}`, 5, outer);
    case "abs":
      return `|${inside}|`;
    case "floor":
      return `⌊${inside}⌋`;
    case "log":
      return `ln(${inside})`;
    case "exp":
      return `exp(${inside})`;
  }
}

function printBinary(
  tree: Expression & { kind: "binary" },
  names: ReadonlyMap<string, string>,
  outer: number,
): string {
  const own = strength[tree.operator];
  if (tree.operator === "^" && tree.right.kind === "number") {
    const base = print(tree.left, names, own + 1);
    return closed(`${base}${superscript(tree.right.value)}`, own, outer);
  }
  // A tower of powers is read from the right, so a power as the base is closed too.
  const left = print(tree.left, names, tree.operator === "^" ? own + 1 : own);
  const right = print(tree.right, names, own + 1);
  return closed(`${left}${signs[tree.operator]}${right}`, own, outer);
}

/** A name or a number: a negative one binds like a minus sign, a power of ten like a product. */
function token(text: string, outer: number): string {
  const own = text.startsWith("−") ? strength["-"] : text.includes("·10") ? strength["*"] : outer;
  return closed(text, own, outer);
}

function closed(text: string, own: number, outer: number): string {
  return own < outer ? `(${text})` : text;
}
