import { ERF } from "@formulajs/formulajs";
import { type CellError, type CellValue, errors } from "../../cells";
import { finite } from "../coerce";
import { power } from "../compile/operators";
import { fromLibrary } from "./library";
import type { Natives } from "./natives";

export function addMath(to: Natives): void {
  const plain: readonly [string, (x: number) => number][] = [
    ["ABS", Math.abs],
    ["SIGN", Math.sign],
    ["EXP", Math.exp],
    ["SIN", sine],
    ["COS", cosine],
    ["TAN", tangent],
    ["ASIN", Math.asin],
    ["ACOS", Math.acos],
    ["ATAN", Math.atan],
    ["SINH", Math.sinh],
    ["COSH", Math.cosh],
    ["TANH", Math.tanh],
    ["SQRT", Math.sqrt],
    ["INT", Math.floor],
    ["DEGREES", (x) => (x * 180) / Math.PI],
    ["RADIANS", (x) => (x * Math.PI) / 180],
    ["ASINH", Math.asinh],
    ["ACOSH", Math.acosh],
    ["ATANH", Math.atanh],
    ["ACOT", (x) => Math.PI / 2 - Math.atan(x)],
    ["ACOTH", (x) => Math.atanh(1 / x)],
    ["EVEN", (x) => Math.sign(x) * 2 * Math.ceil(Math.abs(x) / 2)],
    ["ODD", (x) => (x < 0 ? -1 : 1) * (2 * Math.ceil((Math.abs(x) + 1) / 2) - 1)],
  ];
  for (const [name, apply] of plain) to.add(name, "n", (x) => finite(apply(x)));
  // One over another: beyond what an angle can tell, and at the poles, there is no result.
  const inverses = { COT: tangent, CSC: sine, SEC: cosine };
  for (const [name, of] of Object.entries(inverses))
    to.add(name, "n", (x) =>
      Math.abs(x) >= 2 ** 27 ? errors.num : of(x) === 0 ? errors.div0 : 1 / of(x),
    );
  const hyperbolic = { COTH: Math.tanh, CSCH: Math.sinh, SECH: Math.cosh };
  for (const [name, of] of Object.entries(hyperbolic))
    to.add(name, "n", (x) => (of(x) === 0 ? errors.div0 : 1 / of(x)));
  to.add("PI", "", () => Math.PI)
    .add("LN", "n", (x) => logarithm(x))
    .add("LOG10", "n", (x) => (x > 0 ? Math.log10(x) : errors.num))
    .add("LOG", "n n?", (x, base = 10) => logToBase(x, base))
    .add("POWER", "n n", power)
    .add("ATAN2", "n n", (x, y) => (x === 0 && y === 0 ? errors.div0 : Math.atan2(y, x)))
    .add("MOD", "n n", (x, y) =>
      y === 0 ? errors.div0 : finite(x % y === 0 || x < 0 === y < 0 ? x % y : (x % y) + y),
    )
    .add("QUOTIENT", "e e", (x, y) => (y === 0 ? errors.div0 : Math.trunc(x / y)))
    .add("ROUND", "n n", (x, digits) => rounded(x, digits, halfAway))
    .add("ROUNDUP", "n n", (x, digits) => rounded(x, digits, awayFromZero))
    .add("ROUNDDOWN", "n n", (x, digits) => rounded(x, digits, Math.trunc))
    .add("TRUNC", "n n?", (x, digits = 0) => rounded(x, digits, Math.trunc))
    .add("MROUND", "e e", mround)
    .add("CEILING", "n n", (x, step) => toStep(x, step, "up"))
    .add("FLOOR", "n n", (x, step) => toStep(x, step, "down"))
    .add("ERF", "e e?", (low, high) => {
      const at = (x: number) => fromLibrary(ERF(x));
      const [a, b] = [at(low), high === undefined ? undefined : at(high)];
      return b === undefined ? a : finite(Number(b) - Number(a));
    })
    .add("CEILING.PRECISE ISO.CEILING ECMA.CEILING", "n n?", (x, step = 1) =>
      steps(x, Math.abs(step), Math.ceil),
    )
    .add("FLOOR.PRECISE", "n n?", (x, step = 1) => steps(x, Math.abs(step), Math.floor))
    .add("CEILING.MATH", "n n? n?", (x, step = 1, mode = 0) =>
      steps(x, Math.abs(step), x < 0 && mode !== 0 ? Math.floor : Math.ceil),
    )
    .add("FLOOR.MATH", "n n? n?", (x, step = 1, mode = 0) =>
      steps(x, Math.abs(step), x < 0 && mode !== 0 ? Math.ceil : Math.floor),
    );
}

