import type { Formats } from "../formats";
import type { HostRange } from "../host-range";
import type { Arguments } from "../wire/arguments";
import { invalidArgument } from "../wire/errors";

const askable = '{"format":{"fill":{"color":true},"font":{"color":true}}}';

/** What is asked of cells or columns one by one; of all that could be, the two colours are known here. */
function checkAsked(args: Arguments): void {
  const { format = {}, ...others } = (args.json(0) ?? {}) as Record<
    string,
    Record<string, unknown>
  >;
  const { fill, font, ...more } = format;
  if (JSON.stringify({ ...others, format: { fill, font, ...more } }) !== askable)
    throw invalidArgument("Of cells one by one only the colours of text and fill are available.");
}

export function cellColors(formats: Formats, range: HostRange, args: Arguments) {
  checkAsked(args);
  range.checkCellCount();
  const { tab, top, left } = range;
  return Array.from({ length: range.rows }, (_, r) =>
    Array.from({ length: range.cols }, (_, c) => {
      const color = (of: "ink" | "ground") => formats.colorAt(tab, top + r, left + c, of);
      return painted(color("ink"), color("ground"));
    }),
  );
}

export function columnColors(formats: Formats, range: HostRange, args: Arguments) {
  checkAsked(args);
  return Array.from({ length: range.cols }, (_, c) => {
    const column = range.with({ left: range.left + c, right: range.left + c });
    return painted(formats.color(column, "ink"), formats.color(column, "ground"));
  });
}

const painted = (ink: string | null, ground: string | null) => ({
  format: { font: { color: ink }, fill: { color: ground } },
});
