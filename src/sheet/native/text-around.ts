import { type CellValue, errors, isCellError } from "../../cells";
import type { Value } from "../area";
import { toText } from "../coerce";
import type { Natives } from "./natives";
import { matrixOf } from "./read";

/** What stands before or after a part of a text. */
export function addTextAround(to: Natives): void {
  const around =
    (cut: (text: string, from: number, to: number) => string) =>
    (
      text: string,
      parts: Value,
      instance = 1,
      anyCase = 0,
      isEndPart = 0,
      otherwise: CellValue = errors.na,
    ): CellValue => {
      const which = Math.trunc(instance);
      if (which === 0 || Math.abs(which) > Math.max(1, text.length)) return errors.value;
      if (![anyCase, isEndPart].every((each) => each === 0 || each === 1)) return errors.value;
      const matrix = matrixOf(parts);
      if (isCellError(matrix)) return matrix;
      const wanted: string[] = [];
      for (const cell of matrix.data) {
        const part = toText(cell);
        if (typeof part !== "string") return part;
        wanted.push(anyCase ? part.toLowerCase() : part);
      }
      const found = placesOf(anyCase ? text.toLowerCase() : text, wanted);
      if (isEndPart && which > 0) found.push([text.length, text.length]);
      if (isEndPart && which < 0) found.unshift([0, 0]);
      const place = found.at(which > 0 ? which - 1 : which);
      return place ? cut(text, ...place) : otherwise;
    };
  const signature = "t a n? n? n? s?";
  to.add(
    "TEXTBEFORE",
    signature,
    around((text, from) => text.slice(0, from)),
  );
  to.add(
    "TEXTAFTER",
    signature,
    around((text, _, end) => text.slice(end)),
  );
}

/** Where any of these parts stands, from start to end; the longest where several begin. */
function placesOf(text: string, parts: readonly string[]): [number, number][] {
  const longest = [...parts].sort((a, b) => b.length - a.length);
  const places: [number, number][] = [];
  for (let at = 0; at <= text.length; ) {
    const part = longest.find((each) => text.startsWith(each, at));
    if (part !== undefined) places.push([at, at + part.length]);
    at += Math.max(1, part?.length ?? 1);
  }
  return places;
}
