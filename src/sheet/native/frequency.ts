import { type CellValue, counted, errors, isCellError } from "../../cells";
import type { Value } from "../area";
import { finite } from "../coerce";
import { Matrix } from "../values";
import type { Natives } from "./natives";
import { matrixOf, numbersIn } from "./read";

/** How often values come. */
export function addFrequency(to: Natives): void {
  to.addSpreading("FREQUENCY", "a a", frequency);
  to.addSpreading("MODE.MULT", "r+", (...args) => {
    if (args.some((arg) => arg === null)) return errors.value;
    const numbers = numbersIn(args.filter((arg) => typeof arg !== "string"));
    if (isCellError(numbers)) return numbers;
    const counts = counted(numbers);
    const most = [...counts.values()].reduce((a, b) => Math.max(a, b), 0);
    const often = [...counts].flatMap(([x, count]) => (count === most ? [x] : []));
    return most < 2 ? errors.na : new Matrix(often.length, 1, often);
  });
  to.add("PROB", "r r n n?", probability);
}

/** How many values lie in each interval up to a limit, and beyond the last; of equal limits the first counts. */
function frequency(values: Value, limits: Value): Value {
  const [x, given] = [numbersIn([matrixOf(values)]), numbersIn([matrixOf(limits)])];
  if (isCellError(x)) return x;
  if (isCellError(given)) return given;
  const bins = given.length === 0 ? [0] : given;
  const order = [...bins.keys()].sort((a, b) => bins[a]! - bins[b]! || a - b);
  const counts = new Array<number>(bins.length + 1).fill(0);
  for (const each of x) {
    let [low, high] = [0, order.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (bins[order[middle]!]! < each) low = middle + 1;
      else high = middle;
    }
    counts[order[low] ?? bins.length]!++;
  }
  return new Matrix(counts.length, 1, counts);
}

/** The chance that a value of a list lies between two limits, each value with its own chance. */
function probability(values: Value, chances: Value, from: number, to = from): CellValue {
  const [x, p] = [matrixOf(values), matrixOf(chances)];
  if (isCellError(x)) return x;
  if (isCellError(p)) return p;
  const error = [...x.data, ...p.data].find(isCellError);
  if (error) return error;
  if (x.data.length !== p.data.length) return errors.na;
  const sum = (all: readonly CellValue[]) => all.reduce<number>((a, b) => a + Number(b), 0);
  if (p.data.some((each) => !(Number(each) > 0 && Number(each) <= 1))) return errors.num;
  if (Math.abs(sum(p.data) - 1) > 1e-9) return errors.num;
  return finite(sum(p.data.filter((_, i) => Number(x.data[i]) >= from && Number(x.data[i]) <= to)));
}
