import { readColor } from "../formats";
import type { HostRange } from "../host-range";
import { invalidArgument } from "../wire/errors";
import type { Members } from "../wire/served";
import type { Desk } from "./desk";

const alignments = { Left: "left", Center: "center", Right: "right" } as const;
const verticals = { Top: "top", Center: "center", Bottom: "bottom" } as const;
const capitalised = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
/** Points that a row is high which states nothing. */
const usualHeight = 15;
/** Points that letters are high in cells without a format. */
const usualSize = 11;
/** Points a pixel; columns are measured in pixels of 7 a character. */
const points = 0.75;

export function rangeFormatMembers(desk: Desk): Members<HostRange> {
  const { formats } = desk.book;
  return {
    className: "RangeFormat",
    values: {
      wrapText: {
        get(range) {
          const wrap = formats.shared(range, "wrap");
          return wrap === null ? null : wrap === true;
        },
        set: (range, value) => formats.change(range, { wrap: value === true }),
      },
      horizontalAlignment: {
        get(range) {
          const align = formats.shared(range, "align");
          if (align === null) return null;
          return Object.entries(alignments).find(([, known]) => known === align)?.[0] ?? "General";
        },
        set(range, value) {
          if (value !== "General" && !Object.hasOwn(alignments, String(value)))
            throw invalidArgument(`The alignment "${String(value)}" is not available.`);
          const align = alignments[value as keyof typeof alignments];
          formats.change(range, { align });
        },
      },
      verticalAlignment: {
        get(range) {
          const valign = formats.shared(range, "valign");
          if (valign === null) return null;
          return valign === undefined ? "Bottom" : capitalised(valign);
        },
        set(range, value) {
          const valign = verticals[value as keyof typeof verticals];
          if (valign === undefined)
            throw invalidArgument(`The alignment "${String(value)}" is not available.`);
          formats.change(range, { valign: valign === "bottom" ? undefined : valign });
        },
      },
      rowHeight: {
        get: ({ tab, top }) => tab.heights.get(top) ?? usualHeight,
        set({ tab, top, bottom }, value) {
          if (typeof value !== "number" || value < 0 || value > 409)
            throw invalidArgument("A row height must be a number of points, at most 409.");
          tab.checkWritable();
          for (let row = top; row <= bottom; row++) tab.heights.set(row, value);
          desk.book.touched({ kind: "layout", sheet: tab.name });
        },
      },
      columnWidth: {
        get({ tab, left, right }) {
          const width = tab.width(left);
          for (let col = left + 1; col <= right; col++) if (tab.width(col) !== width) return null;
          return Math.round(width * 7) * points;
        },
        set({ tab, left, right }, value) {
          if (typeof value !== "number" || value < 0)
            throw invalidArgument("A column width must be a number of points.");
          tab.checkWritable();
          for (let col = left; col <= right; col++) tab.widths.set(col, value / points / 7);
          desk.book.touched({ kind: "layout", sheet: tab.name });
        },
      },
    },
    links: {
      fill: (range) => desk.rangeFill(range),
      font: (range) => desk.rangeFont(range),
      protection: (range) => desk.rangeProtection(range),
      borders: (range) => desk.borders(range),
    },
  };
}

export function rangeFillMembers(desk: Desk): Members<HostRange> {
  const { formats } = desk.book;
  return {
    className: "RangeFill",
    values: {
      color: {
        get: (range) => formats.color(range, "ground"),
        set: (range, value) => formats.change(range, { fill: readColor(value) }),
      },
    },
    methods: { clear: (range) => formats.change(range, { fill: undefined }) },
  };
}

export function rangeFontMembers(desk: Desk): Members<HostRange> {
  const { formats } = desk.book;
  const flag = (key: "bold" | "italic") => ({
    get(range: HostRange) {
      const on = formats.shared(range, key);
      return on === null ? null : on === true;
    },
    set: (range: HostRange, value: unknown) => formats.change(range, { [key]: value === true }),
  });
  return {
    className: "RangeFont",
    values: {
      bold: flag("bold"),
      italic: flag("italic"),
      size: {
        get: (range) => {
          const size = formats.shared(range, "size");
          return size === null ? null : (size ?? usualSize);
        },
        set(range, value) {
          if (typeof value !== "number" || value < 1 || value > 409)
            throw invalidArgument("The size of letters must be a number of points.");
          formats.change(range, { size: value });
        },
      },
      color: {
        get: (range) => formats.color(range, "ink"),
        set: (range, value) => formats.change(range, { color: readColor(value) }),
      },
    },
  };
}

/** What protecting the sheet means for the cells. */
export function rangeProtectionMembers(desk: Desk): Members<HostRange> {
  const { formats } = desk.book;
  return {
    className: "FormatProtection",
    values: {
      locked: {
        get(range) {
          const unlocked = formats.shared(range, "unlocked");
          return unlocked === null ? null : unlocked !== true;
        },
        set: (range, value) => formats.change(range, { unlocked: value === false }),
      },
    },
  };
}
