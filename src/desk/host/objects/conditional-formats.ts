import type { CellArea } from "../book";
import { readColor } from "../formats";
import { HostRange } from "../host-range";
import { readCellValueRule, readMarkType } from "../marks/conditional-format";
import { invalidArgument, notFound } from "../wire/errors";
import { type Members, type Served, serve } from "../wire/served";
import type { Desk, MarkOnSheet } from "./desk";

export function conditionalFormatsMembers(desk: Desk): Members<CellArea> {
  const { marks } = desk.book;
  const find = ({ tab, rects }: CellArea, id: string): Served | null => {
    const mark = marks.list({ tab, rects }).find((each) => each.id === id);
    return mark === undefined ? null : desk.mark({ tab, mark });
  };
  return {
    className: "ConditionalFormatCollection",
    items: (range) => marks.list(range).map((mark) => desk.mark({ tab: range.tab, mark })),
    item(range, args) {
      const found = find(range, args.text(0, "The id"));
      if (found === null) throw notFound("The range has no such conditional format.");
      return found;
    },
    methods: {
      add(range, args) {
        const type = readMarkType(args.text(0, "The type"));
        return desk.mark({ tab: range.tab, mark: marks.add(range, type) });
      },
      clearAll: (range) => marks.clear(range),
      getCount: (range) => marks.list(range).length,
      getItemAt(range, args) {
        const mark = marks.list(range)[args.integer(0, "The place")];
        if (mark === undefined) throw notFound("The range has not so many conditional formats.");
        return desk.mark({ tab: range.tab, mark });
      },
      getItemOrNullObject: (range, args) => find(range, args.text(0, "The id")),
    },
  };
}

export function conditionalFormatMembers(desk: Desk): Members<MarkOnSheet> {
  const { marks } = desk.book;
  const told = ({ tab }: MarkOnSheet) => marks.touched(tab);
  const range = ({ tab, mark }: MarkOnSheet): Served | null => {
    const [only, ...more] = mark.ranges;
    return only === undefined || more.length > 0 ? null : desk.range(new HostRange(tab, only));
  };
  const rule = serve<MarkOnSheet>({
    className: "ConditionalFormatRule",
    values: {
      formula: {
        get: ({ mark }) => mark.formula,
        set(self, value) {
          if (typeof value !== "string" || value === "")
            throw invalidArgument("The formula of the rule must be a text.");
          try {
            desk.book.model.checkFormula(value);
          } catch (thrown) {
            throw invalidArgument((thrown as Error).message);
          }
          self.mark.formula = value;
          told(self);
        },
      },
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
      rule: {
        get: ({ mark }) => mark.cellValue ?? {},
        set(self, value) {
          self.mark.cellValue = readCellValueRule(value);
          told(self);
        },
      },
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
      stopIfTrue: {
        get: ({ mark }) => mark.stopIfTrue,
        set(self, value) {
          self.mark.stopIfTrue = value === true;
          told(self);
        },
      },
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
  const color = (key: "fill" | "color") => ({
    get: ({ mark }: MarkOnSheet) => mark[key] ?? "",
    set(self: MarkOnSheet, value: unknown) {
      self.mark[key] = value === "" ? undefined : `#${readColor(value)}`;
      told(self);
    },
  });
  const flag = (key: "bold" | "italic") => ({
    get: ({ mark }: MarkOnSheet) => mark[key] ?? null,
    set(self: MarkOnSheet, value: unknown) {
      self.mark[key] = typeof value === "boolean" ? value : undefined;
      told(self);
    },
  });
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
