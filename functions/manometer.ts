import { pick, type Rows } from "./rows";
import { aboveZero, notNegative } from "./units";

export const zeroOrMore = (value: number) =>
  value >= 0 ? undefined : "give a number of 0 or more";
/** A pressure whose flow has a spread. */
export const readable = (value: number) => notNegative(value) ?? aboveZero(value);

/** What the arguments say of the manometer, row by row. */
export function manometers(rows: Rows) {
  const p = rows.numbers("meterPercent", { refuse: zeroOrMore });
  const f = rows.numbers("meterFloor", { refuse: zeroOrMore });
  const optional = (name: string) => {
    if (!rows.has(name)) return () => undefined;
    const column = rows.numbers(name, { refuse: zeroOrMore });
    return (i: number) => pick(column, i);
  };
  const resolution = optional("resolution");
  const zeroLimit = optional("zeroLimit");
  return (i: number) => ({
    meterPercent: pick(p, i),
    meterFloor: pick(f, i),
    resolution: resolution(i),
    zeroLimit: zeroLimit(i),
  });
}
