import type { EdgeStyle, Edges } from "../../../workbook";
import type { CellArea } from "../book";
import { readColor } from "../formats";
import { HostRange } from "../host-range";
import { invalidArgument } from "../wire/errors";
import { type Members, serve } from "../wire/served";
import type { Desk } from "./desk";

const sides = [
  "EdgeTop",
  "EdgeBottom",
  "EdgeLeft",
  "EdgeRight",
  "InsideHorizontal",
  "InsideVertical",
] as const;
type Side = (typeof sides)[number];

/** One side of some cells, with what was asked for so far. */
interface Border {
  readonly cells: CellArea;
  readonly side: Side;
  style: string;
  weight: string;
  color: string | undefined;
}

const weights: Readonly<Record<string, EdgeStyle>> = {
  Hairline: "hair",
  Thin: "thin",
  Medium: "medium",
  Thick: "thick",
};
const styles: Readonly<Record<string, EdgeStyle>> = {
  Dash: "dashed",
  Dot: "dotted",
  Double: "double",
};

export function bordersMembers(desk: Desk): Members<CellArea> {
  const border = serve(borderMembers(desk));
  return {
    className: "RangeBorderCollection",
    item(cells, args) {
      const side = args.text(0, "The side") as Side;
      if (!sides.includes(side)) throw invalidArgument(`Borders at "${side}" are not available.`);
      return border({ cells, side, style: "None", weight: "Thin", color: undefined });
    },
  };
}

function borderMembers(desk: Desk): Members<Border> {
  const { formats } = desk.book;
  const draw = ({ cells, side, style, weight, color }: Border) => {
    const line = style === "None" ? undefined : (styles[style] ?? weights[weight]);
    for (const rect of cells.rects) {
      const [range, key] = linesOf(new HostRange(cells.tab, rect), side);
      if (range === null) continue;
      const edges: Edges = { [key]: line, ...(color === undefined ? {} : { color }) };
      formats.change(range, { edges });
    }
  };
  const known = (value: unknown, names: Readonly<Record<string, unknown>>, what: string) => {
    const name = String(value);
    if (!Object.hasOwn(names, name))
      throw invalidArgument(`The ${what} "${name}" of a border is not available.`);
    return name;
  };
  return {
    className: "RangeBorder",
    values: {
      style: {
        get: ({ style }) => style,
        set(border, value) {
          border.style = known(value, { None: 1, Continuous: 1, ...styles }, "style");
          draw(border);
        },
      },
      weight: {
        get: ({ weight }) => weight,
        set(border, value) {
          border.weight = known(value, weights, "weight");
          if (border.style === "None") border.style = "Continuous";
          draw(border);
        },
      },
      color: {
        get: ({ color }) => (color === undefined ? "#000000" : `#${color}`),
        set(border, value) {
          border.color = readColor(value);
          if (border.style !== "None") draw(border);
        },
      },
    },
  };
}

/** The cells that carry a line, and on which side; null where there are none between others. */
function linesOf(range: HostRange, side: Side): [HostRange | null, keyof Edges] {
  const { top, left, bottom, right } = range;
  switch (side) {
    case "EdgeTop":
      return [range.with({ bottom: top }), "top"];
    case "EdgeBottom":
      return [range.with({ top: bottom }), "bottom"];
    case "EdgeLeft":
      return [range.with({ right: left }), "left"];
    case "EdgeRight":
      return [range.with({ left: right }), "right"];
    case "InsideHorizontal":
      return [bottom > top ? range.with({ bottom: bottom - 1 }) : null, "bottom"];
    case "InsideVertical":
      return [right > left ? range.with({ right: right - 1 }) : null, "right"];
  }
}
