import { InputError } from "../../cells";
import { areaLimitOf, areaOf, type Job, openingsNamed, unboxedBudget } from "../../job";
import type { Budget } from "../../spread";
import { sentenceOf } from "./in-words";

/** A fan read through two openings, or why the flow without the box cannot be told from them. */
export type TwoOpenings =
  | { readonly openings: readonly [string, string]; readonly budget: Budget }
  | { readonly problem: string };

/**
 * The flow without the box from a fan row's two readings; undefined where the row has one reading.
 * Sizes of no stated tolerance count as exact, as in the spread of one reading.
 */
export function twoOpenings(job: Job, i: number): TwoOpenings | undefined {
  const { fans, settings } = job;
  if (!fans || fans.isByInstrument(i)) return undefined;
  const { table } = fans;
  const pressure2 = table.number("pressure2", i);
  if (Number.isNaN(pressure2)) return undefined;
  const labels = [table.text("openings", i), table.text("openings2", i)] as const;
  try {
    const budget = unboxedBudget({
      first: {
        area: usable(fans.area[i] as number, "the first open area"),
        areaLimit: limitOf(job, i, labels[0], table.number("areaLimit", i)),
        pressure: usable(fans.pressure[i] as number, "the first pressure"),
      },
      second: {
        area: usable(areaNamed(job, i, labels[1]), "the second open area"),
        areaLimit: limitOf(job, i, labels[1], Number.NaN),
        pressure: usable(pressure2, "the second pressure"),
      },
      constant: fans.constant[i] as number,
      constantSpread: settings.constantSpread,
      ...settings.meter,
    });
    if (!(budget.value > 0))
      return { problem: "The two readings do not fit one fan: read both again." };
    return { openings: labels, budget };
  } catch (problem) {
    if (!(problem instanceof InputError)) throw problem;
    return { problem: sentenceOf(problem) };
  }
}

function usable(value: number, what: string): number {
  if (value > 0) return value;
  throw new InputError(Number.isNaN(value) ? `${what} is not known` : `${what} is not above 0`);
}

/** The area of the second openings: as stored in the row, or from the Boxes sheet. */
function areaNamed({ fans, boxes }: Job, i: number, label: string): number {
  const stored = fans?.table.number("area2", i) ?? Number.NaN;
  if (!Number.isNaN(stored)) return stored;
  const openings = boxes?.openings(fans?.table.text("box", i) ?? "");
  return openings ? areaOf(openingsNamed(label, openings)) : Number.NaN;
}

/** Half width of an open area: as stored, or that of the openings named. */
function limitOf({ fans, boxes }: Job, i: number, label: string, stored: number): number {
  return stored >= 0 ? stored : areaLimitOf(boxes, fans?.table.text("box", i) ?? "", label);
}