/** A quarter turn in 64 binary places, as Excel reduces an angle by it: in parts whose multiples are exact. */
const quarter = [0x3243f6 * 2 ** -21, 0x2a2216 * 2 ** -43, 0x8c235 * 2 ** -63];

/** An angle less its whole quarter turns, and how many of them. */
function reduced(x: number): [rest: number, quarters: number] {
  const turns = Math.abs(x) < 2 ** 27 ? Math.round(x / (Math.PI / 2)) : 0;
  return [quarter.reduce((rest, part) => rest - turns * part, x), turns & 3];
}

function sine(x: number): number {
  const [rest, quarters] = reduced(x);
  const value = quarters % 2 === 0 ? Math.sin(rest) : Math.cos(rest);
  return quarters > 1 ? -value : value;
}

function cosine(x: number): number {
  const [rest, quarters] = reduced(x);
  const value = quarters % 2 === 0 ? Math.cos(rest) : Math.sin(rest);
  return quarters === 1 || quarters === 2 ? -value : value;
}

function tangent(x: number): number {
  const [rest, quarters] = reduced(x);
  return quarters % 2 === 0 ? Math.tan(rest) : -1 / Math.tan(rest);
}

function logarithm(x: number): CellValue {
  return x > 0 ? Math.log(x) : errors.num;
}

function logToBase(x: number, base: number): CellValue {
  if (x <= 0 || base <= 0) return errors.num;
  if (base === 1) return errors.div0;
  if (base === 10) return Math.log10(x);
  return base === 2 ? Math.log2(x) : Math.log(x) / Math.log(base);
}

/** 2.5 gives 3 and -2.5 gives -3. */
function halfAway(x: number): number {
  return Math.sign(x) * Math.round(Math.abs(x));
}

function awayFromZero(x: number): number {
  return x < 0 ? Math.floor(x) : Math.ceil(x);
}

/**
 * Rounds at a decimal place. The number is taken as the 15 digits a user sees, so that 1.005 at
 * two places gives 1.01 and not what its binary neighbour would.
 */
export function rounded(x: number, places: number, how: (x: number) => number): number | CellError {
  const digits = Math.trunc(places);
  if (x === 0 || digits > 300) return x;
  if (digits < -308) return 0;
  const scaled = shift(x, digits);
  if (!Number.isFinite(scaled)) return x;
  return finite(shift(how(Number(scaled.toPrecision(15))), -digits));
}

/** x times a power of ten, by its decimal digits. */
function shift(x: number, places: number): number {
  const [digits = "0", power = "0"] = x.toExponential().split("e");
  return Number(`${digits}e${Number(power) + places}`);
}

function mround(x: number, step: number): CellValue {
  if (step === 0 || x === 0) return 0;
  if (x > 0 !== step > 0) return errors.num;
  return steps(x, step, halfAway);
}

function toStep(x: number, step: number, way: "up" | "down"): CellValue {
  if (step === 0) return way === "up" || x === 0 ? 0 : errors.div0;
  if (x > 0 && step < 0) return errors.num;
  return steps(x, step, way === "up" ? Math.ceil : Math.floor);
}

function steps(x: number, step: number, how: (x: number) => number): CellValue {
  if (step === 0) return 0;
  // 15 digits again: 4.2 / 0.1 must count as 42 steps.
  const count = how(Number((x / step).toPrecision(15)));
  return finite(Number((count * step).toPrecision(15)));
}
