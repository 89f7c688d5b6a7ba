import type { SheetTab } from "../book";
import type { NamedFormula } from "../names";
import { invalidArgument } from "../wire/errors";
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
        return desk.name(names.add(args.text(0, "The name"), formula, tab));
      },
    },
  });
}

export function namedItemMembers(desk: Desk): Members<NamedFormula> {
  return {
    className: "NamedItem",
    identify: ({ name }) => ({ _Id: name }),
    values: {
      name: { get: ({ name }) => name },
      formula: { get: ({ formula }) => `=${formula}` },
    },
    methods: { delete: (entry) => desk.book.names.remove(entry) },
  };
}
