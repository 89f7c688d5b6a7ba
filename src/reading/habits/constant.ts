import type { Spot } from "../../cells";
import type { SheetBlock } from "../blocks/block";
import type { Book } from "../formulas/book";
import { testsOf } from "../formulas/tests";
import type { Habit, Habits } from "../types";

type Found = Pick<Habits, "constant" | "rounding">;

/** The constant that most rows keep, in the units of the sheet. */
export function constantOf(block: SheetBlock, book: Book): Found {
  const { from } = block;
  const rows: Ratio[] = [];
  const round = from.given.get("area") === undefined && from.given.get("diameter") !== undefined;
  const hole = round ? "diameter" : "area";
  for (let at = 0; at < block.fans.length; at++) {
    const [flow, pressure, area] = [
      block.number(at, "flow"),
      block.number(at, "pressure"),
      block.number(at, hole),
    ];
    if (!flow || !pressure || !area) continue;
    const base = (round ? area ** 2 : area) * Math.sqrt(Math.abs(pressure));
    const half = 0.5 * 10 ** -decimalsOf(flow);
    rows.push({ ratio: flow / base, low: (flow - half) / base, high: (flow + half) / base });
  }
  const { rounding, stated } = fromFormulas(block, book);
  return { constant: habitOf(rows, stated), rounding };
}

/** What one row says of the constant, and what it may be for the digits its flow is written with. */
interface Ratio {
  readonly ratio: number;
  readonly low: number;
  readonly high: number;
}

function decimalsOf(flow: number): number {
  return Math.min(9, /\.(\d+)$/.exec(String(flow))?.[1]?.length ?? 0);
}

/** The roundest constant that agrees with the digits of most rows: flows are written rounded. */
function agreed(rows: readonly Ratio[], near: number): number {
  const close = rows.filter(({ ratio }) => Math.abs(ratio / near - 1) < 0.02);
  const holding = (value: number) =>
    close.filter(({ low, high }) => low <= value && value <= high).length;
  const best = close.reduce((most, row) => (holding(row.low) > holding(most.low) ? row : most));
  const held = close.filter(({ low, high }) => low <= best.low && best.low <= high);
  const [low, high] = [best.low, Math.min(...held.map(({ high }) => high))];
  const middle = (low + high) / 2;
  for (let digits = 2; digits < mostDigits; digits++) {
    const round = Number(middle.toPrecision(digits));
    if (low <= round && round <= high) return round;
  }
  return Number(middle.toPrecision(mostDigits));
}

/** Flows that formulas give show the constant to so many digits. */
const mostDigits = 12;

/** More rows than this say no more of a constant, and each is held against each. */
const mostCompared = 400;

function habitOf(rows: readonly Ratio[], stated: Constant | undefined): Habit<number> | undefined {
  if (rows.length === 0) return undefined;
  const ratios = rows.map(({ ratio }) => ratio);
  const sorted = [...ratios].sort((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)]!;
  const held = stated && Math.abs(stated.value / middle - 1) < 0.02 ? stated : undefined;
  const value = held?.value ?? agreed(rows.slice(0, mostCompared), middle);
  const share = ratios.filter((ratio) => Math.abs(ratio / value - 1) < 0.02).length / ratios.length;
  // Flows rounded to whole numbers still show the constant in their middle.
  if (share < 0.4) return undefined;
  return {
    value,
    share,
    stated: held?.at,
    because: held
      ? `the formulas have ${value}`
      : `${Math.round(share * 100)} % of the rows give ${value}`,
  };
}

/** A constant with the cell that states it: one of its own, or the first formula that has it. */
interface Constant {
  readonly value: number;
  readonly at: Spot;
}

/** The constant and the rounding of the flow as the formulas of most rows have them. */
function fromFormulas(
  block: SheetBlock,
  book: Book,
): { rounding: number | undefined; stated: Constant | undefined } {
  const line = block.from.given.get("flow");
  const votes = new Map<number, number>();
  const places = new Map<number, Spot>();
  const roundings = new Map<number | undefined, number>();
  if (line !== undefined)
    block.fans.forEach((row, at) => {
      const col = line + block.listing.shifts[at]!;
      const shape = block.cells.shape(row, col);
      const product = shape && testsOf(shape, block.cells, row, col, book).product;
      if (!product) return;
      const { constant, fixed, rounding } = product;
      votes.set(constant, (votes.get(constant) ?? 0) + 1);
      roundings.set(rounding, (roundings.get(rounding) ?? 0) + 1);
      if (!places.has(constant)) places.set(constant, fixed[0] ?? block.cells.place(row, col));
    });
  const most = <T>(counts: Map<T, number>) => [...counts].sort((a, b) => b[1] - a[1])[0]?.[0];
  const value = most(votes);
  const at = value === undefined ? undefined : places.get(value);
  return {
    rounding: most(roundings),
    stated: value !== undefined && at ? { value, at } : undefined,
  };
}
