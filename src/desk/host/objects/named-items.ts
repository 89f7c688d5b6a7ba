import type { CellValue } from "../../../cells";
import type { SheetTab } from "../book";
import { valueType, wireValue } from "../cells/read";
import type { NamedFormula } from "../names";
import { invalidArgument, notFound } from "../wire/errors";
import { collection, type Members } from "../wire/served";
import { absoluteAddress } from "./absolute";
import type { Desk } from "./desk";

/** The names of one sheet, or those of the whole workbook. */
export function namedItemsMembers(desk: Desk): Members<SheetTab | null> {
  const { names } = desk.book;
  const listed = (tab: SheetTab | null) => names.list().filter((each) => each.tab === tab);
  return collection<SheetTab | null>({
    className: "NamedItemCollection",
    items: (tab) => listed(tab).map(desk.name),
    find(tab, name) {
      const wanted = name.toLowerCase();
      const found = listed(tab).find((each) => each.name.toLowerCase() === wanted);
      return found === undefined ? null : desk.name(found);
    },
    missing: (name) => `There is no name "${name}".`,
    methods: {
      add(tab, args) {
        const range = args.range(1);
        const formula = range === undefined ? args.text(1, "The formula") : absoluteAddress(range);
        if (range === undefined && !formula.startsWith("="))
          throw invalidArgument('The formula of a name starts with "=".');
        const comment = args.optionalText(2, "The comment") ?? "";
        return desk.name(names.add(args.text(0, "The name"), formula, tab, comment));
      },
    },
  });
}

export function namedItemMembers(desk: Desk): Members<NamedFormula> {
  const { names, model } = desk.book;
  const value = ({ tab, formula }: NamedFormula): CellValue => {
    const sheet = tab ?? desk.book.tabs[0];
    const found = model.evaluate(formula, sheet?.name ?? "", 0, 0);
    return "value" in found ? found.value : null;
  };
  return {
    className: "NamedItem",
    identify: ({ name }) => ({ _Id: name }),
    values: {
      name: { get: ({ name }) => name },
      formula: { get: ({ formula }) => `=${formula}` },
      value: {
        get: (entry) => (names.range(entry) === null ? wireValue(value(entry)) : entry.formula),
      },
      type: {
        get: (entry) => (names.range(entry) === null ? valueType(value(entry)) : "Range"),
      },
      scope: { get: ({ tab }) => (tab === null ? "Workbook" : "Worksheet") },
      visible: { get: () => true },
      comment: { get: ({ comment }) => comment },
    },
    methods: {
      delete: (entry) => names.remove(entry),
      getRange(entry) {
        const found = names.range(entry);
        if (found === null) throw notFound(`The name "${entry.name}" stands for no range.`);
        return desk.range(found);
      },
    },
  };
}
