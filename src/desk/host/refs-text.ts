import { parseRectangle, type Rectangle, rectangleText } from "../../cells";

/** Rectangles as the file names them: "A1:B9 D3". */
export function refOf(ranges: readonly Rectangle[]): string {
  return ranges.map(rectangleText).join(" ");
}

/** The reverse of refOf. Throws a RangeError for what is no such text. */
export function rangesOf(ref: string): Rectangle[] {
  return ref
    .split(" ")
    .filter((part) => part !== "")
    .map(parseRectangle);
}
