import { Kind } from "../cells/cells";
import type { Pool, Sample } from "../tables/section";
import { looksLikeDay } from "../text/number";
import { cellWord } from "../text/vocabulary";

/** What the cells of one line look like, over a sample of the records. */
export interface LineStats {
  readonly line: number;
  /** Cells filled, of so many looked at. */
  readonly filled: number;
  readonly looked: number;
  /** Numbers of the sample; NaN where a cell holds none. Dates are numbers too. */
  readonly numbers: Float64Array;
  readonly numeric: number;
  readonly typedNumeric: number;
  readonly asText: number;
  readonly texts: number;
  readonly dates: number;
  readonly formulas: number;
  readonly distinctNumbers: number;
  /** Of the sizes, without sign. */
  readonly median: number;
  readonly low: number;
  readonly high: number;
  readonly whole: number;
  readonly negative: number;
  readonly words: ReadonlyMap<string, number>;
  /** Share of the texts that are words for a room, a duty, a verdict, or begin like a dwelling. */
  readonly rooms: number;
  readonly duties: number;
  readonly verdicts: number;
  readonly dwellings: number;
  readonly meanLength: number;
  /** Share of cells that repeat the one before. */
  readonly repeats: number;
}

/** Serial numbers of days between 1995 and 2060. */
export function isDaySerial(number: number): boolean {
  return number >= 34_700 && number <= 58_500 && Math.abs(number % 1) < 1;
}

function statsOf(sample: readonly Sample[], line: number): LineStats {
  const numbers = new Float64Array(sample.length).fill(Number.NaN);
  const words = new Map<string, number>();
  let [filled, numeric, typedNumeric, asText, texts, dates, formulas, whole, negative, repeats] = [
    0, 0, 0, 0, 0, 0, 0, 0, 0, 0,
  ];
  let before: string | number | undefined;
  let hinted = 0;
  sample.forEach(({ section: { cells, shift }, row }, at) => {
    const col = line + shift;
    if (!cells.has(row, col)) return;
    const kind = cells.kind(row, col);
    const formula = cells.hasFormula(row, col);
    if (formula) formulas++;
    if (kind === Kind.blank || (kind === Kind.text && formula && cells.text(row, col) === ""))
      return;
    filled++;
    let value: string | number = "";
    if (kind === Kind.number || kind === Kind.textNumber) {
      const number = cells.number(row, col);
      value = number;
      numbers[at] = number;
      numeric++;
      if (!formula) typedNumeric++;
      if (kind === Kind.textNumber) asText++;
      if (Number.isInteger(number)) whole++;
      if (number < 0) negative++;
      if (kind === Kind.number && cells.isDate(row, col)) hinted++;
      else if (kind === Kind.number && isDaySerial(number)) dates++;
    } else if (kind === Kind.text) {
      const text = cells.text(row, col).trim();
      value = text;
      texts++;
      words.set(text, (words.get(text) ?? 0) + 1);
      if (looksLikeDay(text)) dates++;
    } else if (kind === Kind.flag) value = "flag";
    if (value !== "" && value === before) repeats++;
    before = value;
  });
  const sizes = Float64Array.from(
    numbers.filter((number) => !Number.isNaN(number)),
    Math.abs,
  ).sort();
  const at = (share: number) =>
    sizes.length
      ? sizes[Math.min(sizes.length - 1, Math.floor(share * sizes.length))]!
      : Number.NaN;
  const distinct = new Set(numbers.filter((number) => !Number.isNaN(number)));
  return {
    line,
    filled,
    looked: sample.length,
    numbers,
    numeric,
    typedNumeric,
    asText,
    texts,
    // Serial numbers are days only where nearly all of the line are.
    dates: hinted + (dates >= 0.7 * filled ? dates : 0),
    formulas,
    distinctNumbers: distinct.size,
    median: at(0.5),
    low: at(0.1),
    high: at(0.9),
    whole: numeric ? whole / numeric : 0,
    negative: numeric ? negative / numeric : 0,
    words,
    ...vocabulary(words, texts),
    repeats: filled > 1 ? repeats / (filled - 1) : 0,
  };
}

/** At most so many different texts of a line are looked up. */
const mostWords = 80;

function vocabulary(words: ReadonlyMap<string, number>, texts: number) {
  let [rooms, duties, verdicts, dwellings, length, seen] = [0, 0, 0, 0, 0, 0];
  let looked = 0;
  for (const [text, count] of words) {
    if (looked++ >= mostWords) break;
    const word = cellWord(text);
    seen += count;
    length += text.length * count;
    if (word.room) rooms += count;
    if (word.duty) duties += count;
    if (word.verdict) verdicts += count;
    if (word.dwelling) dwellings += count;
  }
  const share = (count: number) => (texts && seen ? count / seen : 0);
  return {
    rooms: share(rooms),
    duties: share(duties),
    verdicts: share(verdicts),
    dwellings: share(dwellings),
    meanLength: seen ? length / seen : 0,
  };
}

export function statsOfPool(pool: Pool, sample: readonly Sample[]): Map<number, LineStats> {
  return new Map(pool.lines.map((line) => [line, statsOf(sample, line)]));
}
