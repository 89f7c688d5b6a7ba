import type { CellArea } from "../book";
import { readColor } from "../formats";
import { HostError, invalidArgument } from "../wire/errors";
import { collection, keeping, type Members, serve } from "../wire/served";
import type { Desk, MarkOnSheet } from "./desk";

export function conditionalFormatsMembers(desk: Desk): Members<CellArea> {
  const { marks } = desk.book;
  return collection<CellArea>({
    className: "ConditionalFormatCollection",
    items: (range) => marks.list(range).map((mark) => desk.mark({ tab: range.tab, mark })),
    find({ tab, rects }, id) {
      const mark = marks.list({ tab, rects }).find((each) => each.id === id);
      return mark === undefined ? null : desk.mark({ tab, mark });
    },
    missing: () => "The range has no such conditional format.",
    methods: {
      add(range, args) {
        const type = args.text(0, "The type");
        if (type !== "Custom")
          throw new HostError("UnsupportedOperation", "Only Custom conditional formats are added.");
        return desk.mark({ tab: range.tab, mark: marks.add(range) });
      },
    },
  });
}

export function conditionalFormatMembers(desk: Desk): Members<MarkOnSheet> {
  const { marks } = desk.book;
  const told = ({ tab }: MarkOnSheet) => marks.touched(tab);
  const kept = keeping(told, ({ mark }: MarkOnSheet) => mark);
  const readFormula = (value: unknown) => {
    if (typeof value !== "string" || value === "")
      throw invalidArgument("The formula of the rule must be a text.");
    try {
      desk.book.model.checkFormula(value);
    } catch (thrown) {
      throw invalidArgument((thrown as Error).message);
    }
    return value;
  };
  const rule = serve<MarkOnSheet>({
    className: "ConditionalFormatRule",
    values: { formula: kept("formula", (text) => text, readFormula) },
  });
  const format = serve<MarkOnSheet>(looksMembers(told));
  const custom = serve<MarkOnSheet>({
    className: "CustomConditionalFormat",
    links: { rule, format },
  });
  return {
    className: "ConditionalFormat",
    identify: ({ mark }) => ({ Id: mark.id }),
    values: {
      id: { get: ({ mark }) => mark.id },
      type: { get: ({ mark }) => mark.type },
    },
    links: {
      custom(self) {
        if (self.mark.type === "Custom") return custom(self);
        throw invalidArgument(`The conditional format is of type ${self.mark.type}.`);
      },
    },
    methods: {
      delete: ({ tab, mark }) => marks.remove(tab, mark),
      getRanges: ({ tab, mark }) => desk.areas({ tab, rects: mark.ranges }),
    },
  };
}

/** The looks that cells take while the rule holds. */
function looksMembers(told: (self: MarkOnSheet) => void): Members<MarkOnSheet> {
  const kept = keeping(told, ({ mark }: MarkOnSheet) => mark);
  const color = (key: "fill" | "color") =>
    kept(
      key,
      (shown) => shown ?? "",
      (value) => (value === "" ? undefined : `#${readColor(value)}`),
    );
  const flag = (key: "bold" | "italic") =>
    kept(
      key,
      (isOn) => isOn ?? null,
      (value) => (typeof value === "boolean" ? value : undefined),
    );
  const fill = serve<MarkOnSheet>({
    className: "ConditionalRangeFill",
    values: { color: color("fill") },
    methods: {
      clear(self) {
        self.mark.fill = undefined;
        told(self);
      },
    },
  });
  const font = serve<MarkOnSheet>({
    className: "ConditionalRangeFont",
    values: { color: color("color"), bold: flag("bold"), italic: flag("italic") },
  });
  return { className: "ConditionalRangeFormat", links: { fill, font } };
}
