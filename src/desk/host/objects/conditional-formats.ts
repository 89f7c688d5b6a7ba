import type { CellArea } from "../book";
import { readColor } from "../formats";
import { HostRange } from "../host-range";
import { readCellValueRule, readMarkType } from "../marks/conditional-format";
import { invalidArgument, notFound } from "../wire/errors";
import { collection, type Members, type Served, serve, telling } from "../wire/served";
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
        const type = readMarkType(args.text(0, "The type"));
        return desk.mark({ tab: range.tab, mark: marks.add(range, type) });
      },
      clearAll: (range) => marks.clear(range),
    },
  });
}

export function conditionalFormatMembers(desk: Desk): Members<MarkOnSheet> {
  const { marks } = desk.book;
  const told = ({ tab }: MarkOnSheet) => marks.touched(tab);
  const property = telling(told);
  const range = ({ tab, mark }: MarkOnSheet): Served | null => {
    const [only, ...more] = mark.ranges;
    return only === undefined || more.length > 0 ? null : desk.range(new HostRange(tab, only));
  };
  const rule = serve<MarkOnSheet>({
    className: "ConditionalFormatRule",
    values: {
      formula: property(
        ({ mark }) => mark.formula,
        ({ mark }, value) => {
          if (typeof value !== "string" || value === "")
            throw invalidArgument("The formula of the rule must be a text.");
          try {
            desk.book.model.checkFormula(value);
          } catch (thrown) {
            throw invalidArgument((thrown as Error).message);
          }
          mark.formula = value;
        },
      ),
    },
  });
  const format = serve<MarkOnSheet>(looksMembers(told));
  const custom = serve<MarkOnSheet>({
    className: "CustomConditionalFormat",
    links: { rule, format },
  });
  const cellValue = serve<MarkOnSheet>({
    className: "CellValueConditionalFormat",
    values: {
      rule: property(
        ({ mark }) => mark.cellValue ?? {},
        ({ mark }, value) => {
          mark.cellValue = readCellValueRule(value);
        },
      ),
    },
    links: { format },
  });
  const ofType = (type: string, made: (self: MarkOnSheet) => Served) => (self: MarkOnSheet) =>
    self.mark.type === type ? made(self) : null;
  const orRefuse = (type: string, made: (self: MarkOnSheet) => Served) => (self: MarkOnSheet) => {
    if (self.mark.type === type) return made(self);
    throw invalidArgument(`The conditional format is of type ${self.mark.type}.`);
  };
  return {
    className: "ConditionalFormat",
    identify: ({ mark }) => ({ Id: mark.id }),
    values: {
      id: { get: ({ mark }) => mark.id },
      type: { get: ({ mark }) => mark.type },
      priority: { get: ({ tab, mark }) => tab.marks.indexOf(mark) },
      stopIfTrue: property(
        ({ mark }) => mark.stopIfTrue,
        ({ mark }, value) => {
          mark.stopIfTrue = value === true;
        },
      ),
    },
    links: {
      custom: orRefuse("Custom", custom),
      customOrNullObject: ofType("Custom", custom),
      cellValue: orRefuse("CellValue", cellValue),
      cellValueOrNullObject: ofType("CellValue", cellValue),
    },
    methods: {
      delete: ({ tab, mark }) => marks.remove(tab, mark),
      getRange(self) {
        const found = range(self);
        if (found === null) throw notFound("The conditional format applies to several ranges.");
        return found;
      },
      getRangeOrNullObject: range,
      getRanges: ({ tab, mark }) => desk.areas({ tab, rects: mark.ranges }),
    },
  };
}

/** The looks that cells take while the rule holds. */
function looksMembers(told: (self: MarkOnSheet) => void): Members<MarkOnSheet> {
  const property = telling(told);
  const color = (key: "fill" | "color") =>
    property(
      ({ mark }) => mark[key] ?? "",
      ({ mark }, value) => {
        mark[key] = value === "" ? undefined : `#${readColor(value)}`;
      },
    );
  const flag = (key: "bold" | "italic") =>
    property(
      ({ mark }) => mark[key] ?? null,
      ({ mark }, value) => {
        mark[key] = typeof value === "boolean" ? value : undefined;
      },
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
