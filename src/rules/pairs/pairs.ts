import type { PairsArgument } from "../contract/argument";
import { aboveZero } from "../contract/need";
import type { Native } from "../native/native";
import type { Part } from "../native/native-call";
import { NoNativeForm } from "../native/no-native-form";
import { wrong } from "../native/text";

export const pairReadings: PairsArgument = { kind: "pairs", need: aboveZero, isReading: true };

/** What the help says of a pair that is not whole. */
export const passedOver =
  "All pairs make one row of results, so that one bad cell spoils it; its message names the pair. A pair without one of its readings is passed over.";

/** More pairs than anybody reads. */
const mostPairs = 2000;

interface NativePairs {
  /** 1 for each pair that counts, 0 for one passed over, an error for one that will not do. */
  readonly used: string;
  /** The columns worked out for each pair. */
  readonly columns: readonly string[];
}

/** Steps for the pairs of some ranges, or the error that ranges of different lengths give. */
export function nativePairs(
  { call }: Native,
  names: readonly string[],
  read: readonly string[],
  columns: readonly ((cells: Readonly<Record<string, string>>, used: string) => string)[],
): NativePairs | string {
  const sizes = names.map((name) => call.size(name));
  if (new Set(sizes).size > 1) return wrong("give ranges of one length");
  const [count = 0] = sizes;
  if (count > mostPairs) throw new NoNativeForm(`${count} pairs`);
  const ranges = names.map((name) => call.cells(name));
  const isBlank = (x: string) => `IF(ISERROR(${x}),FALSE,OR(TRIM(${x})="",TRIM(${x})="0"))`;
  const lines = Array.from({ length: count }, (_, i): Part[] => {
    const cells = Object.fromEntries(names.map((name, n) => [name, ranges[n]?.[i] as string]));
    const passed = read.map((name) => isBlank(cells[name] as string)).join(",");
    const faults = Object.entries(cells).map(([name, x]) => {
      const flaw = wrong(`${name}: ${aboveZero.say}`);
      const none = `IF(OR(TRIM(${x})="",TRIM(${x})="0"),NA(),${flaw})`;
      return `IF(ISNUMBER(${x}),IF(${x}>0,0,${none}),${none})`;
    });
    return [
      () => `IF(OR(${passed}),0,1+MAX(${faults.join(",")}))`,
      ...columns.map(
        (column): Part =>
          ([used = ""]) =>
            column(cells, used),
      ),
    ];
  });
  const key = `pairs ${ranges.flatMap((cells) => [cells[0], cells.at(-1)]).join(" ")}`;
  const rows = call.stepRows("pairs: whether each counts, and what comes of it", key, lines);
  const column = (at: number) => span(rows[0]?.[at] as string, rows.at(-1)?.[at] as string);
  return { used: column(0), columns: columns.map((_, i) => column(i + 1)) };
}

/** A result of all pairs: an error of theirs, a blank without any, or the value. */
export function ofAll(used: string, value: string): string {
  return `IF(ISERROR(SUM(${used})),SUM(${used}),IF(SUM(${used})=0,"",${value}))`;
}

/** The range from one cell of a sheet to another. */
function span(first: string, last: string): string {
  return first === last ? first : `${first}:${last.slice(last.lastIndexOf("!") + 1)}`;
}
