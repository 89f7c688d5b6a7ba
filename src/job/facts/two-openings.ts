import { InputError } from "../../cells";
import { areaOf, openingsNamed, unboxedBudget } from "../../rules";
import type { Budget } from "../../spread";
import { attempt, type FanRows, type Maybe, type Settings } from "../read";
import { areaLimitOf } from "./area-limit";

/** A fan read through two openings, and the flow that it would move without the box. */
export interface TwoOpenings {
  readonly openings: readonly [string, string];
  readonly budget: Budget;
}

/**
 * The flow without the box from a fan row's two readings, or why it cannot be told from them;
 * undefined where the row has one reading.
 */
export function twoOpeningsOf(
  settings: Settings,
  fans: FanRows,
  i: number,
): Maybe<TwoOpenings> | undefined {
  const { table } = fans;
  const pressure2 = table.number("pressure2", i);
  if (fans.isByInstrument(i) || Number.isNaN(pressure2)) return undefined;
  return attempt(() => {
    const budget = unboxedBudget({
      first: {
        area: usable(fans.area[i] as number, "the first open area"),
        areaLimit: areaLimitOf(fans, i),
        pressure: usable(fans.pressure[i] as number, "the first pressure"),
      },
      second: {
        area: usable(secondArea(fans, i), "the second open area"),
        areaLimit: areaLimitOf(fans, i, "openings2"),
        pressure: usable(pressure2, "the second pressure"),
      },
      ...settings,
      constant: fans.constant[i] as number,
      zeroLimit: settings.zero,
    });
    if (!(budget.value > 0))
      throw new InputError("the two readings do not fit one fan: read both again");
    return { openings: [table.text("openings", i), table.text("openings2", i)], budget };
  });
}

function usable(value: number, what: string): number {
  if (value > 0) return value;
  throw new InputError(Number.isNaN(value) ? `${what} is not known` : `${what} is not above 0`);
}

/** The area of the second openings: as stored in the row, or from the Boxes sheet. */
export function secondArea({ table, boxes }: FanRows, i: number): number {
  const stored = table.number("area2", i);
  if (!Number.isNaN(stored)) return stored;
  const openings = boxes?.openings(table.text("box", i));
  return openings ? areaOf(openingsNamed(table.text("openings2", i), openings)) : Number.NaN;
}
