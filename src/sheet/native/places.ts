import { kept } from "../../cells";
import { Area } from "../area";
import { textNumber } from "../coerce";

type Places = ReadonlyMap<number | string, readonly number[]>;

const nowhere: readonly number[] = [];

/**
 * Where each number and each text (in lower case) stands in a range, counted row by row. Kept with
 * ranges that many formulas share, so that 20,000 look-ups in one list do not read it 20,000 times;
 * undefined for other ranges, where reading on is cheaper.
 */
export function placesOf(area: unknown): Places | undefined {
  const memo = area instanceof Area ? area.fresh() : undefined;
  if (memo === undefined) return undefined;
  if (memo.places) return memo.places;
  const places = new Map<number | string, number[]>();
  const note = (key: number | string, place: number) => {
    kept(places, key, () => []).push(place);
  };
  (area as Area).matrix().data.forEach((cell, place) => {
    if (typeof cell === "number") note(cell, place);
    if (typeof cell !== "string") return;
    note(cell.toLowerCase(), place);
    const number = textNumber(cell);
    if (number !== undefined) note(numberText(number), place);
  });
  memo.places = places;
  return places;
}

/** Key of the texts that read as a number; no text a cell can hold equals it. */
const numberText = (x: number) => `\u0000${x}`;

/** Places that a criterion of one number or text finds: for a number, texts that read as it too. */
export function placesMeeting(places: Places, exact: number | string): readonly number[] {
  const found = places.get(exact) ?? nowhere;
  if (typeof exact === "string") return found;
  const texts = places.get(numberText(exact));
  return texts ? [...found, ...texts].sort((a, b) => a - b) : found;
}
