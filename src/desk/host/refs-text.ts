import { parseRange, type RangeRef, toRef } from "../../workbook";

/** Rectangles as the file names them: "A1:B9 D3". */
export function refOf(ranges: readonly RangeRef[]): string {
  return ranges
    .map(({ top, left, bottom, right }) => {
      const [first, last] = [toRef(top, left), toRef(bottom, right)];
      return first === last ? first : `${first}:${last}`;
    })
    .join(" ");
}

/** The reverse of refOf. Throws a RangeError for what is no such text. */
export function rangesOf(ref: string): RangeRef[] {
  return ref
    .split(" ")
    .filter((part) => part !== "")
    .map(parseRange);
}
