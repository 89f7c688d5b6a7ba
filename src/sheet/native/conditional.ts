import { type CellError, type CellValue, errors, isCellError } from "../../cells";
import { Area, type Value } from "../area";
import { Unsupported } from "../values";
import { spend } from "../work";
import { type Criterion, criterionOf } from "./criteria";
import type { Natives } from "./natives";
import { placesMeeting, placesOf } from "./places";

interface Test {
  readonly area: Area;
  readonly criterion: Criterion;
}

type Summary = (numbers: readonly number[]) => CellValue;

const sum: Summary = (numbers) => numbers.reduce((total, x) => total + x, 0);
const mean: Summary = (numbers) =>
  numbers.length === 0 ? errors.div0 : (sum(numbers) as number) / numbers.length;
const largest: Summary = (numbers) =>
  numbers.reduce((most, x) => Math.max(most, x), numbers[0] ?? 0);
const smallest: Summary = (numbers) =>
  numbers.reduce((least, x) => Math.min(least, x), numbers[0] ?? 0);

/** SUMIF, COUNTIFS and their kin. */
export function addConditional(to: Natives): void {
  to.add("COUNTIF", "r s", (range, criterion) => counted([range, criterion]));
  to.add("COUNTIFS", "rs+", (...pairs) => counted(pairs));
  to.add("SUMIF", "r s r?", (range, criterion, of) =>
    summarised(of ?? range, [range, criterion], sum),
  );
  to.add("AVERAGEIF", "r s r?", (range, criterion, of) =>
    summarised(of ?? range, [range, criterion], mean),
  );
  to.add("SUMIFS", "r rs+", (of, ...pairs) => summarised(of, pairs, sum));
  to.add("AVERAGEIFS", "r rs+", (of, ...pairs) => summarised(of, pairs, mean));
  to.add("MAXIFS", "r rs+", (of, ...pairs) => summarised(of, pairs, largest));
  to.add("MINIFS", "r rs+", (of, ...pairs) => summarised(of, pairs, smallest));
}

function testsOf(pairs: readonly Value[]): Test[] | CellError {
  const tests: Test[] = [];
  if (pairs.length % 2 !== 0) throw new Unsupported("a range without its criterion");
  for (let i = 0; i < pairs.length; i += 2) {
    const area = pairs[i];
    if (!(area instanceof Area)) return isCellError(area) ? area : errors.value;
    tests.push({ area, criterion: criterionOf(pairs[i + 1] as CellValue) });
  }
  const [first] = tests;
  return tests.every(({ area }) => sameShape(area, first!.area)) ? tests : errors.value;
}

function sameShape(a: Area, b: Area): boolean {
  return a.rows === b.rows && a.cols === b.cols;
}

function counted(pairs: readonly Value[]): CellValue {
  const tests = testsOf(pairs);
  if (isCellError(tests)) return tests;
  const [only] = tests;
  const exact = tests.length === 1 ? only!.criterion.exact : undefined;
  const places = exact === undefined ? undefined : placesOf(only!.area);
  if (places) return placesMeeting(places, exact!).length;
  let count = 0;
  const { rows, cols } = forEachMatch(
    tests,
    tests.map(({ area }) => area),
    () => count++,
  );
  // Cells past the used part are blank: they count when blanks meet every criterion.
  if (tests.every(({ criterion }) => criterion.test(null))) {
    const { area } = tests[0]!;
    count += area.rows * area.cols - rows * cols;
  }
  return count;
}

function summarised(of: Value, pairs: readonly Value[], summary: Summary): CellValue {
  if (!(of instanceof Area)) return isCellError(of) ? of : errors.value;
  const tests = testsOf(pairs);
  if (isCellError(tests)) return tests;
  if (!sameShape(of, tests[0]!.area)) {
    // The two-range forms stretch the second range over cells that are not named in the formula.
    if (tests.length === 1) throw new Unsupported("a criterion range and a sum range of two sizes");
    return errors.value;
  }
  const numbers: number[] = [];
  let failed: CellError | undefined;
  forEachMatch(tests, [of, ...tests.map(({ area }) => area)], (row, col) => {
    const value = of.at(row, col);
    if (typeof value === "number") numbers.push(value);
    else if (isCellError(value)) failed ??= value;
  });
  return failed ?? summary(numbers);
}

/** Visits the offsets that meet every test, row by row, within the used part; returns its size. */
function forEachMatch(
  tests: readonly Test[],
  areas: readonly Area[],
  visit: (row: number, col: number) => void,
): { rows: number; cols: number } {
  const [first] = tests;
  const rows = Math.min(first!.area.rows, Math.max(...areas.map((area) => area.usedRows)));
  const cols = Math.min(first!.area.cols, Math.max(...areas.map((area) => area.usedCols)));
  for (const test of tests) {
    const { exact } = test.criterion;
    const places = exact === undefined ? undefined : placesOf(test.area);
    if (!places) continue;
    const others = tests.filter((each) => each !== test);
    const width = test.area.matrix().cols;
    const found = placesMeeting(places, exact!);
    spend(found.length);
    for (const place of found) {
      const row = Math.floor(place / width);
      const col = place % width;
      if (meets(others, row, col)) visit(row, col);
    }
    return { rows, cols };
  }
  spend(rows * cols * tests.length);
  for (let row = 0; row < rows; row++)
    for (let col = 0; col < cols; col++) if (meets(tests, row, col)) visit(row, col);
  return { rows, cols };
}

function meets(tests: readonly Test[], row: number, col: number): boolean {
  for (const { area, criterion } of tests) if (!criterion.test(area.at(row, col))) return false;
  return true;
}
