import { oneValue, typeset } from "../../algebra";
import { significant } from "../../cells";
import type { System } from "../../editions";
import { type Formula, type Source, type Unit, unitIn } from "../../formulas";
import type { Sum } from "./rule";
import { sourceText } from "./source-text";

/** Six significant digits, as the formulas are typeset. */
export function sixDigits(value: number): string {
  return significant(value);
}

/** A blank for what too little was read to tell. */
export const blankIfUnknown = (value: number): number | "" => (Number.isNaN(value) ? "" : value);

export const saidIfKnown = (value: number): string =>
  Number.isNaN(value) ? "unknown" : sixDigits(value);

/** A number with its unit; the unit stays away where only the job's unit system would tell it. */
export function withUnit(value: number, unit: Unit, system: System | undefined): string {
  if (system === undefined && typeof unit !== "string") return sixDigits(value);
  const text = unitIn(unit, system ?? "ip");
  return text === "1" || text === "" ? sixDigits(value) : `${sixDigits(value)} ${text}`;
}

/** A formula in symbols, with numbers, and what it comes to; steps stand before the result. */
export interface SaidSum {
  readonly id: string;
  readonly title: string;
  readonly symbols: readonly string[];
  /** Empty where no numbers are at hand. */
  readonly numbers: readonly string[];
  /** `Q = 51.36 cfm`, one for each line of `numbers`. */
  readonly results: readonly string[];
  /** What each symbol means. */
  readonly legend: readonly string[];
}

export function saidSum({ formula, given }: Sum, system: System | undefined): SaidSum {
  const { symbols, numbers, legend } = typeset(formula, system ?? "ip", given);
  const steps = formula.steps ?? [];
  const upTo = steps.map((step, i) => ({
    ...step,
    value: oneValue({ ...formula, steps: steps.slice(0, i), text: step.text }, given),
  }));
  const all = [...upTo, { ...formula.result, value: oneValue(formula, given) }];
  return {
    id: formula.id,
    title: formula.title,
    symbols,
    numbers,
    results: all.map(({ shown, unit, value }) => `${shown} = ${withUnit(value, unit, system)}`),
    legend,
  };
}

/** A formula without numbers. */
export function symbolsOnly(formula: Formula, system: System | undefined): SaidSum {
  const { symbols, legend } = typeset(formula, system ?? "ip");
  return { id: formula.id, title: formula.title, symbols, numbers: [], results: [], legend };
}

/** `Q = K · A · √ΔP = 1.07 · 24 · √4 = 51.36 cfm`, a line for each step. */
export function sumLines({ symbols, numbers, results }: SaidSum): string[] {
  return symbols.map((line, i) =>
    [line, numbers[i], results[i]]
      .filter((part) => part !== undefined)
      .map((part, k) => (k === 0 ? part : part.slice(part.indexOf(" = ") + 3)))
      .join(" = "),
  );
}

/** Where a rule comes from, and how far it has been traced. */
export interface SaidSource extends Source {
  /** `IRC 2021, table M1505.4.4 (two sources)`. */
  readonly text: string;
}

export function saidSource(source: Source): SaidSource {
  return { ...source, text: sourceText(source) };
}
