import type { StyleSpec } from "../../../workbook";
import { type Formats, readColor } from "../formats";
import type { HostRange } from "../host-range";
import { invalidArgument } from "../wire/errors";
import type { Members, Property } from "../wire/served";
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

/** A look that cells have in common: how it is told, null where they differ, and how it is read. */
function shared<K extends keyof StyleSpec>(
  formats: Formats,
  key: K,
  tell: (look: StyleSpec[K]) => unknown,
  read: (value: unknown) => StyleSpec[K],
): Property<HostRange> {
  return {
    get(range) {
      const look = formats.shared(range, key);
      return look === null ? null : tell(look);
    },
    set: (range, value) => formats.change(range, { [key]: read(value) }),
  };
}

export function rangeFormatMembers(desk: Desk): Members<HostRange> {
  const { formats } = desk.book;
  return {
    className: "RangeFormat",
    values: {
      wrapText: shared(
        formats,
        "wrap",
        (wrap) => wrap === true,
        (value) => value === true,
      ),
      horizontalAlignment: shared(
        formats,
        "align",
        (align) =>
          Object.entries(alignments).find(([, known]) => known === align)?.[0] ?? "General",
        (value) => {
          if (value !== "General" && !Object.hasOwn(alignments, String(value)))
            throw invalidArgument(`The alignment "${String(value)}" is not available.`);
          return alignments[value as keyof typeof alignments];
        },
      ),
      verticalAlignment: shared(
        formats,
        "valign",
        (valign) => (valign === undefined ? "Bottom" : capitalised(valign)),
        (value) => {
          const valign = verticals[value as keyof typeof verticals];
          if (valign === undefined)
            throw invalidArgument(`The alignment "${String(value)}" is not available.`);
          return valign === "bottom" ? undefined : valign;
        },
      ),
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
  const flag = (key: "bold" | "italic") =>
    shared(
      formats,
      key,
      (isOn) => isOn === true,
      (value) => value === true,
    );
  return {
    className: "RangeFont",
    values: {
      bold: flag("bold"),
      italic: flag("italic"),
      size: shared(
        formats,
        "size",
        (size) => size ?? usualSize,
        (value) => {
          if (typeof value !== "number" || value < 1 || value > 409)
            throw invalidArgument("The size of letters must be a number of points.");
          return value;
        },
      ),
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
      locked: shared(
        formats,
        "unlocked",
        (unlocked) => unlocked !== true,
        (value) => value === false,
      ),
    },
  };
}
